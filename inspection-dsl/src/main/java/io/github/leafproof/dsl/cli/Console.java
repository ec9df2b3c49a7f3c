package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.inspection.record.Problem;
import java.io.PrintStream;
import java.util.List;

/**
 * Where a command writes: what was asked for goes to standard output, what went wrong to standard error.
 *
 * @param colour whether a person looks at it in a terminal and wants colour
 */
record Console(PrintStream out, PrintStream err, boolean colour) {

    void print(String text) {
        out.print(text);
    }

    void complain(List<Diagnostic> diagnostics) {
        err.print(DiagnosticPrinter.print(diagnostics, colour));
    }

    void complainOfFiles(List<Problem> problems) {
        problems.forEach(problem -> err.print(problem + "\n"));
    }
}
