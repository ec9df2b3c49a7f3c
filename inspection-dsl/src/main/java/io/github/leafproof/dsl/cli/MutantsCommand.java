package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.mutants.Accepted;
import io.github.leafproof.dsl.mutants.MutantReport;
import io.github.leafproof.dsl.mutants.MutantsJson;
import io.github.leafproof.dsl.mutants.MutantsText;
import io.github.leafproof.dsl.mutants.Watched;
import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Finds out which slips in a procedure its rehearsals would not notice. */
@Command(
        name = "mutants",
        description = {
            "Lists the slips in procedures that their rehearsals would not notice.",
            "One slip after another is made (a limit shifted, a gate dropped, a comparison swapped),",
            "and the rehearsals are run on each."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "A part that several of the procedures use is watched over by the rehearsals of all of them.",
            "",
            "Examples:",
            "  leafproof mutants first_look.inspection",
            "  leafproof mutants tank.inspection running_in.inspection --accept accepted.txt",
            "",
            "A line of the list of accepted mutants: its name, the word because, and the reason.",
            "",
            "Exit codes: 0 every slip is noticed or accepted, 1 one is not, 2 bad input, 70 a bug of ours."
        })
final class MutantsCommand implements Callable<Integer> {

    @Parameters(
            arity = "1..*",
            paramLabel = "PROCEDURE",
            description = "The procedures' files, or folders that are looked through for them.")
    private List<Path> given = List.of();

    @Option(
            names = "--accept",
            paramLabel = "F",
            description = "A list of the mutants that may survive, each with the reason.")
    private @Nullable Path accept;

    @Option(names = "--json", description = "Tell on standard output as JSON, for other programs.")
    private boolean json;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;
    private final CardsAndTrays files = new CardsAndTrays();

    MutantsCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Optional<List<Path>> procedures = new GivenFiles(console).procedures(given);
        List<Path> found = procedures.orElse(List.of());
        List<Watched> watched = new ArrayList<>();
        found.forEach(file -> read(file).ifPresent(watched::add));
        Optional<Accepted> accepted = accepted();
        if (procedures.isEmpty() || watched.size() < found.size() || accepted.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        MutantReport report = MutantReport.of(watched);
        List<Diagnostic> wrong = accepted.get().problemsWith(report);
        console.complain(wrong);
        console.print(json ? MutantsJson.write(report, accepted.get()) : MutantsText.of(report, accepted.get()));
        if (!wrong.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        boolean all = report.surviving().stream()
                .allMatch(each -> accepted.get().reason(each.mutant()).isPresent());
        return (all ? Exit.GOOD : Exit.NOT_GOOD).code();
    }

    private Optional<Watched> read(Path file) {
        Compiled compiled = root.read(file);
        console.complain(compiled.diagnostics());
        Optional<Watched> watched = compiled.procedure()
                .map(procedure -> Watched.of(
                        procedure, Rehearsing.of(procedure, RootOption.folderOf(file), root.of(file), files)));
        long surprises = watched.stream()
                .flatMap(each -> each.played().stream())
                .filter(played -> !played.isAsExpected())
                .count();
        if (surprises > 0) {
            console.err()
                    .print("leafproof: in " + file + " " + VetCommand.counted(surprises, "rehearsal")
                            + (surprises == 1 ? " does" : " do")
                            + " not come out as expected even before anything is changed, and could notice nothing\n"
                            + "   help: mend that first: leafproof rehearse " + file + " tells where it surprises\n");
            return Optional.empty();
        }
        return watched;
    }

    private Optional<Accepted> accepted() {
        if (accept == null) {
            return Optional.of(Accepted.none());
        }
        SourceReading reading = SourceReading.read(accept);
        console.complain(reading.problems());
        return reading.source().map(Accepted::of);
    }
}
