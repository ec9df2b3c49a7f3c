package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.LeafAdvisor;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;

/** Which leaf or stack of the set to offer next, so that the gap is soonest known to lie inside or outside its limits. */
public record NextLeafAdvice(Formula gap, Formula lower, Formula upper) implements Formula {

    @Override
    public Value value(Frame frame) {
        Value felt = gap.value(frame);
        Value from = Computed.number(lower, frame);
        Value to = Computed.number(upper, frame);
        Estimate low = Computed.estimate(from);
        Estimate high = Computed.estimate(to);
        if (low == null || high == null || !(felt instanceof Value.Felt known)) {
            return Value.Missing.of(List.of(felt, from, to));
        }
        if (low.value() > high.value()) {
            return Value.Missing.of(
                    Value.Lack.Kind.NOT_COMPUTABLE, words(), "cannot be told: the lower limit is above the upper one");
        }
        return new Value.Words(
                LeafAdvisor.next(known.evidence(), LimitsHeld.exactly(low, high), frame.rule(), known.set())
                        .words(frame.units()));
    }

    @Override
    public String words() {
        return "next_leaf(" + gap.words() + ", " + lower.words() + ", " + upper.words() + ")";
    }

    @Override
    public List<Formula> parts() {
        return List.of(gap, lower, upper);
    }
}
