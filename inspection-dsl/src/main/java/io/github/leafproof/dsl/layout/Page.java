package io.github.leafproof.dsl.layout;

import io.github.leafproof.dsl.parse.Passage.Comment;
import io.github.leafproof.dsl.parse.Passage.Word;

/** The page being written: it grows word by word, and sees to it that every comment keeps its place. */
final class Page {

    /** How much further in a line stands than the one it belongs to. */
    static final int INDENT = 2;

    private static final String BEFORE_COMMENT = "  ";
    private static final int NOWHERE = -1;

    private final StringBuilder text = new StringBuilder();
    private int column;
    /** How far in the next word stands if it is to begin a line. */
    private int nextLine = NOWHERE;

    private Blank nextBlank = Blank.NEVER;
    /** A comment ends its line, whatever comes next. */
    private boolean lineIsFull;

    /** Where blank lines stand before a word and the comments above it. */
    enum Blank {
        /** Nowhere. */
        NEVER,
        /** Not before all of it; behind its comments, where the writer has left some. */
        INSIDE,
        /** Where the writer has left some; several are one. */
        KEPT,
        /** Before all of it, and behind its comments where the writer has left some. */
        APART
    }

    /** Lets the next word begin a line. */
    void endLine(int indent, Blank blank) {
        nextLine = indent;
        nextBlank = blank;
    }

    /**
     * Where this word would begin if it came next.
     *
     * @param indent how far in it stands where only a comment lets it begin a line
     */
    int column(Word word, int gap, int indent) {
        if (nextLine != NOWHERE) {
            return nextLine;
        }
        return isSevered(word) ? indent : column + gap;
    }

    /** Adds a word: on a line of its own if asked to or if a comment has ended the line, else on the line that there is. */
    void add(Word word, int gap, int indent) {
        if (nextLine != NOWHERE) {
            begin(word, nextLine, nextBlank);
        } else if (isSevered(word)) {
            begin(word, indent, Blank.NEVER);
        } else {
            write(" ".repeat(gap));
            write(word);
        }
    }

    /** Adds a closing brace on a line of its own; comments above it stand within what it closes. */
    void close(Word brace, int indent, Blank blank) {
        comments(brace, indent + INDENT, blank);
        newLine(indent, false);
        write(brace);
    }

    /** Whether a comment stands between this word and the line. */
    boolean isSevered(Word word) {
        return lineIsFull || !word.above().isEmpty();
    }

    private void begin(Word word, int indent, Blank blank) {
        comments(word, indent, blank);
        boolean first = word.above().isEmpty();
        boolean kept = word.afterBlankLine() && blank != Blank.NEVER && !(first && blank == Blank.INSIDE);
        newLine(indent, kept || (first && blank == Blank.APART));
        write(word);
    }

    private void comments(Word word, int indent, Blank blank) {
        Blank here = blank;
        for (Comment comment : word.above()) {
            newLine(indent, here == Blank.APART || (here == Blank.KEPT && comment.afterBlankLine()));
            write(comment.letters());
            here = blank == Blank.NEVER ? Blank.NEVER : Blank.KEPT;
        }
    }

    private void newLine(int indent, boolean blankLine) {
        if (!text.isEmpty()) {
            text.append(blankLine ? "\n\n" : "\n");
        }
        column = 0;
        nextLine = NOWHERE;
        write(" ".repeat(indent));
    }

    private void write(Word word) {
        write(word.letters());
        String behind = word.behind();
        lineIsFull = behind != null;
        if (behind != null) {
            write(BEFORE_COMMENT + behind);
        }
    }

    private void write(String letters) {
        text.append(letters);
        column += letters.codePointCount(0, letters.length());
    }

    /** All of it; the last line ends like every other. */
    String text() {
        return text.toString().stripTrailing() + "\n";
    }
}
