package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Letters;
import java.util.List;
import java.util.regex.Pattern;

/** Says in a writer's words what is wrong where JSON breaks off. */
final class BrokenJson {
    private static final List<String> NO_NUMBERS = List.of("NaN", "Infinity", "INF");

    private static final Pattern SHORT_ESCAPE = Pattern.compile("\\\\u[0-9A-Fa-f]{0,3}$");

    private BrokenJson() {}

    static String message(String text, int offset) {
        for (String word : NO_NUMBERS) {
            if (text.startsWith(word, offset - word.length())) {
                return word + " is no number";
            }
        }
        return offset < text.length()
                ? named(text.codePointAt(offset)) + " is out of place here"
                : "the file ends too early";
    }

    private static String named(int c) {
        return switch (c) {
            case '\n', '\r' -> "the end of the line";
            case '\t' -> "a tab";
            case ' ' -> "a blank";
            default -> Letters.isShowable(c) ? "the character " + Character.toString(c) : "an invisible character";
        };
    }

    static String help(String text, int offset) {
        int c = offset < text.length() ? text.codePointAt(offset) : ' ';
        if (offset > 0 && text.charAt(offset - 1) == '\\') {
            return "a backslash inside a text is written twice: \\\\";
        }
        if (SHORT_ESCAPE
                .matcher(text.substring(Math.max(0, offset - 5), offset))
                .find()) {
            return "after \\u come four digits from 0 to 9 and a to f";
        }
        if (c == '.' || c == '+' || Character.isDigit(c)) {
            return "a number has a dot for decimals, a digit on both sides of it, no plus and no leading zero: 0.5, 1.5, -3";
        }
        return switch (c) {
            case '\'', '\u2018', '\u2019', '\u201C', '\u201D', '\u201E', '\u00AB', '\u00BB' ->
                "keys and texts stand in straight double quotes: \"bore\"";
            case '}', ']' ->
                afterComma(text, offset)
                        ? "remove the comma before it: nothing follows it"
                        : "check that a value stands before it, and that it closes the bracket opened last";
            case '"' -> "a comma or a colon is missing before it";
            case '/', '#' -> "JSON has no comments; a remark on an entry goes into its note";
            case '\n', '\r', '\t' ->
                "a text ends on the line it began on; a line break inside it is written \\n, a tab \\t";
            default ->
                "keys, words and quantities stand in double quotes (\"0.05 mm\"); only true, false and plain numbers such as "
                        + "1.5 do without";
        };
    }

    private static boolean afterComma(String text, int offset) {
        return text.substring(0, offset).stripTrailing().endsWith(",");
    }
}
