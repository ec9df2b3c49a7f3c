package io.github.leafproof.inspection.verdict;

/**
 * What is known of one requirement: shown to hold, shown not to hold, or open.
 *
 * <p>Requirements are joined by the three-valued logic of Kleene: an open part leaves the whole open unless the other part
 * decides it alone.
 */
public enum Finding {
    PASSES,
    FAILS,
    OPEN;

    /** Holds when both do; fails as soon as one fails. */
    public Finding and(Finding other) {
        if (this == FAILS || other == FAILS) {
            return FAILS;
        }
        return this == PASSES && other == PASSES ? PASSES : OPEN;
    }

    /** Holds as soon as one does; fails when both fail. */
    public Finding or(Finding other) {
        return not().and(other.not()).not();
    }

    /** Holds when this fails, and fails when this holds. */
    public Finding not() {
        if (this == OPEN) {
            return OPEN;
        }
        return this == PASSES ? FAILS : PASSES;
    }

    /** The finding of something plainly true or false. */
    public static Finding of(boolean holds) {
        return holds ? PASSES : FAILS;
    }

    /** The finding as the outcome of a check. */
    public Outcome outcome() {
        return Outcome.valueOf(name());
    }
}
