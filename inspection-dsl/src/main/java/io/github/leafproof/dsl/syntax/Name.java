package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;

/** A word written by the shop: what a thing is called, or an option, a unit, a state. */
public record Name(String text, Span span) {

    @Override
    public String toString() {
        return text;
    }
}
