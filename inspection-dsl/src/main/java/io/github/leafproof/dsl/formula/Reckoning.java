package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;

/** A calculation of the trade as a rule; what it refuses, the reader is told as the reason why a value is not known. */
public record Reckoning(Mechanism mechanism) implements Computed.Rule {
    @Override
    public Estimate of(List<Estimate> numbers) {
        return mechanism.of(numbers).known();
    }

    /** What the number rests on: the formula, what it leaves out, and on whose word. */
    List<String> basis() {
        List<String> lines = new ArrayList<>();
        lines.add("by " + mechanism.formula());
        mechanism.assumptions().forEach(assumption -> lines.add("assuming: " + assumption));
        lines.add("source: " + mechanism.source());
        return List.copyOf(lines);
    }
}
