package io.github.leafproof.dsl;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import java.util.List;
import java.util.Optional;

/** What became of a procedure's text: a procedure, perhaps with warnings, or everything that is wrong with it. */
public final class Compiled {

    private final Optional<Procedure> procedure;
    private final List<Diagnostic> diagnostics;

    Compiled(Optional<Procedure> procedure, List<Diagnostic> diagnostics) {
        this.procedure = procedure;
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** The procedure; empty when there are errors. */
    public Optional<Procedure> procedure() {
        return procedure;
    }

    /** All errors and warnings, in the order of the file. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }

    /**
     * The procedure, for those to whom errors are a reason to stop.
     *
     * @throws IllegalArgumentException with all diagnostics as its message when there are errors
     */
    public Procedure orElseThrow() {
        return procedure.orElseThrow(
                () -> new IllegalArgumentException("\n" + DiagnosticPrinter.print(diagnostics, false)));
    }
}
