package io.github.leafproof.inspection.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How much hangs on a check. */
public enum Severity {
    /** An engine that fails here must not run. */
    CRITICAL,
    /** To be put right before the engine runs. */
    MAJOR,
    /** Worth knowing and worth putting right. */
    MINOR;

    /** The severity as files and people spell it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The severity with this {@link #word()}. */
    public static Optional<Severity> named(String word) {
        return Stream.of(values())
                .filter(severity -> severity.word().equals(word))
                .findFirst();
    }
}
