package io.github.leafproof.inspection.verdict;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What all checks came to, as a release rule asks for it. Whoever keeps count while checks come out otherwise answers at
 * once, however many there are.
 */
public interface Tally {

    /** Whether there are no checks at all. */
    boolean isEmpty();

    /** How many checks of this severity have this outcome. */
    int count(Severity severity, Outcome outcome);

    /** What came of the check of this name; empty where there is none. */
    Optional<Outcome> outcome(String check);

    /** All checks, in the order of the procedure. */
    Stream<CheckOutcome> checks();

    /** The tally of these checks. */
    static Tally of(List<CheckOutcome> checks) {
        return new Listed(checks);
    }
}
