package io.github.leafproof.dsl.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.Help.Ansi;

/** The command line's entry point. */
public final class Main {

    private Main() {}

    /** Runs one command and ends the process with its exit code. */
    public static void main(String[] arguments) {
        // UTF-8 whatever the platform's charset is: reports hold °, µ and ±.
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), false, StandardCharsets.UTF_8);
        int code = Leafproof.run(new Console(out, err, Ansi.AUTO.enabled()), arguments);
        out.flush();
        err.flush();
        System.exit(code);
    }
}
