package io.github.leafproof.dsl.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;

/** The clauses of one declaration that may be said once in it, and where they were. */
final class SaidOnce {

    private final SmallThings things;
    // A handful at most.
    private final List<Token> said = new ArrayList<>(4);

    SaidOnce(SmallThings things) {
        this.things = things;
    }

    /** Takes note of the word that begins such a clause, and complains of the second. */
    void begins(Token word) {
        for (Token before : said) {
            if (before.getText().equals(word.getText())) {
                things.report(ClauseDiagnostics.saidTwice(Words.span(word), word.getText(), Words.span(before)));
                return;
            }
        }
        said.add(word);
    }
}
