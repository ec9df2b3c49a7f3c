package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Leaves and limits for the tests of this room, in the millimetres that people use. */
final class Bench {
    static final DecisionRule AT_95 = DecisionRule.guarded(0.95);
    static final String SET = "leaves";
    static final double MM = 1e-3;
    private static final Unit UNIT = Unit.parse("mm");

    private Bench() {}

    static Quantity mm(String number) {
        return Quantity.of(number, UNIT);
    }

    static Quantity mm(double number) {
        return Quantity.of(number, UNIT);
    }

    static Limits window(double lower, double upper) {
        return Limits.between(mm(lower), mm(upper));
    }

    /** A leaf with a measured thickness, known to a standard uncertainty of one micrometre. */
    static Leaf leaf(String marked, String measured) {
        return leaf(marked, measured, "0.001");
    }

    static Leaf leaf(String marked, String measured, String u) {
        return Leaf.measured(SET, mm(marked), mm(measured), Uncertainty.standard(mm(u)));
    }

    static LeafSet set(Leaf... leaves) {
        return new LeafSet(SET, List.of(leaves), mm("0.005"), mm("0.001"));
    }

    /** Pins are never stacked, so a set of them offers exactly what it lists. */
    static FeelSet singles(List<Leaf> leaves) {
        return new PinSet(SET, leaves, mm("0"));
    }

    static FeelTrial passes(Feeler feeler) {
        return new FeelTrial(feeler, TrialResult.PASSES, 0);
    }

    static FeelTrial refuses(Feeler feeler) {
        return new FeelTrial(feeler, TrialResult.REFUSES, 0);
    }

    static FeelTrial drags(Feeler feeler, double bandInMillimetres) {
        return new FeelTrial(feeler, TrialResult.DRAGS, bandInMillimetres * MM);
    }

    static GapEvidence evidence(FeelTrial... trials) {
        return new GapEvidence(Arrays.stream(trials).collect(Collectors.toUnmodifiableList()));
    }
}
