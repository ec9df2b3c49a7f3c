package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.TextFile;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Where a command reads and writes: what was asked for goes to standard output, what went wrong to standard error.
 *
 * @param in what is typed or handed over, for commands that read lines; in UTF-8
 * @param colour whether a person looks at it in a terminal and wants colour
 * @param watched whether standard error is a terminal, where a person may watch the work go on
 * @param typed whether somebody types at a terminal, and sees there what is said
 * @param told what was told to be wrong with files so far
 */
record Console(
        InputStream in,
        PrintStream out,
        PrintStream err,
        boolean colour,
        boolean watched,
        boolean typed,
        Set<String> told) {

    /** Where a command reads and writes that has not told anything yet. */
    Console(InputStream in, PrintStream out, PrintStream err, boolean colour, boolean watched, boolean typed) {
        this(in, out, err, colour, watched, typed, new HashSet<>());
    }

    /** The same where nobody watches. */
    Console(InputStream in, PrintStream out, PrintStream err, boolean colour) {
        this(in, out, err, colour, false, false);
    }

    /** Shows how far a long work has come, where somebody watches. */
    ProgressBar progressBar() {
        return new ProgressBar(watched ? err : null, System::nanoTime);
    }

    void print(String text) {
        out.print(text);
    }

    void complain(List<Diagnostic> diagnostics) {
        err.print(DiagnosticPrinter.print(diagnostics, colour));
    }

    void complainOfFiles(List<Problem> problems) {
        problems.forEach(problem -> once(problem + "\n"));
    }

    /** Whether a file could be written; says why where it could not. */
    boolean wrote(Path file, String text) {
        Optional<Problem> failed = TextFile.write(file, text);
        failed.ifPresent(problem -> complainOfFiles(List.of(problem)));
        return failed.isEmpty();
    }

    /** Tells something that is wrong, unless it has been told: several sheets may name the same card. */
    void once(String wrong) {
        if (told.add(wrong)) {
            err.print(wrong);
        }
    }
}
