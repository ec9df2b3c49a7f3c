package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.TokenStream;

/**
 * A parser that knows how deep it is. It descends once per rule, so what is nested without end would end with Java's
 * stack; long before that, it stops.
 */
abstract class BoundedParser extends Parser {

    /** Rules within rules. Brackets may nest 200 deep, and each takes up to six rules. */
    static final int DEEPEST = 1_500;

    private int depth;

    BoundedParser(TokenStream input) {
        super(input);
    }

    @Override
    public void enterRule(ParserRuleContext context, int state, int rule) {
        descend();
        super.enterRule(context, state, rule);
    }

    @Override
    public void exitRule() {
        depth--;
        super.exitRule();
    }

    @Override
    public void enterRecursionRule(ParserRuleContext context, int state, int rule, int precedence) {
        descend();
        super.enterRecursionRule(context, state, rule, precedence);
    }

    @Override
    public void unrollRecursionContexts(ParserRuleContext parent) {
        depth--;
        super.unrollRecursionContexts(parent);
    }

    private void descend() {
        if (++depth > DEEPEST) {
            throw new TooDeep(Words.span(getCurrentToken()));
        }
    }

    /** The text is nested deeper than anybody means. */
    static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Span place;

        TooDeep(Span place) {
            super("nested too deep", null, false, false);
            this.place = place;
        }

        Span place() {
            return place;
        }
    }
}
