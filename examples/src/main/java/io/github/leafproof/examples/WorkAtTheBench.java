package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Heading;
import io.github.leafproof.dsl.session.Inspector;
import io.github.leafproof.dsl.session.NextStep;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;

/** Fills in a job sheet at the bench, step by step, as a program with a screen of its own would. */
public final class WorkAtTheBench {
    private WorkAtTheBench() {}

    /** Enters what a shop's own screen would ask for; here the answers are known beforehand. */
    static void work(Path bench, Path sheet, Map<String, Given> answers, PrintStream out) {
        Basis basis = new Basis(
                Procedure.read(bench.resolve("first_look.inspection")).orElseThrow(),
                CardFile.read(bench.resolve("cards/quillan-15.json")).orElseThrow(),
                TrayFile.read(bench.resolve("trays/bench-one.json")).orElseThrow());
        Inspector mk = Inspector.named("mk");
        Read<Session> opened = Session.isBegun(sheet)
                ? Session.resume(basis, mk, sheet)
                : Session.begin(basis, Heading.of("0422", LocalDate.of(2026, 3, 4)), mk, sheet);
        opened.problems().forEach(out::println);
        try (Session session = opened.orElseThrow()) {
            while (session.standing().next().isPresent()) {
                NextStep step = session.standing().next().orElseThrow();
                String name = step.observation().name();
                step.setup().forEach(setup -> {
                    setup.cautions().forEach(caution -> out.println("  ! " + caution));
                    out.println("  " + setup.change().how());
                });
                step.cautions().forEach(caution -> out.println("  ! " + caution));
                Given answer = step.reason() == NextStep.Reason.FIRST ? answers.get(name) : null;
                out.println(step.ask() + " -> " + (answer == null ? "not today" : "entered"));
                Read<Standing> standing = answer == null ? session.skip(name) : session.enter(name, answer);
                standing.problems().forEach(out::println);
                for (Report.Check check : standing.orElseThrow().bearingOn(name)) {
                    out.println("  " + check.title() + ": " + check.outcome().word());
                    check.advice().forEach(advice -> out.println("    " + advice));
                }
            }
            out.println(session.finish().orElseThrow().report().release().word());
        }
    }

    /** {@code java … BENCH SHEET}: answers the first two questions, and passes over the rest. */
    public static void main(String[] arguments) {
        Map<String, Given> answers = Map.of("marks_agree", new Given.Flag(true), "sold_as", new Given.Words("new"));
        work(
                Path.of(arguments[0]),
                Path.of(arguments[1]),
                answers,
                new PrintStream(System.out, true, StandardCharsets.UTF_8));
    }
}
