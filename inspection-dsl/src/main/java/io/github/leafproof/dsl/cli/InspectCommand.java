package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges an engine: a procedure, a card, a tray and a sheet go in, a report comes out. */
@Command(
        name = "inspect",
        description = "Judges an engine by a procedure and prints the report.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof inspect first_look.inspection --sheet sheets/0412-trap.json --json 0412-report.json",
            "",
            "Exit codes: 0 ready, 1 hold or reject, 3 unfinished, 2 bad input, 70 a bug of ours."
        })
final class InspectCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Option(names = "--sheet", paramLabel = "F", required = true, description = "The job sheet.")
    private Path sheet = Path.of("");

    @Option(
            names = "--card",
            paramLabel = "F",
            description = "The engine card; otherwise the one that the sheet names, seen from the sheet.")
    private @Nullable Path card;

    @Option(
            names = "--tray",
            paramLabel = "F",
            description = "The gauge tray; otherwise the one that the sheet names, seen from the sheet.")
    private @Nullable Path tray;

    @Option(names = "--json", paramLabel = "F", description = "Write the report there as JSON, too.")
    private @Nullable Path json;

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            description = "The units to show numbers in; metric if not given.",
            converter = UnitsWord.class)
    private UnitSystem units = UnitSystem.METRIC;

    private final Console console;

    InspectCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (json != null && overwritesAnInput(json)) {
            return Exit.BAD_INPUT.code();
        }
        Compiled compiled = Procedure.read(procedure);
        console.complain(compiled.diagnostics());
        Read<Document<JobSheet>> sheetRead = SheetFile.read(sheet);
        console.complainOfFiles(sheetRead.problems());
        Optional<Document<EngineCard>> cardRead =
                sheetRead.value().flatMap(read -> read(card, read.content().card(), "card", CardFile::read));
        Optional<Document<GaugeTray>> trayRead =
                sheetRead.value().flatMap(read -> read(tray, read.content().tray(), "tray", TrayFile::read));
        if (compiled.procedure().isEmpty() || cardRead.isEmpty() || trayRead.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        Read<Report> report =
                compiled.procedure().get().judge(cardRead.get(), trayRead.get(), sheetRead.orElseThrow(), units);
        console.complainOfFiles(report.problems());
        return report.value().map(this::hand).orElse(Exit.BAD_INPUT).code();
    }

    /** A report written over the sheet it was made from would take the evidence with it. */
    private boolean overwritesAnInput(Path target) {
        return Stream.of(procedure, sheet, card, tray)
                .filter(Objects::nonNull)
                .anyMatch(input -> overwrites(target, input));
    }

    private boolean overwrites(Path target, Path input) {
        boolean same = isSame(target, input);
        if (same) {
            console.err()
                    .print("leafproof: --json would write the report over " + input
                            + "\n   help: name another file for the report\n");
        }
        return same;
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException unreadable) {
            // Then it cannot be written either, and whoever tries says so.
            return false;
        }
    }

    private interface FileReader<T> {
        Read<Document<T>> read(Path file);
    }

    /** Reads the file that the command names, or else the one that the sheet does, seen from the sheet's folder. */
    private <T> Optional<Document<T>> read(
            @Nullable Path given, @Nullable String named, String what, FileReader<T> reader) {
        if (given == null && named == null) {
            console.complainOfFiles(List.of(new Problem(
                    "LP613",
                    sheet.toString(),
                    "$." + what,
                    "the sheet names no " + what,
                    "name it there, or with --" + what)));
            return Optional.empty();
        }
        Path file = (given != null ? given : sheet.resolveSibling(String.valueOf(named))).normalize();
        if (json != null && overwrites(json, file)) {
            return Optional.empty();
        }
        Read<Document<T>> read = reader.read(file);
        console.complainOfFiles(read.problems());
        return read.value();
    }

    private Exit hand(Report report) {
        console.print(TextReport.of(report, console.colour()));
        if (json != null) {
            Optional<Problem> failed = ReportFile.write(json, report);
            if (failed.isPresent()) {
                console.complainOfFiles(List.of(failed.get()));
                return Exit.BAD_INPUT;
            }
        }
        return switch (report.release()) {
            case READY -> Exit.GOOD;
            case HOLD, REJECT -> Exit.NOT_GOOD;
            case UNFINISHED -> Exit.UNFINISHED;
        };
    }
}
