package io.github.leafproof.inspection.verdict;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What is decided about the whole engine. */
public enum Release {
    /** May go on to the next stage of work. */
    READY,
    /** Something must be put right or settled first. */
    HOLD,
    /** Must not run. */
    REJECT,
    /** Not everything has been looked at. */
    UNFINISHED;

    /** The release as files and people spell it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The release with this {@link #word()}. */
    public static Optional<Release> named(String word) {
        return Stream.of(values())
                .filter(release -> release.word().equals(word))
                .findFirst();
    }
}
