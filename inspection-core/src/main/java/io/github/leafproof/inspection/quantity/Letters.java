package io.github.leafproof.inspection.quantity;

/** Which characters a text may hold that is shown to people: on a terminal, on paper, or in a file that is read back. */
public final class Letters {
    private Letters() {}

    /**
     * Whether a character can be shown. Not so control characters (among them line breaks and tabs), halves of characters,
     * and those that turn the direction of what follows: with these a stranger's text could make a screen say something
     * else than the file does.
     */
    public static boolean isShowable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL, Character.SURROGATE, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
                false;
            case Character.FORMAT -> !turnsDirection(codePoint);
            default -> true;
        };
    }

    /** Embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX 9, from memory). */
    private static boolean turnsDirection(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
    }
}
