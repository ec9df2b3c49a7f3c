package io.github.leafproof.dsl.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * The text of one file, under the name that its reader knows it by. Lines and columns count from 1; a column counts
 * characters as a person does (code points), not bytes.
 */
public final class SourceText {

    private final String name;
    private final String text;
    private final String sha256;
    private final int firstLine;
    private final int[] lineStarts;

    private SourceText(String name, int firstLine, String text, byte[] bytes) {
        this.name = name;
        this.firstLine = firstLine;
        this.text = text;
        this.sha256 = digest(bytes);
        this.lineStarts = lineStarts(text);
    }

    /** A text and the name to show for it in messages. */
    public static SourceText of(String name, String text) {
        return fromLine(1, name, text);
    }

    /** A text that begins at a later line of what goes by that name: one line of many that were typed, say. */
    public static SourceText fromLine(int line, String name, String text) {
        return new SourceText(name, line, text, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The text of a file, with the bytes it was read from: they may begin with a byte order mark, which is no part of
     * the text, and it is by the bytes that the file can be recognised again.
     */
    public static SourceText ofFile(String name, String text, byte[] bytes) {
        return new SourceText(name, 1, text, bytes);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int lines = 1;
        for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
            if (lines == starts.length) {
                starts = Arrays.copyOf(starts, 2 * lines);
            }
            starts[lines++] = at + 1;
        }
        return Arrays.copyOf(starts, lines);
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    /** How many lines there are; an empty text has one. */
    public int lines() {
        return lineStarts.length;
    }

    /** One line, without its end. */
    public String line(int number) {
        int after = number - firstLine + 1;
        int start = lineStarts[after - 1];
        int end = after < lineStarts.length ? lineStarts[after] - 1 : text.length();
        return text.substring(start, end > start && text.charAt(end - 1) == '\r' ? end - 1 : end);
    }

    /** Where a line starts: the offset of its first character. */
    public int lineStart(int number) {
        return lineStarts[number - firstLine];
    }

    /** Line and column of a character, or of the place just behind the last one. */
    public Position at(int offset) {
        int found = Arrays.binarySearch(lineStarts, offset);
        int line = found >= 0 ? found : -found - 2;
        return new Position(
                line + firstLine, text.codePointCount(lineStarts[line], Math.min(offset, text.length())) + 1);
    }

    /** The stretch of this text from one offset up to, not including, another. */
    public Span span(int start, int end) {
        return new Span(this, start, end);
    }

    /** What a span covers. */
    public String of(Span span) {
        return text.substring(span.start(), span.end());
    }

    /** The SHA-256 of the file's bytes, or of a text in UTF-8, as 64 lower-case hexadecimal digits. */
    public String sha256() {
        return sha256;
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return name;
    }

    /** A place as people count it: the first character of a text is at line 1, column 1. */
    public record Position(int line, int column) {

        /** As in messages: {@code 48:39}. */
        @Override
        public String toString() {
            return line + ":" + column;
        }
    }
}
