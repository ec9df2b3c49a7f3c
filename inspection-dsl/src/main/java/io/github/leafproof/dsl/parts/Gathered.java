package io.github.leafproof.dsl.parts;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.syntax.ProcedureText;
import java.util.List;

/**
 * A procedure put together from its files.
 *
 * @param text everything that could be understood; what a file that could not be had would have said counts as damage
 * @param problems the mistakes of all files: those of the procedure's own, then those of the others in the order of their
 *     first use
 */
public record Gathered(ProcedureText text, List<Diagnostic> problems) {
    public Gathered {
        problems = List.copyOf(problems);
    }
}
