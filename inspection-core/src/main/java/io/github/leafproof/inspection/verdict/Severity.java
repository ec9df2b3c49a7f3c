package io.github.leafproof.inspection.verdict;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How much hangs on a check. */
public enum Severity {
    /** An engine that fails here must not run. */
    CRITICAL,
    /** To be put right before the engine runs. */
    MAJOR,
    /** Worth knowing and worth putting right. */
    MINOR;

    private static final List<Severity> ALL = List.of(values());

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The severity as files and people spell it. */
    public String word() {
        return word;
    }

    /** The severity with this {@link #word()}. */
    public static Optional<Severity> named(String word) {
        for (Severity severity : ALL) {
            if (severity.word.equals(word)) {
                return Optional.of(severity);
            }
        }
        return Optional.empty();
    }
}
