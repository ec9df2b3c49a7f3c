package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.rehearsal.CardsAndTrays;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsed;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Runs the cases that procedures carry with them. */
@Command(
        name = "rehearse",
        description = "Runs the procedures' own rehearsals.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "Example:",
            "  leafproof rehearse first_look.inspection",
            "  leafproof rehearse --min 90 first_look.inspection",
            "",
            "Exit codes: 0 all as expected, 1 a surprise or less shown than --min asks for, 2 bad input,",
            "70 a bug of ours."
        })
final class RehearseCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "PROCEDURE", description = "The procedures' files.")
    private List<Path> procedures = List.of();

    @Mixin
    private RootOption root = new RootOption();

    @Mixin
    private CoverageOptions coverage = new CoverageOptions();

    private final Console console;
    private final CardsAndTrays files = new CardsAndTrays();

    RehearseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Exit exit = Exit.GOOD;
        for (Path file : procedures) {
            Exit one = rehearse(file);
            exit = exit == Exit.BAD_INPUT || one == Exit.GOOD ? exit : one;
        }
        return exit.code();
    }

    private Exit rehearse(Path file) {
        Compiled compiled = root.read(file);
        console.complain(compiled.diagnostics());
        if (compiled.procedure().isEmpty()) {
            return Exit.BAD_INPUT;
        }
        List<Played> played = Rehearsing.of(compiled.procedure().get(), RootOption.folderOf(file), root.of(file), files)
                .play();
        List<Rehearsed> rehearsed = played.stream().map(Played::rehearsed).toList();
        long good = rehearsed.stream().filter(Rehearsed::isAsExpected).count();
        rehearsed.forEach(this::print);
        console.print(file + ": " + VetCommand.counted(rehearsed.size(), "rehearsal") + ", " + good + " as expected\n");
        Exit enough = coverage.tell(compiled.procedure().get(), played, console);
        return good == rehearsed.size() ? enough : Exit.NOT_GOOD;
    }

    private void print(Rehearsed rehearsed) {
        console.print((rehearsed.isAsExpected() ? "  as expected  " : "  SURPRISE     ") + rehearsed.title() + "\n");
        rehearsed
                .problems()
                .forEach(problem -> console.print("      " + problem.toString().replace("\n", "\n      ") + "\n"));
        for (Rehearsed.Surprise surprise : rehearsed.surprises()) {
            console.print("      " + surprise.place() + ": expected " + surprise.of() + " " + surprise.expected()
                    + ", got " + surprise.got() + "\n");
            surprise.why().forEach(why -> console.print("         " + why + "\n"));
        }
    }
}
