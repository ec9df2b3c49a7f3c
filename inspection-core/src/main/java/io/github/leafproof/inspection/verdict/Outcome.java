package io.github.leafproof.inspection.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What came of one check. */
public enum Outcome {
    /** Shown to conform. */
    PASSES,
    /** Not shown to be within the limits aimed for, but shown to be within a second, stated tolerance: goes on, with a remark. */
    TOLERATED,
    /** Shown not to conform. */
    FAILS,
    /** Measured, and cannot be proven either way. */
    OPEN,
    /** The evidence disagrees with itself. */
    CONTRADICTED,
    /** An observation is missing. */
    UNTESTED,
    /** A check that has to pass before this one has not. */
    BLOCKED,
    /** Does not concern this engine. */
    NOT_APPLICABLE;

    /** The outcome as files and people spell it: {@code not_applicable}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The outcome with this {@link #word()}. */
    public static Optional<Outcome> named(String word) {
        return Stream.of(values())
                .filter(outcome -> outcome.word().equals(word))
                .findFirst();
    }

    /** True when what waits behind a check with this outcome may go on. */
    public boolean letsThrough() {
        return this == PASSES || this == TOLERATED || this == NOT_APPLICABLE;
    }
}
