package io.github.leafproof.dsl.diagnostic;

/** Words that may come from a stranger's file, made safe to print on one line of a terminal. */
final class OneLine {

    private OneLine() {}

    /** The same with every control and formatting character shown as a middle dot. */
    static String of(String words) {
        StringBuilder safe = new StringBuilder(words.length());
        words.codePoints().forEach(character -> safe.appendCodePoint(isPlain(character) ? character : '\u00B7'));
        return safe.toString();
    }

    static boolean isPlain(int character) {
        return switch (Character.getType(character)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
