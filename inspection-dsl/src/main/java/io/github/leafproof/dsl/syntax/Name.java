package io.github.leafproof.dsl.syntax;

/** A word written by the shop: what a thing is called, or an option, a unit, a state. */
public record Name(String text, Span span) {

    @Override
    public String toString() {
        return text;
    }
}
