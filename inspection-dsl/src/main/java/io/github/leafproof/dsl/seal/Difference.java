package io.github.leafproof.dsl.seal;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The first place where a text is not as it should be.
 *
 * @param place its line and column, both from 1, columns in code points
 * @param is the line as it is, without its indentation
 * @param shouldBe the line as it should be, likewise
 */
record Difference(int offset, String place, String is, String shouldBe) {

    private static final int LONGEST = 70;
    private static final int FIRST_OF_A_CHARACTER = 0xC0;
    private static final int FURTHER_OF_A_CHARACTER = 0x80;

    /** Where two texts part; empty where they are the same. */
    static Optional<Difference> of(byte[] is, byte[] shouldBe) {
        int offset = Arrays.mismatch(is, shouldBe);
        if (offset < 0) {
            return Optional.empty();
        }
        // A character of several bytes differs where it begins.
        int at = offset;
        while (at > 0 && at < shouldBe.length && (shouldBe[at] & FIRST_OF_A_CHARACTER) == FURTHER_OF_A_CHARACTER) {
            at--;
        }
        String before = new String(shouldBe, 0, at, StandardCharsets.UTF_8);
        int lineStart = before.lastIndexOf('\n') + 1;
        long line = before.chars().filter(c -> c == '\n').count() + 1;
        int column = before.codePointCount(lineStart, before.length()) + 1;
        return Optional.of(new Difference(offset, line + ":" + column, line(is, at), line(shouldBe, at)));
    }

    /** From those that should be, the one that it is like for longest; empty where there is none. */
    static Optional<Difference> least(byte[] is, List<byte[]> shouldBe) {
        return shouldBe.stream()
                .flatMap(each -> of(is, each).stream())
                .max(Comparator.comparingInt(Difference::offset));
    }

    private static String line(byte[] text, int at) {
        int start = Math.min(at, text.length);
        while (start > 0 && text[start - 1] != '\n') {
            start--;
        }
        int end = Math.min(at, text.length);
        while (end < text.length && text[end] != '\n') {
            end++;
        }
        String line = new String(text, start, end - start, StandardCharsets.UTF_8)
                .strip()
                .replaceAll(",$", "");
        StringBuilder shown = new StringBuilder();
        line.codePoints().limit(LONGEST).forEach(c -> shown.appendCodePoint(Character.isISOControl(c) ? 0xFFFD : c));
        return line.codePointCount(0, line.length()) > LONGEST
                ? shown.append('\u2026').toString()
                : shown.toString();
    }

    /** Both lines, for a message. */
    String words(String source) {
        return "here stands " + (is.isEmpty() ? "nothing" : is) + "; " + source + " "
                + (shouldBe.isEmpty() ? "nothing" : shouldBe);
    }
}
