package io.github.leafproof.dsl.mutants;

import java.util.Optional;

/** What became of a mutant. */
public sealed interface Fate {

    /**
     * Some rehearsal comes out otherwise than it expects.
     *
     * @param title the one that was found to
     */
    record Noticed(String title) implements Fate {}

    /**
     * Every rehearsal comes out as it expects, as if nothing had been changed.
     *
     * @param nearest where it makes the most difference; empty where it makes none in any rehearsal
     */
    record Survives(Optional<Nearest> nearest) implements Fate {}

    /** It decides alike: the same graph, but for what is said on the way. */
    record SameMeaning() implements Fate {}

    /** The compiler refuses it, so that nobody could use it by mistake. */
    record Refused() implements Fate {}
}
