package io.github.leafproof.dsl.reckon;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Value;
import java.util.List;

/** What became of an expression. */
public sealed interface Reckoned {

    /**
     * It has a value.
     *
     * @param words the value as a report would show it, behind the name that it was given, where it was given one; of a
     *     condition also why it holds or not
     * @param after the reckoner that knows that name
     */
    record Answer(Value value, String words, Reckoner after) implements Reckoned {}

    /**
     * It makes sense and has no value: the root of less than nothing, a fact that the card does not state.
     *
     * @param why what is lacking, as a sentence without its end
     */
    record Unanswered(String why) implements Reckoned {}

    /**
     * It makes no sense.
     *
     * @param diagnostics everything that is wrong with it, in the order of the text
     */
    record Refused(List<Diagnostic> diagnostics) implements Reckoned {
        public Refused {
            diagnostics = List.copyOf(diagnostics);
        }
    }
}
