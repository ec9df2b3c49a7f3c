package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.clearance.LeafAdvisor;
import io.github.leafproof.inspection.clearance.NextLeaf;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
                next(low, high, known.evidence(), known.set(), frame).words(frame.units()));
    }

    /**
     * The advice as data; empty where a limit is not known.
     *
     * @param set what is offered to the gap where nothing was offered yet
     */
    public Optional<NextLeaf> next(Frame frame, FeelSet set) {
        Estimate low = Computed.estimate(Computed.number(lower, frame));
        Estimate high = Computed.estimate(Computed.number(upper, frame));
        if (low == null || high == null || low.value() > high.value()) {
            return Optional.empty();
        }
        GapEvidence evidence = gap.value(frame) instanceof Value.Felt known ? known.evidence() : GapEvidence.none();
        return Optional.of(next(low, high, evidence, set, frame));
    }

    private static NextLeaf next(Estimate low, Estimate high, GapEvidence evidence, FeelSet set, Frame frame) {
        return LeafAdvisor.next(evidence, LimitsHeld.exactly(low, high), frame.rule(), set);
    }

    /** All such advice in a formula, such as a text of several parts. */
    public static Stream<NextLeafAdvice> in(Formula formula) {
        return formula instanceof NextLeafAdvice advice
                ? Stream.of(advice)
                : formula.parts().stream().flatMap(NextLeafAdvice::in);
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
