package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Tidied;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings procedures into the one layout. */
@Command(
        name = "tidy",
        description = "Lays procedures out alike; it moves words and comments and changes none.",
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        footer = {
            "",
            "A procedure with mistakes is left as it is, and the mistakes are listed.",
            "",
            "Example:",
            "  leafproof tidy --check first_look.inspection",
            "",
            "Exit codes: 0 tidy now, 1 with --check: not tidy, 2 bad input, 70 a bug of ours."
        })
final class TidyCommand implements Callable<Integer> {

    @Parameters(arity = "1..*", paramLabel = "PROCEDURE", description = "The procedures' files, or parts of some.")
    private List<Path> procedures = List.of();

    @Option(names = "--check", description = "Change nothing; list the files that are not tidy.")
    private boolean check;

    @Mixin
    private RootOption root = new RootOption();

    private final Console console;

    TidyCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Exit exit = Exit.GOOD;
        for (Path file : procedures) {
            Exit one = tidy(file);
            exit = exit == Exit.BAD_INPUT || one == Exit.GOOD ? exit : one;
        }
        return exit.code();
    }

    private Exit tidy(Path file) {
        Tidied tidied = Tidied.of(file, root.of(file));
        if (tidied.text().isEmpty()) {
            console.complain(tidied.diagnostics());
            return Exit.BAD_INPUT;
        }
        if (tidied.isTidy()) {
            return Exit.GOOD;
        }
        if (check) {
            console.print(file + ": not tidy\n");
            return Exit.NOT_GOOD;
        }
        if (!console.wrote(file, tidied.text().get())) {
            return Exit.BAD_INPUT;
        }
        console.print(file + ": tidied\n");
        return Exit.GOOD;
    }
}
