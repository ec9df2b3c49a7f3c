package io.github.leafproof.dsl.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Help.Ansi;

/** The command line's entry point. */
public final class Main {

    private static final Path STANDARD_ERROR = Path.of("/dev/stderr");

    /** The bits of a file's mode that tell its kind, and what they are for a device that is read sign by sign (POSIX). */
    private static final int KIND = 0170000;

    private static final int DEVICE = 0020000;
    private static final Path NOTHING = Path.of("/dev/null");

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // Read at the start for types that no option of ours has.
        System.setProperty("picocli.converters.excludes", "java[.](sql|time)[.].*");
        // UTF-8 whatever the platform's charset is: reports hold °, µ and ±.
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8);
        int code = Leafproof.run(
                new Console(System.in, out, err, Ansi.AUTO.enabled(), isTerminal(STANDARD_ERROR), isTyped()),
                arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }

    private static boolean isTyped() {
        return isTerminal(Path.of("/dev/stdin")) && isTerminal(Path.of("/dev/stdout"));
    }

    /**
     * Whether a stream ends in a terminal. Java knows this of standard input and output together only, and here it is
     * standard error that counts; where the system does not tell, nobody is taken to watch.
     */
    static boolean isTerminal(Path stream) {
        try {
            boolean device =
                    !Files.isRegularFile(stream) && ((int) Files.getAttribute(stream, "unix:mode") & KIND) == DEVICE;
            return device && !Files.getAttribute(stream, "unix:rdev").equals(Files.getAttribute(NOTHING, "unix:rdev"));
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException unknown) {
            return false;
        }
    }
}
