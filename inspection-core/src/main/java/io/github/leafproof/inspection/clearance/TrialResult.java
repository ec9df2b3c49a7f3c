package io.github.leafproof.inspection.clearance;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a person feels when offering a leaf to a gap. */
public enum TrialResult {
    /** The leaf enters freely: the gap is no smaller than the leaf measures. */
    PASSES,
    /** The leaf does not enter: the gap is smaller than the leaf measures. */
    REFUSES,
    /** The leaf enters with a felt drag: the gap is no smaller than the leaf, and wider by its set's drag band at most. */
    DRAGS;

    /** The word of files and procedures: {@code passes}, {@code refuses}, {@code drags}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The result with this word. */
    public static Optional<TrialResult> named(String word) {
        return Arrays.stream(values())
                .filter(result -> result.word().equals(word))
                .findFirst();
    }
}
