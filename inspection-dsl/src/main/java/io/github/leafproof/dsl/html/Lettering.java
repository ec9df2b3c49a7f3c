package io.github.leafproof.dsl.html;

import io.github.leafproof.inspection.quantity.Letters;
import java.util.ArrayList;
import java.util.List;

/**
 * Text that has to fit a width. How wide a letter is depends on the reader's fonts, so the widths are those of a wide sans
 * serif, and what is set narrower leaves a little room.
 */
public final class Lettering {

    private static final String ELLIPSIS = "…";

    private Lettering() {}

    /** How wide a text is in letters of this size, about. */
    public static double width(String text, double size) {
        return text.codePoints().mapToDouble(Lettering::width).sum() * size;
    }

    private static double width(int letter) {
        if ("iljtfrI.,:;'|!()[]{} -/".indexOf(letter) >= 0) {
            return 0.40;
        }
        if ("mwMW@%—".indexOf(letter) >= 0) {
            return 0.95;
        }
        if (letter >= 0x1100) {
            return 1.05;
        }
        return Character.isUpperCase(letter) ? 0.70 : 0.62;
    }

    /** A text in lines of so much width; a word that is too long is broken, and what is too much is left out with a mark. */
    public static List<String> wrapped(String text, double size, double width, int mostLines) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            int fits = fitting(line, size, width);
            while (fits < line.length() && lines.size() <= mostLines) {
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
                fits = fitting(line, size, width);
            }
            if (lines.size() > mostLines) {
                break;
            }
        }
        lines.add(line);
        return lines.size() <= mostLines ? lines : cut(lines.subList(0, mostLines), size, width);
    }

    private static List<String> cut(List<String> lines, double size, double width) {
        List<String> cut = new ArrayList<>(lines);
        String last = cut.remove(cut.size() - 1);
        int fits = fitting(last, size, width - width(ELLIPSIS, size));
        cut.add(last.substring(0, fits).strip() + ELLIPSIS);
        return cut;
    }

    /** How many letters fit, at least one, and no letter parted in two. */
    private static int fitting(String text, double size, double width) {
        int end = 0;
        double used = 0;
        while (end < text.length()) {
            int letter = text.codePointAt(end);
            used += width(letter) * size;
            if (used > width && end > 0) {
                break;
            }
            end += Character.charCount(letter);
        }
        return end;
    }

    /**
     * A text without what no drawing can show: control characters, halves of letters, and marks that would turn the words
     * round.
     */
    public static String clean(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            if (letter == '\n' || letter == '\t' || letter == '\r') {
                clean.append(' ');
            } else if (isShown(letter)) {
                clean.appendCodePoint(letter);
            } else {
                clean.append('\uFFFD');
            }
        });
        return clean.toString();
    }

    /** XML has no place for the last two characters of a plane (XML 1.0, 2.2, from memory). */
    static boolean isShown(int letter) {
        return Letters.isShowable(letter) && (letter & 0xFFFE) != 0xFFFE;
    }
}
