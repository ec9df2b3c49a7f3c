package io.github.leafproof.dsl.parse;

import io.github.leafproof.inspection.quantity.Spelling;
import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The keyword that a word was probably meant to be. */
final class NearWord {

    /** Words so short are soon near to anything. */
    private static final int SHORT = 3;

    private NearWord() {}

    /** The nearest in spelling; of short keywords only one with the same letters in another order or case. */
    static Optional<String> of(String word, Collection<String> keywords) {
        String lower = word.toLowerCase(Locale.ROOT);
        return Spelling.nearest(
                lower,
                keywords.stream()
                        .filter(keyword ->
                                keyword.length() > SHORT || sorted(lower).equals(sorted(keyword)))
                        .toList());
    }

    private static String sorted(String word) {
        char[] letters = word.toCharArray();
        Arrays.sort(letters);
        return new String(letters);
    }
}
