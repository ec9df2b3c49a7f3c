package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.history.History;
import io.github.leafproof.dsl.history.OneEngine;
import io.github.leafproof.dsl.history.Recounting;
import io.github.leafproof.dsl.report.HistoryJson;
import io.github.leafproof.dsl.report.HistoryText;
import io.github.leafproof.inspection.record.Read;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what the sheets of one engine say together. */
@Command(
        name = "history",
        description = {
            "Tells the history of one engine from its job sheets: what was found and whether it",
            "is put right, how values change with running, and when to look again."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof history history/0501-received.json history/0502-after-first-runs.json",
            "",
            "Exit codes: 0 all is closed, 1 a finding remains or gets worse, 3 something waits to be",
            "looked at, 2 bad input, 70 a bug of ours."
        })
final class HistoryCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "SHEET", description = "The engine's job sheets, in any order.")
    private List<Path> sheets = List.of();

    @Option(
            names = "--procedures",
            paramLabel = "DIR",
            description =
                    "The folder of the procedures that the sheets name; if not given, each sheet's own folder, then"
                            + " the one above it. NAME-REVISION.inspection is looked for, then NAME.inspection.")
    private @Nullable Path procedures;

    @Option(names = "--json", paramLabel = "F", description = "Write the history there as JSON, too.")
    private @Nullable Path json;

    @Mixin
    private EngineOptions engine = new EngineOptions();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    HistoryCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Target target = Target.of(json, "--json", "history");
        ProceduresOfSheets named = new ProceduresOfSheets(procedures, root, target, console);
        List<Evidence.Files> read = new ArrayList<>();
        boolean sound = true;
        for (Path sheet : sheets) {
            Optional<Evidence.Files> files = engine.wouldBeOverwritten(target, sheet, null, console)
                    ? Optional.empty()
                    : engine.read(sheet, Stream.ofNullable(target).toList(), console);
            files.ifPresent(read::add);
            sound &= files.isPresent();
        }
        Read<List<Evidence.Files>> ordered = OneEngine.inOrder(read);
        console.complainOfFiles(ordered.problems());
        List<Judgement> judgements = judgements(ordered.value().orElse(read), named);
        sound &= judgements.size() == sheets.size() && ordered.value().isPresent();
        return (sound ? hand(Recounting.of(judgements, engine.units())) : Exit.BAD_INPUT).code();
    }

    private List<Judgement> judgements(List<Evidence.Files> all, ProceduresOfSheets named) {
        List<Judgement> judgements = new ArrayList<>();
        for (Evidence.Files files : all) {
            Optional<Procedure> procedure = named.of(files.sheet());
            Optional<Read<Judgement>> judged =
                    procedure.map(each -> each.judgement(files.card(), files.tray(), files.sheet(), engine.units()));
            judged.ifPresent(each -> console.complainOfFiles(each.problems()));
            judged.flatMap(Read::value).ifPresent(judgements::add);
        }
        return judgements;
    }

    private Exit hand(History history) {
        console.print(HistoryText.of(history, console.colour()));
        if (json != null && !console.wrote(json, HistoryJson.write(history))) {
            return Exit.BAD_INPUT;
        }
        return switch (history.state()) {
            case CLOSED -> Exit.GOOD;
            case REMAINS -> Exit.NOT_GOOD;
            case TO_BE_LOOKED_AT -> Exit.UNFINISHED;
        };
    }
}
