package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.coverage.Coverage;
import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.PlayedFile;
import io.github.leafproof.dsl.rehearsal.RehearsalJson;
import io.github.leafproof.dsl.rehearsal.RehearsalText;
import io.github.leafproof.dsl.rehearsal.RehearsalXml;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Plays the cases that procedures carry with them. */
@Command(
        name = "rehearse",
        description = {
            "Runs the procedures' own rehearsals.",
            "Of a surprise it tells what was expected, what came, and where the two part."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Of a folder all files that end in .inspection are rehearsed, and those in the folders in it.",
            "A file without a line that begins with procedure is a part of others: its rehearsals are",
            "theirs, and run with them.",
            "",
            "Example:",
            "  leafproof rehearse first_look.inspection",
            "  leafproof rehearse procedures --junit-xml target/rehearsals.xml --min 90",
            "",
            "Exit codes: 0 all as expected, 1 a surprise or less shown than --min asks for, 2 bad input,",
            "70 a bug of ours."
        })
final class RehearseCommand implements Callable<Integer> {

    @Parameters(
            arity = "1..*",
            paramLabel = "PROCEDURE",
            description = "The procedures' files, or folders with procedures.")
    private List<Path> given = List.of();

    @Mixin
    private FilterOption filter = new FilterOption();

    @Mixin
    private RehearsalOutputs outputs = new RehearsalOutputs();

    @Mixin
    private CoverageOptions coverage = new CoverageOptions();

    @Mixin
    private UnitsOption shown = new UnitsOption();

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;
    private final CardsAndTrays files = new CardsAndTrays();

    RehearseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (outputs.json() && coverage.isPrinted()) {
            console.once("""
                    leafproof: --json and --coverage cannot both go to standard output
                       help: write the coverage to a file: --coverage-json F, or --coverage-html F
                    """);
            return Exit.BAD_INPUT.code();
        }
        Optional<List<Path>> procedures = new GivenFiles(console).procedures(given);
        if (procedures.isEmpty()) {
            return Exit.BAD_INPUT.code();
        }
        List<PlayedFile> all =
                procedures.get().parallelStream().map(this::played).toList();
        all.forEach(each -> console.complain(each.compiled().diagnostics()));
        List<PlayedFile> asked = all.stream().filter(filter::concerns).toList();
        if (filter.foundNothing(asked, console) || overwrites(inputs(procedures.get(), all))) {
            return Exit.BAD_INPUT.code();
        }
        tell(asked);
        Exit enough = coverage.isAsked() ? coverage.tell(shown(asked), !outputs.json(), console) : Exit.GOOD;
        boolean written = outputs.wroteXml(() -> RehearsalXml.write(asked), console);
        Exit exit = written ? exit(asked) : Exit.BAD_INPUT;
        return (exit == Exit.GOOD ? enough : exit).code();
    }

    private PlayedFile played(Path file) {
        Compiled compiled = root.read(file);
        List<Played> played = compiled.procedure()
                .map(procedure -> Rehearsing.of(procedure, RootOption.folderOf(file), root.of(file), files)
                        .in(shown.units())
                        .play(filter.of(procedure)))
                .orElse(List.of());
        return new PlayedFile(file.toString(), compiled, played);
    }

    /** What was read, and must not be written over. */
    private List<Path> inputs(List<Path> procedures, List<PlayedFile> all) {
        Stream<Path> parts = IntStream.range(0, all.size())
                .boxed()
                .flatMap(
                        each -> root.partsOf(procedures.get(each), all.get(each).compiled()));
        return Stream.concat(procedures.stream(), Stream.concat(parts, files.read()))
                .toList();
    }

    private boolean overwrites(List<Path> read) {
        return outputs.overwrite(read.stream(), console) || coverage.overwrite(read, console);
    }

    private void tell(List<PlayedFile> asked) {
        if (outputs.json()) {
            console.print(RehearsalJson.write(asked));
            return;
        }
        asked.stream()
                .filter(each -> each.compiled().procedure().isPresent())
                .forEach(each -> console.print(RehearsalText.of(each)));
        if (asked.size() > 1) {
            console.print(RehearsalText.total(asked));
        }
    }

    private static List<Coverage> shown(List<PlayedFile> asked) {
        return asked.stream()
                .flatMap(each ->
                        each.compiled().procedure().stream().map(procedure -> Coverage.of(procedure, each.played())))
                .toList();
    }

    private static Exit exit(List<PlayedFile> asked) {
        List<Played> played =
                asked.stream().flatMap(each -> each.played().stream()).toList();
        if (asked.stream().anyMatch(each -> each.compiled().procedure().isEmpty())
                || played.stream().anyMatch(each -> each.judged() == null)) {
            return Exit.BAD_INPUT;
        }
        boolean good = played.stream().allMatch(Played::isAsExpected);
        return good ? Exit.GOOD : Exit.NOT_GOOD;
    }
}
