package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.HashMap;
import java.util.Map;
import org.antlr.v4.runtime.Token;

/** The clauses of one declaration that may be said once in it, and where they were. */
final class SaidOnce {

    private final SmallThings things;
    private final Map<String, Span> said = new HashMap<>();

    SaidOnce(SmallThings things) {
        this.things = things;
    }

    /** Takes note of the word that begins such a clause, and complains of the second. */
    void begins(Token word) {
        Span span = Words.span(word);
        Span before = said.putIfAbsent(word.getText(), span);
        if (before != null) {
            things.report(ClauseDiagnostics.saidTwice(span, word.getText(), before));
        }
    }
}
