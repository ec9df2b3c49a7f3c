package io.github.leafproof.dsl.source;

/**
 * A stretch of a source text, half-open: from the character at {@code start} up to, not including, the one at
 * {@code end}. Both count UTF-16 units from 0; an empty span marks a place between two characters.
 */
public record Span(int start, int end) {

    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("a span cannot run from " + start + " to " + end);
        }
    }

    /** The shortest span that covers both. */
    public Span to(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }
}
