package io.github.leafproof.inspection.record;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Tells line and column of any offset in a text. Every entry of a sheet asks for its place, so a look-up has to be cheap
 * however long the lines are.
 */
final class LineIndex {
    private final int[] lineStarts;

    /** What the text's first line is called; it may be a later one of a file that is read line by line. */
    private final long firstLine;

    /** Where characters stand that take two places in the text and one column. */
    private final int[] wideCharacters;

    LineIndex(String text, long firstLine) {
        this.firstLine = firstLine;
        this.lineStarts = IntStream.range(0, text.length())
                .filter(i -> endsLine(text, i))
                .map(i -> i + 1)
                .toArray();
        this.wideCharacters = IntStream.range(1, text.length())
                .filter(i -> Character.isSurrogatePair(text.charAt(i - 1), text.charAt(i)))
                .toArray();
    }

    private static boolean endsLine(String text, int i) {
        char c = text.charAt(i);
        boolean halfOfLineEnd = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
        return c == '\n' || (c == '\r' && !halfOfLineEnd);
    }

    /** {@code line:column}, both from 1, the column in code points. */
    String place(int offset) {
        int linesBefore = countUpTo(lineStarts, offset);
        int lineStart = linesBefore == 0 ? 0 : lineStarts[linesBefore - 1];
        int wide = countUpTo(wideCharacters, offset - 1) - countUpTo(wideCharacters, lineStart - 1);
        return (firstLine + linesBefore) + ":" + (offset - lineStart - wide + 1);
    }

    private static int countUpTo(int[] sorted, int highest) {
        int found = Arrays.binarySearch(sorted, highest);
        return found >= 0 ? found + 1 : -found - 1;
    }
}
