package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import io.github.leafproof.inspection.verdict.Outcome;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Judges one engine and says what is still open about it. */
public final class JudgeAnEngine {
    private JudgeAnEngine() {}

    /** Takes the folder of the bench, {@code examples/bench}. */
    public static void main(String[] arguments) {
        judge(Path.of(arguments[0]), new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }

    static void judge(Path bench, PrintStream out) {
        // Each of these throws with all that is wrong with its file; procedure(), value() and problems() tell it
        // instead.
        Procedure procedure =
                Procedure.read(bench.resolve("first_look.inspection")).orElseThrow();
        Document<EngineCard> card =
                CardFile.read(bench.resolve("cards/quillan-15.json")).orElseThrow();
        Document<GaugeTray> tray =
                TrayFile.read(bench.resolve("trays/bench-one.json")).orElseThrow();
        Document<JobSheet> sheet =
                SheetFile.read(bench.resolve("sheets/0412-trap.json")).orElseThrow();

        Report report = procedure.judge(card, tray, sheet, UnitSystem.METRIC).orElseThrow();

        out.println(report.release().word() + ": " + report.releaseReason());
        for (Report.Check check : report.checks()) {
            if (check.outcome() == Outcome.OPEN) {
                out.println(check.title() + ": open, for it was found to be " + check.value());
                check.advice().forEach(out::println);
            }
        }
    }
}
