package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.Interval;

/**
 * A stretch of a text as the lexer wants it. Its positions are those of the whole text in UTF-16 units, so that what
 * is read out of the middle of a file knows its place without any arithmetic.
 */
final class CharacterWindow implements CharStream {

    private final SourceText source;
    private final String text;
    private final int start;
    private final int end;
    private int at;

    CharacterWindow(SourceText source, int start, int end) {
        this.source = source;
        this.text = source.text();
        this.start = start;
        this.end = end;
        this.at = start;
    }

    /** Where a word stands that was read from such a stretch. */
    static Span span(Token word, int start, int end) {
        return ((CharacterWindow) word.getInputStream()).source.span(start, end);
    }

    @Override
    public String getText(Interval interval) {
        return text.substring(interval.a, Math.max(interval.a, Math.min(interval.b + 1, text.length())));
    }

    @Override
    public void consume() {
        if (at >= end) {
            throw new IllegalStateException("the lexer reads past the end");
        }
        at++;
    }

    @Override
    public int LA(int ahead) {
        int place = ahead > 0 ? at + ahead - 1 : at + ahead;
        return start <= place && place < end ? text.charAt(place) : IntStream.EOF;
    }

    @Override
    public int mark() {
        return 0;
    }

    @Override
    public void release(int marker) {
        // Nothing is ever dropped, so nothing need be kept.
    }

    @Override
    public int index() {
        return at;
    }

    @Override
    public void seek(int index) {
        at = Math.min(index, end);
    }

    @Override
    public int size() {
        return end;
    }

    @Override
    public String getSourceName() {
        return source.name();
    }
}
