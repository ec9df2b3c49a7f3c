package io.github.leafproof.dsl.meaning;

import io.github.leafproof.inspection.verdict.Outcome;

/** One way in which a place of a procedure can come out. */
public enum Way {
    /** A check: its outcomes, failing parted by side where its limits have two. */
    PASSES("passes"),
    TOLERATED("tolerated"),
    /** A check that fails, on whichever side; also a condition that does not hold. */
    FAILS("fails"),
    FAILS_LOW("fails low"),
    FAILS_HIGH("fails high"),
    OPEN("open"),
    CONTRADICTED("contradicted"),
    UNTESTED("untested"),
    BLOCKED("blocked"),
    NOT_APPLICABLE("not_applicable"),
    /** A condition, or an option that something is compared with. */
    HOLDS("holds"),
    /** An arm of a choice. */
    CHOSEN("is chosen"),
    /** A gate, for those that wait for it. */
    LETS_THROUGH("lets through"),
    HOLDS_BACK("holds back"),
    /** A line of the release. */
    DECIDES("decides"),
    /** A piece of advice. */
    GIVEN("is given");

    private final String word;

    Way(String word) {
        this.word = word;
    }

    /** As pages and files write it: a check's outcome as procedures write it, the others as one says them. */
    public String word() {
        return word;
    }

    static Way of(Outcome outcome) {
        return valueOf(outcome.name());
    }
}
