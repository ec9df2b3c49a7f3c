package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.syntax.ProcedureText;
import java.util.List;

/**
 * What reading a procedure yields.
 *
 * @param tree everything that could be understood; complete when there are no problems
 * @param problems all mistakes of the text in its order
 */
public record Parsed(ProcedureText tree, List<Diagnostic> problems) {

    public Parsed {
        problems = List.copyOf(problems);
    }
}
