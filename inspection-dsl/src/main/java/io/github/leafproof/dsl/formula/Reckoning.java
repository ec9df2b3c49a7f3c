package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;

/** A calculation of the trade as a rule; what it refuses, the reader is told as the reason why a value is not known. */
public record Reckoning(Mechanism mechanism) implements Computed.Rule {
    @Override
    public Estimate of(List<Estimate> numbers) {
        return mechanism.of(numbers).known();
    }
}
