package io.github.leafproof.dsl.source;

/**
 * A stretch of a source text, half-open: from the character at {@code start} up to, not including, the one at
 * {@code end}. Both count UTF-16 units from 0; an empty span marks a place between two characters. A span knows its
 * text, since a procedure may be written in several files.
 */
public record Span(SourceText source, int start, int end) {

    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("a span cannot run from " + start + " to " + end);
        }
    }

    /** The shortest span that covers both; they stand in one text. */
    public Span to(Span other) {
        if (source != other.source) {
            throw new IllegalArgumentException("no span runs from " + source + " to " + other.source);
        }
        return new Span(source, Math.min(start, other.start), Math.max(end, other.end));
    }

    /** The place just before its first character. */
    public Span before() {
        return new Span(source, start, start);
    }

    /** The place just behind its last character. */
    public Span behind() {
        return new Span(source, end, end);
    }
}
