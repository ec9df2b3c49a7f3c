package io.github.leafproof.inspection.record;

/** Makes text from a file fit to stand in a message: short, and without characters that would disturb a terminal. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String quoted(String text) {
        return "\"" + briefly(text, LONGEST) + "\"";
    }

    static String briefly(String text, int longest) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().limit(longest).forEach(c -> shown.appendCodePoint(isUnshowable(c) ? '\uFFFD' : c));
        return text.codePointCount(0, text.length()) > longest
                ? shown.append('…').toString()
                : shown.toString();
    }

    /** Control characters, halves of characters, and those that turn the direction of what follows. */
    static boolean isUnshowable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                true;
            case Character.FORMAT -> turnsDirection(codePoint);
            default -> false;
        };
    }

    private static boolean turnsDirection(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
    }
}
