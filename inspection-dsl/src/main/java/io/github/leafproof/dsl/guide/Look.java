package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.report.Paint;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How what is said is to look.
 *
 * @param width how many letters fit into a line
 * @param colour whether colour may be used; it adds nothing to the words
 */
public record Look(int width, boolean colour) {

    private static final Pattern NAME = Pattern.compile("\\w+[_\\[.]\\w");
    private static final int NARROWEST = 30;
    private static final int WIDEST = 100;

    /** Takes a width that text can still be set in. */
    public Look {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    /** As a file or a pipe takes it. */
    public static Look plain() {
        return new Look(WIDEST, false);
    }

    Lines lines() {
        return new Lines(width);
    }

    /** Why a line did not do, and what would. */
    String unclear(String problem, String remedy) {
        Lines lines = lines();
        lines.block("  ? ", sentence(problem));
        if (!remedy.isEmpty()) {
            lines.block("    ", sentence(remedy));
        }
        return lines.toString();
    }

    /** Words as a sentence; a name of the procedure at its beginning stays as it is written. */
    static String sentence(String words) {
        String end = words.endsWith("?") || words.endsWith(".") ? "" : ".";
        boolean named = NAME.matcher(words).lookingAt();
        String first = words.substring(0, Math.min(1, words.length()));
        return (named ? first : first.toUpperCase(Locale.ROOT)) + words.substring(first.length()) + end;
    }

    Paint paint() {
        return Paint.of(colour);
    }
}
