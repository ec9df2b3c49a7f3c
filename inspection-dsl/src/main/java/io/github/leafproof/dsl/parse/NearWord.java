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

    /**
     * The nearest in spelling; of short keywords only one with the same letters in another order or case, unless nothing
     * else could stand there.
     */
    static Optional<String> of(String word, Collection<String> keywords) {
        if (keywords.size() == 1) {
            return amongFew(word, keywords);
        }
        String lower = word.toLowerCase(Locale.ROOT);
        return Spelling.nearest(
                lower,
                keywords.stream()
                        .filter(keyword ->
                                keyword.length() > SHORT || sorted(lower).equals(sorted(keyword)))
                        .toList());
    }

    /** The nearest in spelling where nothing else could stand. */
    static Optional<String> amongFew(String word, Collection<String> keywords) {
        return Spelling.nearest(word.toLowerCase(Locale.ROOT), keywords);
    }

    private static String sorted(String word) {
        char[] letters = word.toCharArray();
        Arrays.sort(letters);
        return new String(letters);
    }
}
