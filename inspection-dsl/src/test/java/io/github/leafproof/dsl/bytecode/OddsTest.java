package io.github.leafproof.dsl.bytecode;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Decided by numbers of standard uncertainties it comes to what the probabilities themselves come to. */
class OddsTest {

    private static final List<TrialResult> RESULTS = List.of(TrialResult.values());
    private static final double[] CONFIDENCES = {0.5, 0.6827, 0.9, 0.95, 0.99, 0.9999, 1 - 1e-10};

    private static DecisionRule rule(int which) {
        return DecisionRule.guarded(CONFIDENCES[which]);
    }

    @Property
    void a_reading_is_decided_as_by_its_probability(
            @ForAll @IntRange(max = 6) int confidence,
            @ForAll @DoubleRange(min = -12, max = 12) double z,
            @ForAll @DoubleRange(min = 0, max = 20) double wide,
            @ForAll @IntRange(max = 2) int sides) {
        double low = sides == 1 ? Double.NEGATIVE_INFINITY : 0;
        double high = sides == 2 ? Double.POSITIVE_INFINITY : wide;
        assertAlike(rule(confidence), z, low, high);
    }

    /** So near to where it turns that only the last bits tell, and a little further away in every decade. */
    @Property
    void a_reading_at_the_very_edge_is_decided_as_by_its_probability(
            @ForAll @IntRange(max = 6) int confidence,
            @ForAll @IntRange(min = 1, max = 17) int decade,
            @ForAll @DoubleRange(min = -1, max = 1) double part,
            @ForAll boolean passing,
            @ForAll @DoubleRange(min = 0.5, max = 30) double wide) {
        DecisionRule rule = rule(confidence);
        double turn = rule.z();
        double z = (passing ? turn : -turn) + part * Math.pow(10, -decade);
        assertAlike(rule, z, 0, Double.POSITIVE_INFINITY);
        assertAlike(rule, -z, Double.NEGATIVE_INFINITY, 0);
        assertAlike(rule, z, 0, wide);
        double half =
                Coverage.quantile((1 + rule.confidence()) / 2, Double.POSITIVE_INFINITY) + part * Math.pow(10, -decade);
        assertAlike(rule, half, 0, 2 * half);
    }

    private static void assertAlike(DecisionRule rule, double y, double low, double high) {
        double u = 1;
        Estimate reading = Estimate.of(y, Dimension.LENGTH, u, Source.stated("a gauge"));
        Conformity conformity = Conformity.ofReading(reading, new Limits(low, high, low, high));
        assertThat(new Odds(rule).reading(y, u, Double.POSITIVE_INFINITY, low, high))
                .isEqualTo(rule.decide(conformity));
    }

    @Property
    void a_reading_known_with_few_degrees_of_freedom_is_decided_as_by_its_probability(
            @ForAll @IntRange(max = 6) int confidence,
            @ForAll @DoubleRange(min = -12, max = 12) double z,
            @ForAll @IntRange(min = 1, max = 9) int freedom) {
        DecisionRule rule = rule(confidence);
        Estimate reading = Estimate.of(z, Dimension.LENGTH, 1, new Source("scatter", freedom));
        assertThat(new Odds(rule).reading(z, 1, freedom, 0, 5))
                .isEqualTo(rule.decide(Conformity.ofReading(reading, Limits.between(0, 5))));
    }

    @Property
    void a_gap_is_decided_as_by_the_bounds_of_its_probability(
            @ForAll @IntRange(max = 6) int confidence,
            @ForAll long seed,
            @ForAll @DoubleRange(min = -0.02, max = 0.12) double low,
            @ForAll @DoubleRange(min = 0, max = 0.1) double wide,
            @ForAll @IntRange(max = 2) int sides) {
        GapEvidence evidence = evidence(new Random(seed));
        DecisionRule rule = rule(confidence);
        double from = sides == 1 ? Double.NEGATIVE_INFINITY : low / 1000;
        double to = sides == 2 ? Double.POSITIVE_INFINITY : (low + wide) / 1000;
        double[] row = Gap.row(felt(evidence), 0);
        assertThat(new Odds(rule).gap(row, 0, from, to))
                .isEqualTo(rule.decide(evidence.conformity(new Limits(from, to, from, to))));
    }

    /** Up to five leaves from 0.01 to 0.15 mm, known to between a tenth of a micrometre and a hundredth of a millimetre. */
    private static GapEvidence evidence(Random random) {
        List<FeelTrial> trials = new ArrayList<>();
        int number = random.nextInt(6);
        for (int i = 0; i < number; i++) {
            Quantity thickness = millimetres(0.01 + 0.14 * random.nextDouble());
            Uncertainty uncertainty = Uncertainty.standard(millimetres(Math.pow(10, -4 + 2 * random.nextDouble())));
            TrialResult result = RESULTS.get(random.nextInt(RESULTS.size()));
            trials.add(new FeelTrial(
                    Leaf.measured("set", thickness, thickness, uncertainty), result, random.nextBoolean() ? 0 : 5e-6));
        }
        return new GapEvidence(trials);
    }

    private static Quantity millimetres(double number) {
        return Quantity.parse(String.format(Locale.ROOT, "%.9f mm", number));
    }

    private static Value.Felt felt(GapEvidence evidence) {
        Leaf leaf = Leaf.asMarked("set", Quantity.parse("0.05 mm"));
        return new Value.Felt(
                "gap", evidence, new LeafSet("set", List.of(leaf), Quantity.parse("0 mm"), Quantity.parse("0 mm")));
    }

    @Test
    void where_nobody_can_be_sure_enough_nothing_passes_by_distance_alone() {
        DecisionRule rule = DecisionRule.guarded(1 - 1e-10);
        assertAlike(rule, 6.3, 0, Double.POSITIVE_INFINITY);
        assertAlike(rule, 6.4, 0, Double.POSITIVE_INFINITY);
    }
}
