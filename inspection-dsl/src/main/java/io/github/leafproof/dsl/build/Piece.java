package io.github.leafproof.dsl.build;

/** Pieces of a procedure's text, each looked at before it is written: none can reach beyond its own place. */
final class Piece {

    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";

    private Piece() {}

    /** A word, or a name with its indexes: {@code lash[valve]}. */
    static String name(String name) {
        if (!name.matches("[\\p{L}_][\\p{L}\\p{N}_]*(\\[[\\p{L}_][\\p{L}\\p{N}_]*])*")) {
            throw new IllegalArgumentException("\"" + name
                    + "\" is no name: letters, digits and _ make one, and indexes stand in square brackets");
        }
        return name;
    }

    /**
     * An expression, a type, a condition: whatever it says, it stays in its line, its texts end, and its brackets have
     * their partners.
     */
    static String words(String words) {
        StringBuilder open = new StringBuilder();
        int at = 0;
        while (at < words.length()) {
            char here = words.charAt(at);
            if (here == '"') {
                at = textEnd(words, at + 1);
                continue;
            }
            if (OPENING.indexOf(here) >= 0) {
                open.append(here);
            } else if (CLOSING.indexOf(here) >= 0) {
                boolean partner =
                        !open.isEmpty() && OPENING.indexOf(open.charAt(open.length() - 1)) == CLOSING.indexOf(here);
                if (!partner) {
                    throw new IllegalArgumentException("a bracket without its partner in: " + words);
                }
                open.setLength(open.length() - 1);
            } else if (here == '\n' || here == '\r' || words.startsWith("//", at)) {
                throw new IllegalArgumentException("a line end or a comment in: " + words);
            }
            at++;
        }
        if (!open.isEmpty() || words.isBlank()) {
            throw new IllegalArgumentException(
                    words.isBlank() ? "nothing is written here" : "a bracket without its partner in: " + words);
        }
        return words.strip();
    }

    private static int textEnd(String words, int from) {
        int at = from;
        while (at < words.length() && words.charAt(at) != '"') {
            if (words.charAt(at) == '{') {
                at = holeEnd(words, at);
            } else {
                at += words.charAt(at) == '\\' ? 2 : 1;
            }
        }
        if (at >= words.length() || words.substring(from, at).indexOf('\n') >= 0) {
            throw new IllegalArgumentException("a text without its closing quote in: " + words);
        }
        return at + 1;
    }

    /** A text in quotes; what stands in it is as the language has it: braces are a hole, and braces behind a stroke are braces. */
    static String text(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        int at = 0;
        while (at < text.length()) {
            char here = text.charAt(at);
            int end = at + 1;
            if (here == '\n' || here == '\r') {
                throw new IllegalArgumentException("a text stays in one line: " + text);
            }
            if (here == '\\') {
                end = at + 2;
            } else if (here == '{') {
                end = holeEnd(text, at);
                words(text.substring(at, end));
            }
            if (end > text.length()) {
                throw new IllegalArgumentException("a \\ escapes what comes behind it, and here nothing does: " + text);
            }
            quoted.append(here == '"' ? "\\\"" : text.substring(at, end));
            at = end;
        }
        return quoted.append('"').toString();
    }

    /** The place behind a hole that begins here. */
    private static int holeEnd(String text, int from) {
        int depth = 0;
        int at = from;
        while (at < text.length()) {
            char here = text.charAt(at);
            at++;
            if (here == '"') {
                at = textEnd(text, at);
            } else if (here == '{') {
                depth++;
            } else if (here == '}' && --depth == 0) {
                return at;
            }
        }
        throw new IllegalArgumentException("a hole without its closing brace in: " + text);
    }
}
