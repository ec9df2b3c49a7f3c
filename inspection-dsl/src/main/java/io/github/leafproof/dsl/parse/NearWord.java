package io.github.leafproof.dsl.parse;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** The keyword that a word was probably meant to be. */
final class NearWord {

    private NearWord() {}

    /**
     * The nearest by letters left out, added, changed or swapped; none where more than a third would differ. Of short
     * words, which are soon near to anything, only the case or the order of letters may differ.
     */
    static Optional<String> of(String word, Collection<String> keywords) {
        String lower = word.toLowerCase(Locale.ROOT);
        return keywords.stream()
                .filter(keyword -> isNear(lower, keyword))
                .min(Comparator.<String>comparingInt(keyword -> distance(lower, keyword))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static boolean isNear(String word, String keyword) {
        if (keyword.length() <= 3) {
            return sorted(word).equals(sorted(keyword));
        }
        return distance(word, keyword) <= keyword.length() / 3;
    }

    private static String sorted(String word) {
        return word.chars()
                .sorted()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static int distance(String one, String other) {
        if (Math.abs(one.length() - other.length()) > 4) {
            return Integer.MAX_VALUE;
        }
        int[][] steps = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : step(one, other, steps, i, j);
            }
        }
        return steps[one.length()][other.length()];
    }

    private static int step(String one, String other, int[][] steps, int i, int j) {
        int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int best = Math.min(steps[i - 1][j - 1] + change, 1 + Math.min(steps[i - 1][j], steps[i][j - 1]));
        boolean swapped =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(best, steps[i - 2][j - 2] + 1) : best;
    }
}
