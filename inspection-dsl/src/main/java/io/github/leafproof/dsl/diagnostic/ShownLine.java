package io.github.leafproof.dsl.diagnostic;

import java.util.ArrayList;
import java.util.List;

/**
 * A source line as it is shown: tabs as blanks, unprintable characters as dots, and no more of a long line than what
 * surrounds the marks. It knows on which screen column each letter of the line stands, so that carets meet their words.
 */
final class ShownLine {

    private static final int WIDEST = 100;
    private static final int TAB = 4;
    private static final String CUT = "\u2026";

    private final String text;
    private final int[] columns;
    private final List<List<Mark>> rows;

    private ShownLine(String text, int[] columns, List<List<Mark>> rows) {
        this.text = text;
        this.columns = columns;
        this.rows = rows;
    }

    static ShownLine around(List<Mark> marks) {
        String line = marks.get(0).source().line(marks.get(0).line());
        int from = 0;
        int to = line.length();
        if (line.length() > WIDEST) {
            from = letterStart(line, Math.max(0, Math.min(marks.get(0).start() - WIDEST / 3, line.length() - WIDEST)));
            to = letterStart(line, Math.min(line.length(), from + WIDEST));
        }
        StringBuilder shown = new StringBuilder(from > 0 ? CUT : "");
        int[] columns = new int[line.length() + 1];
        int column = shown.length();
        for (int at = 0; at < line.length(); ) {
            int letter = line.codePointAt(at);
            int units = Character.charCount(letter);
            for (int unit = 0; unit < units; unit++) {
                columns[at + unit] = column;
            }
            if (at >= from && at < to) {
                String drawn = drawn(letter, column);
                shown.append(drawn);
                column += letter == '\t' ? drawn.length() : width(letter);
            }
            at += units;
        }
        columns[line.length()] = column;
        shown.append(to < line.length() ? CUT : "");
        ShownLine whole = new ShownLine(shown.toString(), columns, new ArrayList<>());
        marks.forEach(whole::place);
        return whole;
    }

    /** A place that does not part the two halves of one letter. */
    private static int letterStart(String line, int at) {
        boolean within = at > 0 && at < line.length() && Character.isLowSurrogate(line.charAt(at));
        return within ? at - 1 : at;
    }

    private static String drawn(int letter, int column) {
        if (letter == '\t') {
            return " ".repeat(TAB - column % TAB);
        }
        return OneLine.isPlain(letter) ? Character.toString(letter) : "\u00B7";
    }

    /** Into the first row where its word and carets have room. */
    private void place(Mark mark) {
        for (List<Mark> row : rows) {
            Mark last = row.get(row.size() - 1);
            int end = Math.max(column(last.end()), column(last.start()) + 1);
            int used = end + (last.word().isEmpty() ? 0 : 1 + width(last.word()));
            if (column(mark.start()) > used) {
                row.add(mark);
                return;
            }
        }
        rows.add(new ArrayList<>(List.of(mark)));
    }

    String text() {
        return text;
    }

    List<List<Mark>> rows() {
        return rows;
    }

    /** The screen column of a letter of the line, from 0. */
    int column(int at) {
        return columns[at];
    }

    static int width(String words) {
        return words.codePoints().map(ShownLine::width).sum();
    }

    /** How many columns a letter takes: none for a combining mark, two for a wide one (after Unicode's UAX 11, in the large). */
    private static int width(int letter) {
        int type = Character.getType(letter);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = (letter >= 0x1100 && letter <= 0x115F)
                || (letter >= 0x2E80 && letter <= 0xA4CF)
                || (letter >= 0xAC00 && letter <= 0xD7A3)
                || (letter >= 0xF900 && letter <= 0xFAFF)
                || (letter >= 0xFE30 && letter <= 0xFE6F)
                || (letter >= 0xFF00 && letter <= 0xFF60)
                || (letter >= 0xFFE0 && letter <= 0xFFE6)
                || (letter >= 0x1F300 && letter <= 0x1FAFF)
                || (letter >= 0x20000 && letter <= 0x3FFFD);
        return wide ? 2 : 1;
    }
}
