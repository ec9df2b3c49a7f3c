package io.github.leafproof.dsl.parse;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.Lexer;

/**
 * The part of the lexer that is easier said in Java: where a quoted text ends. A text that is never closed ends with
 * its line, or before the brace at the line's end, since that most likely opens the block the line is about.
 */
abstract class TextLexer extends Lexer {

    private static final String DOUBLE = "\u201C\u201D\u201E\u00AB\u00BB\"";
    private static final String SINGLE = "\u2018\u2019\u201A'";

    private final CharStream characters;

    TextLexer(CharStream characters) {
        super(characters);
        this.characters = characters;
    }

    /** Reads on behind an opening quote. */
    final void readText() {
        Ahead ahead = new Ahead(characters);
        int end = TextScan.end(ahead, 0, Integer.MAX_VALUE);
        if (end < 0) {
            setType(InspectionLexer.UNCLOSED_STRING);
            consume(ahead.lineWithoutOpeningBrace());
        } else {
            consume(end);
        }
    }

    /** Reads on behind a quote that is not the straight one: to the next of its kind, else as far as the line goes. */
    final void readCurlyText() {
        Ahead ahead = new Ahead(characters);
        String closing = SINGLE.indexOf(characters.LA(-1)) >= 0 ? SINGLE : DOUBLE;
        for (int at = 0; !TextScan.isLineEnd(ahead.charAt(at)); at++) {
            if (closing.indexOf(ahead.charAt(at)) >= 0) {
                consume(at + 1);
                return;
            }
        }
        consume(ahead.lineWithoutOpeningBrace());
    }

    private void consume(int count) {
        for (int i = 0; i < count; i++) {
            getInterpreter().consume(characters);
        }
    }

    /** What comes next, seen as letters counted from here; behind the end there are only line ends. */
    private record Ahead(CharStream characters) implements CharSequence {

        @Override
        public int length() {
            return Integer.MAX_VALUE;
        }

        @Override
        public char charAt(int index) {
            int next = characters.LA(index + 1);
            return next == IntStream.EOF ? '\n' : (char) next;
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            throw new UnsupportedOperationException("only single letters are looked at");
        }

        int lineWithoutOpeningBrace() {
            int end = 0;
            while (!TextScan.isLineEnd(charAt(end))) {
                end++;
            }
            while (end > 0 && Character.isWhitespace(charAt(end - 1))) {
                end--;
            }
            return end > 0 && charAt(end - 1) == '{' ? end - 1 : end;
        }
    }
}
