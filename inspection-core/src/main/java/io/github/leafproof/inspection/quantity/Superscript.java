package io.github.leafproof.inspection.quantity;

/** Powers as people write them, small and raised: m², s⁻¹. */
final class Superscript {
    private static final String DIGITS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final char MINUS = '⁻';

    private Superscript() {}

    /** The raised power; nothing for the power one. */
    static String ofPower(int power) {
        if (power == 1) {
            return "";
        }
        StringBuilder raised = new StringBuilder();
        String digits = Integer.toString(power);
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            raised.append(c == '-' ? MINUS : DIGITS.charAt(c - '0'));
        }
        return raised.toString();
    }

    /** The same text with every raised sign brought down to the line, so that one reader serves both spellings. */
    static String lowered(String text) {
        StringBuilder lowered = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int digit = DIGITS.indexOf(c);
            if (digit >= 0) {
                lowered.append((char) ('0' + digit));
            } else {
                lowered.append(c == MINUS ? '-' : c);
            }
        }
        return lowered.toString();
    }
}
