package io.github.leafproof.inspection.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
public final class Spelling {
    private Spelling() {}

    /**
     * The known word nearest to what was written: the same letters in another case, else the fewest letters changed, added,
     * left out or swapped; of equals the one that begins alike and is as long, since those are seldom wrong, and of the rest the first. Empty when no word is near enough to be worth suggesting (about one letter in three wrong).
     */
    public static Optional<String> nearest(String written, Collection<String> known) {
        Optional<String> otherCase = known.stream()
                .filter(word -> differsOnlyInCase(word, written))
                .sorted()
                .findFirst();
        if (otherCase.isPresent()) {
            return otherCase;
        }
        int allowed = Math.max(1, written.length() / 3);
        return known.stream()
                .filter(word -> Math.abs(word.length() - written.length()) <= allowed)
                .filter(word -> shareSomething(word, written))
                .filter(word -> distance(word, written) <= allowed)
                .min(Comparator.comparingInt((String word) -> distance(word, written))
                        .thenComparing(word -> !word.startsWith(written.substring(0, 1)))
                        .thenComparing(word -> word.length() != written.length()));
    }

    /** True when only capitals tell the two apart. */
    public static boolean differsOnlyInCase(String a, String b) {
        return !a.equals(b) && a.toLowerCase(Locale.ROOT).equals(b.toLowerCase(Locale.ROOT));
    }

    // Of two single letters every one is "one change" away; without a letter in common that is no hint at all.
    private static boolean shareSomething(String a, String b) {
        return a.chars().anyMatch(c -> b.indexOf(c) >= 0);
    }

    /** Letters changed, added, left out or swapped with a neighbour (optimal string alignment). */
    private static int distance(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cheapest(int[][] cost, String a, String b, int i, int j) {
        int change = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(change, 1 + Math.min(cost[i - 1][j], cost[i][j - 1]));
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
