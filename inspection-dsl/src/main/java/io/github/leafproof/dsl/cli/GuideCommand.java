package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.guide.Guide;
import io.github.leafproof.dsl.guide.Look;
import io.github.leafproof.dsl.guide.Opening;
import io.github.leafproof.dsl.session.Basis;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.TrayFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Leads through an inspection at the bench. */
@Command(
        name = "guide",
        description = {
            "Leads through an inspection at the bench, step by step: what to do next and what to mind",
            "before it, what to enter, and what it comes to. What is entered is kept at once; the same",
            "command goes on where it was left. Without a terminal it takes plain lines."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof guide first_look.inspection --card cards/quillan-15.json",
            "      --tray trays/bench-one.json --sheet sheets/0500.json",
            "",
            "Exit codes: 0 ready, 1 hold or reject, 3 unfinished, or left before the end, 2 bad input,",
            "70 a bug of ours."
        })
final class GuideCommand implements Callable<Integer> {

    @Parameters(paramLabel = "PROCEDURE", description = "The procedure's file, ending in .inspection.")
    private Path procedure = Path.of("");

    @Option(names = "--card", paramLabel = "F", required = true, description = "The engine card.")
    private Path card = Path.of("");

    @Option(names = "--tray", paramLabel = "F", required = true, description = "The gauge tray.")
    private Path tray = Path.of("");

    @Option(
            names = "--sheet",
            paramLabel = "F",
            required = true,
            description = "The job sheet that is to be written; what is entered is kept beside it.")
    private Path sheet = Path.of("");

    @Option(
            names = "--json",
            paramLabel = "F",
            description = "Where to write the report as JSON; beside the sheet, as NAME-report.json, if not given.")
    private @Nullable Path json;

    @Option(
            names = "--report",
            paramLabel = "F",
            description = "Where to write the report as a page; beside the sheet, as NAME-report.html, if not given.")
    private @Nullable Path page;

    @Mixin
    private OpeningOptions known = new OpeningOptions();

    @Mixin
    private UnitsOption shown = new UnitsOption();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    GuideCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Target> targets = List.of(
                new Target(beside(json, "-report.json"), "--json", "report"),
                new Target(beside(page, "-report.html"), "--report", "page"));
        Compiled compiled = root.read(procedure);
        console.complain(compiled.diagnostics());
        Optional<Document<EngineCard>> engine = read(CardFile.read(card));
        Optional<Document<GaugeTray>> gauges = read(TrayFile.read(tray));
        if (compiled.procedure().isEmpty() || engine.isEmpty() || gauges.isEmpty() || overwrite(targets, compiled)) {
            return Exit.BAD_INPUT.code();
        }
        Basis basis = new Basis(compiled.procedure().get(), engine.get(), gauges.get());
        try (GuideDesk desk = new GuideDesk(
                basis, procedure, sheet, targets.get(0).file(), targets.get(1).file(), shown.units(), console)) {
            return guide(desk, engine.get().content())
                    .map(guide -> talked(guide, desk))
                    .orElse(Exit.BAD_INPUT)
                    .code();
        }
    }

    private Path beside(@Nullable Path given, String ending) {
        return given == null ? sheet.resolveSibling(name() + ending) : given;
    }

    /** Whether something that is read would be written over; tells so where it would. */
    private boolean overwrite(List<Target> targets, Compiled compiled) {
        List<Path> inputs = Stream.concat(Stream.of(procedure, card, tray, sheet), root.partsOf(procedure, compiled))
                .toList();
        return targets.stream()
                .anyMatch(target -> inputs.stream().anyMatch(input -> target.overwrites(input, console)));
    }

    private <T> Optional<Document<T>> read(Read<Document<T>> read) {
        console.complainOfFiles(read.problems());
        return read.value();
    }

    /** The sheet's number: its file's name without the ending. */
    private String name() {
        String file = String.valueOf(sheet.getFileName());
        return file.endsWith(".json") ? file.substring(0, file.length() - ".json".length()) : file;
    }

    /** The conversation, begun or gone on with; empty after telling why there is none. */
    private Optional<Guide> guide(GuideDesk desk, EngineCard engine) {
        if (Session.isBegun(sheet)) {
            Read<Session> resumed = desk.resume(known.by());
            console.complainOfFiles(resumed.problems());
            return resumed.value().map(session -> Guide.resuming(session, desk, Look.plain()));
        }
        Opening opening = Opening.of(name(), LocalDate.now(ZoneId.systemDefault()), engine);
        opening.knowFiles(seenFromSheet(card), seenFromSheet(tray));
        return known.tell(opening, console)
                ? Optional.of(Guide.beginning(opening, desk, Look.plain()))
                : Optional.empty();
    }

    /** A file as the sheet names it: from the sheet's own folder where that can be. */
    private String seenFromSheet(Path file) {
        Path folder = RootOption.folderOf(sheet.toAbsolutePath().normalize());
        Path whole = file.toAbsolutePath().normalize();
        boolean near = folder.getRoot() != null && folder.getRoot().equals(whole.getRoot());
        return (near ? folder.relativize(whole) : whole).toString().replace('\\', '/');
    }

    private Exit talked(Guide guide, GuideDesk desk) {
        try (Shell shell = shell(guide)) {
            guide.look(shell.look());
            shell.talk(guide);
        }
        if (desk.finished().isEmpty()) {
            return desk.isBegun() ? Exit.UNFINISHED : Exit.BAD_INPUT;
        }
        return Exit.of(desk.finished().get().report().release());
    }

    /** A terminal where there is one that can be written to anywhere; plain lines otherwise. */
    private Shell shell(Guide guide) {
        if (console.typed() && !"dumb".equals(System.getenv("TERM"))) {
            try {
                return EditedLines.open(guide, console.colour());
            } catch (IOException | LinkageError noTerminal) {
                return new PlainLines(console);
            }
        }
        return new PlainLines(console);
    }
}
