package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.EnumSet;
import java.util.Set;

/** What a condition can come out as, once it is judged: the outcomes, failing parted by side. */
enum Fate {
    PASSES(Outcome.PASSES),
    TOLERATED(Outcome.TOLERATED),
    OPEN(Outcome.OPEN),
    CONTRADICTED(Outcome.CONTRADICTED),
    FAILS(Outcome.FAILS),
    HIGH(Outcome.FAILS),
    LOW(Outcome.FAILS);

    private final Outcome outcome;

    Fate(Outcome outcome) {
        this.outcome = outcome;
    }

    Outcome outcome() {
        return outcome;
    }

    boolean holds() {
        return this == PASSES || this == TOLERATED;
    }

    boolean fails() {
        return outcome == Outcome.FAILS;
    }

    /** What became of a condition. */
    static Fate of(Value.Judged judged) {
        if (judged.outcome() == Outcome.FAILS) {
            return judged.side() == Side.HIGH ? HIGH : judged.side() == Side.LOW ? LOW : FAILS;
        }
        return valueOf(judged.outcome().name());
    }

    static Set<Fate> certain(boolean holds) {
        return EnumSet.of(holds ? PASSES : FAILS);
    }

    /** Whether one of these lets a condition hold. */
    static boolean canHold(Set<Fate> fates) {
        return fates.contains(PASSES) || fates.contains(TOLERATED);
    }

    /** Whether one of these makes a condition fail. */
    static boolean canFail(Set<Fate> fates) {
        return fates.contains(FAILS) || fates.contains(HIGH) || fates.contains(LOW);
    }

    /** Whether there are some, and all of them let a condition hold. */
    static boolean surelyHolds(Set<Fate> fates) {
        if (fates.isEmpty()) {
            return false;
        }
        for (Fate fate : fates) {
            if (!fate.holds()) {
                return false;
            }
        }
        return true;
    }

    static Set<Fate> any() {
        return EnumSet.allOf(Fate.class);
    }
}
