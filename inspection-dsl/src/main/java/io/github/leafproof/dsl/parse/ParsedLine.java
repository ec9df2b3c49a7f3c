package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What reading an expression that stands by itself yields.
 *
 * @param name the name that its value is to have, or null
 * @param expression what is to be computed, or null where it could not be made out
 * @param damage what of the text could not be read
 * @param problems all mistakes of the text in its order
 */
public record ParsedLine(
        @Nullable Name name, @Nullable Expression expression, Damage damage, List<Diagnostic> problems) {

    public ParsedLine {
        problems = List.copyOf(problems);
    }

    /** Nothing but what is wrong. */
    static ParsedLine lost(Problems problems) {
        return new ParsedLine(null, null, problems.damage(), problems.inOrder());
    }
}
