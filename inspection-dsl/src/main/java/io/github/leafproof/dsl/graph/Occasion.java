package io.github.leafproof.dsl.graph;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.Locale;
import java.util.Optional;

/** When a piece of advice is given: an outcome, or a failure on one side. */
public enum Occasion {
    PASSES,
    TOLERATED,
    FAILS,
    HIGH,
    LOW,
    OPEN,
    CONTRADICTED,
    UNTESTED,
    BLOCKED;

    /** As procedures write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The occasion of that word. */
    public static Optional<Occasion> named(String word) {
        for (Occasion occasion : values()) {
            if (occasion.word().equals(word)) {
                return Optional.of(occasion);
            }
        }
        return Optional.empty();
    }

    /** Whether a verdict is such an occasion. */
    public boolean is(Outcome outcome, Side side) {
        return switch (this) {
            case HIGH -> outcome == Outcome.FAILS && side == Side.HIGH;
            case LOW -> outcome == Outcome.FAILS && side == Side.LOW;
            default -> outcome == Outcome.valueOf(name());
        };
    }
}
