package io.github.leafproof.dsl.parse;

/**
 * Where a quoted text and its holes end. A text lies on one line; a hole may hold braces of its own and further texts,
 * {@code "{choose arm { metal: "a" plastic: "b" }}"}. A backslash takes the meaning from the sign behind it.
 */
final class TextScan {

    /** Texts within holes of texts within holes: more than this nobody reads. */
    static final int DEEPEST = 8;

    private TextScan() {}

    /**
     * The place behind the closing quote.
     *
     * @param open the place behind the opening quote
     * @return −1 where the line or the text ends first
     */
    static int end(CharSequence text, int open, int limit) {
        int whole = end(text, open, limit, 0);
        return whole >= 0 ? whole : endWithoutHoles(text, open, limit);
    }

    private static int end(CharSequence text, int open, int limit, int depth) {
        if (depth > DEEPEST) {
            return -1;
        }
        for (int at = open; at < limit && !isLineEnd(text.charAt(at)); at++) {
            char here = text.charAt(at);
            if (here == '"') {
                return at + 1;
            } else if (here == '\\') {
                at++;
            } else if (here == '{') {
                int hole = holeEnd(text, at + 1, limit, depth);
                if (hole < 0) {
                    return -1;
                }
                at = hole - 1;
            }
        }
        return -1;
    }

    /**
     * The place behind a hole's closing brace.
     *
     * @param open the place behind its opening brace
     * @return −1 where the line or the text ends first
     */
    static int holeEnd(CharSequence text, int open, int limit) {
        return holeEnd(text, open, limit, 0);
    }

    private static int holeEnd(CharSequence text, int open, int limit, int depth) {
        int braces = 1;
        for (int at = open; at < limit && !isLineEnd(text.charAt(at)); at++) {
            char here = text.charAt(at);
            if (here == '"') {
                int inner = end(text, at + 1, limit, depth + 1);
                if (inner < 0) {
                    return -1;
                }
                at = inner - 1;
            } else if (here == '{') {
                braces++;
            } else if (here == '}' && --braces == 0) {
                return at + 1;
            }
        }
        return -1;
    }

    /** As {@link #end}, when a hole is never closed: the next quote then ends the text all the same. */
    private static int endWithoutHoles(CharSequence text, int open, int limit) {
        for (int at = open; at < limit && !isLineEnd(text.charAt(at)); at++) {
            if (text.charAt(at) == '"') {
                return at + 1;
            } else if (text.charAt(at) == '\\') {
                at++;
            }
        }
        return -1;
    }

    /** Whether this character ends a line. */
    static boolean isLineEnd(int character) {
        return character == '\n' || character == '\r';
    }
}
