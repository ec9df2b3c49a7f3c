package io.github.leafproof.examples;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** The example bench, its files named as somebody names them who stands in the project's folder. */
final class Bench {
    static final Procedure FIRST_LOOK =
            Procedure.read(Project.BENCH.resolve("first_look.inspection")).orElseThrow();

    static final Procedure TANK =
            Procedure.read(Project.BENCH.resolve("tank.inspection")).orElseThrow();

    private static final String NAMED = "examples/bench/";

    private Bench() {}

    static Report judge(String sheetFile) {
        return Reporting.of(judgement(sheetFile));
    }

    static Judgement judgement(String sheetFile) {
        Document<JobSheet> sheet = sheet(sheetFile);
        JobSheet content = sheet.content();
        Procedure procedure = content.procedure().equals("tank") ? TANK : FIRST_LOOK;
        return procedure
                .judgement(card(seen(content.card())), tray(seen(content.tray())), sheet, UnitSystem.METRIC)
                .orElseThrow();
    }

    /** A sheet names its card and its tray as seen from its own folder. */
    private static String seen(@Nullable String fromSheet) {
        return Path.of("sheets")
                .resolve(Objects.requireNonNull(fromSheet))
                .normalize()
                .toString()
                .replace('\\', '/');
    }

    static Document<JobSheet> sheet(String file) {
        return SheetFile.parse(NAMED + "sheets/" + file, Project.bytes(Project.BENCH.resolve("sheets/" + file)))
                .orElseThrow();
    }

    static Document<EngineCard> card(String file) {
        return CardFile.parse(NAMED + file, Project.bytes(Project.BENCH.resolve(file)))
                .orElseThrow();
    }

    static Document<GaugeTray> tray(String file) {
        return TrayFile.parse(NAMED + file, Project.bytes(Project.BENCH.resolve(file)))
                .orElseThrow();
    }
}
