package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Letters;

/** Makes text from a file fit to stand in a message: short, and without characters that would disturb a terminal. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    static String quoted(String text) {
        return "\"" + briefly(text, LONGEST) + "\"";
    }

    static String briefly(String text, int longest) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().limit(longest).forEach(c -> shown.appendCodePoint(Letters.isShowable(c) ? c : '\uFFFD'));
        return text.codePointCount(0, text.length()) > longest
                ? shown.append('…').toString()
                : shown.toString();
    }
}
