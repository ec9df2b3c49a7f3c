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

    /** The most rules that a bracket takes: those of a choice within a choice. */
    private static final int RULES_PER_BRACKET = 7;

    private int deepest;
    private int depth;

    BoundedParser(TokenStream input) {
        super(input);
    }

    /** For how many brackets within brackets there is room. */
    final void allowNesting(int brackets) {
        deepest = (brackets + 5) * RULES_PER_BRACKET;
    }

    /** Counts these rules as entered: a part is read by itself, which stands within them. */
    final void startWithin(int rules) {
        depth = rules;
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
        if (++depth > deepest) {
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
