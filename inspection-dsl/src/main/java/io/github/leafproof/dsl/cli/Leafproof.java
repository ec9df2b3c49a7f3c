package io.github.leafproof.dsl.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program as a whole: its help, its version, and what happens when something goes wrong. */
@Command(
        name = "leafproof",
        description = {
            "Judges four-stroke glow engines by procedures that a shop writes itself.",
            "It defers to the engine's own instructions, local rules and qualified people."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Leafproof.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Example:",
            "  leafproof inspect first_look.inspection --sheet sheets/0412-trap.json",
            "",
            "Exit codes: 0 ready, sound, verified, tidy or nothing differs, 1 hold, reject, a surprise, a"
                    + " difference, something changed or not tidy, 2 bad input, 3 unfinished, 70 a bug of ours."
        })
final class Leafproof implements Runnable {

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "If the program itself fails, print the stack trace for the bug report.")
    private boolean trace;

    @Spec
    private @Nullable CommandSpec spec;

    private final Console console;

    Leafproof(Console console) {
        this.console = console;
    }

    /** Runs a command line and returns its exit code. */
    static int run(Console console, String... arguments) {
        Leafproof program = new Leafproof(console);
        Ansi ansi = console.colour() ? Ansi.ON : Ansi.OFF;
        CommandLine line = new CommandLine(program);
        Verb.startedBy(arguments).forEach(verb -> line.addSubcommand(verb.command(console)));
        line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8))
                .setColorScheme(CommandLine.Help.defaultColorScheme(ansi))
                .setUsageHelpWidth(100)
                .setParameterExceptionHandler((wrong, given) -> program.misused(wrong))
                .setExecutionExceptionHandler((bug, command, result) -> program.failed(bug));
        // -3 °C in °F begins like an option and is none.
        Optional.ofNullable(line.getSubcommands().get("reckon"))
                .ifPresent(reckon -> reckon.setUnmatchedOptionsArePositionalParams(true));
        try {
            return line.execute(arguments);
        } catch (Error outOfMemoryOrWorse) {
            return program.failed(outOfMemoryOrWorse);
        }
    }

    @Override
    public void run() {
        Objects.requireNonNull(spec).commandLine().usage(console.out());
    }

    private int misused(ParameterException wrong) {
        console.err().print("leafproof: " + firstLower(String.valueOf(wrong.getMessage())) + "\n");
        String command = wrong.getCommandLine().getCommandSpec().qualifiedName();
        console.err().print("   help: " + command + " --help shows what it takes\n");
        return Exit.BAD_INPUT.code();
    }

    private static String firstLower(String message) {
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
    }

    private int failed(Throwable bug) {
        console.err().print("leafproof: a mistake of ours, and we are sorry: " + bug + "\n");
        console.err()
                .print("   help: please report it with the command and its files at "
                        + "https://github.com/leafproof/leafproof/issues"
                        + (trace ? "\n" : "; --trace adds what we need to find it\n"));
        if (trace) {
            bug.printStackTrace(console.err());
        }
        return Exit.OUR_MISTAKE.code();
    }

    /** The version that the build wrote into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"leafproof " + number()};
        }

        static String number() {
            String version = Leafproof.class.getPackage().getImplementationVersion();
            return version == null ? "(not packaged)" : version;
        }
    }
}
