package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Source;
import java.util.stream.DoubleStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Guard bands and zones as JCGM 106 clause 8, ISO 14253-1 and ILAC-G8 have them; how each figure is known stands beside it. */
class DecisionRuleTest {
    private static final DecisionRule USUAL = DecisionRule.guarded(0.95);

    private static Conformity atMost(double limit, double y, double u) {
        return Conformity.ofReading(Estimate.of(y, Dimension.RATIO, u, Source.stated("reading")), Limits.atMost(limit));
    }

    @Test
    void at_95_per_cent_a_value_keeps_1_645_uncertainties_from_its_limit() {
        // ISO 14253-1:2017 default of 95 %: guard band 1.644 853 627 u (the default verified in secondary text,
        // recalculated).
        assertThat(USUAL.z()).isCloseTo(1.644_853_627, within(1e-9));
        double guarded = 100 - 1.644_853_627 * 2;
        assertThat(USUAL.decide(atMost(100, guarded - 1e-6, 2))).isEqualTo(Finding.PASSES);
        assertThat(USUAL.decide(atMost(100, guarded + 1e-6, 2))).isEqualTo(Finding.OPEN);
        assertThat(USUAL.decide(atMost(100, 200 - guarded - 1e-6, 2))).isEqualTo(Finding.OPEN);
        assertThat(USUAL.decide(atMost(100, 200 - guarded + 1e-6, 2))).isEqualTo(Finding.FAILS);
    }

    @Test
    void a_value_exactly_at_its_guard_band_passes() {
        assertThat(USUAL.decide(atMost(100, 100 - USUAL.z() * 2, 2))).isEqualTo(Finding.PASSES);
        assertThat(USUAL.decide(atMost(100, 100 + USUAL.z() * 2, 2))).isEqualTo(Finding.FAILS);
    }

    @Test
    void a_probability_that_misses_by_its_last_bits_is_as_good_as_the_confidence_asked_for() {
        assertThat(USUAL.decide(new Conformity(0.95 - 1e-12, 1, 0, 0))).isEqualTo(Finding.PASSES);
        assertThat(USUAL.decide(new Conformity(0.95 - 3e-12, 1, 0, 0))).isEqualTo(Finding.OPEN);
        assertThat(USUAL.decide(new Conformity(0, 1 - 0.95 + 1e-12, 0, 0))).isEqualTo(Finding.FAILS);
        assertThat(USUAL.decide(new Conformity(0, 1 - 0.95 + 3e-12, 0, 0))).isEqualTo(Finding.OPEN);
    }

    @ParameterizedTest
    @CsvSource({
        // ILAC-G8:09/2019: guard band as a multiple of U = 2u, and the largest probability of a false acceptance.
        "0,    0.5", // simple acceptance, verified in secondary text
        "1,    0.022750132", // guard band of U, verified in secondary text
        "0.83, 0.048457226", // row for ISO 14253-1, from memory and recalculated
        "1.5,  0.001349898", // three sigma, from memory and recalculated
        "3,    9.865876e-10", // six sigma, from memory and recalculated
    })
    void the_risk_of_a_guard_band_is_the_tabled_one(double multipleOfU, double risk) {
        assertThat(atMost(0, -multipleOfU * 2, 1).above()).isCloseTo(risk, within(5e-7 * risk));
        DecisionRule rule = DecisionRule.guarded(1 - risk);
        assertThat(rule.z()).isCloseTo(2 * multipleOfU, within(1e-5));
    }

    @Property(seed = "1")
    void by_simple_acceptance_the_reading_itself_decides(@ForAll @DoubleRange(min = -50, max = 50) double y) {
        DecisionRule shared = DecisionRule.simpleAcceptance();
        assertThat(shared.decide(atMost(0, y, 1))).isEqualTo(y <= 1e-11 ? Finding.PASSES : Finding.FAILS);
        assertThat(shared.z()).isZero();
    }

    @Property(seed = "1")
    void the_zones_lie_a_guard_band_from_the_limits(
            @ForAll @DoubleRange(min = -20, max = 120) double y, @ForAll @DoubleRange(min = 0.1, max = 4) double u) {
        // Limits so far apart that the other one plays no part: accept inside, reject outside, undecided between.
        Conformity conformity = Conformity.ofReading(
                Estimate.of(y, Dimension.RATIO, u, Source.stated("reading")), Limits.between(0, 100));
        double w = USUAL.z() * u;
        double edge = 1e-6;
        if (y >= w + edge && y <= 100 - w - edge) {
            assertThat(USUAL.decide(conformity)).isEqualTo(Finding.PASSES);
        } else if (y < -w - edge || y > 100 + w + edge) {
            assertThat(USUAL.decide(conformity)).isEqualTo(Finding.FAILS);
        } else if ((y > -w + edge && y < w - edge) || (y > 100 - w + edge && y < 100 + w - edge)) {
            assertThat(USUAL.decide(conformity)).isEqualTo(Finding.OPEN);
        }
    }

    @Property(seed = "1")
    void in_a_window_narrower_than_two_guard_bands_nothing_passes(@ForAll @DoubleRange(min = -10, max = 10) double y) {
        Conformity conformity = Conformity.ofReading(
                Estimate.of(y, Dimension.RATIO, 1, Source.stated("reading")), Limits.between(-1.6, 1.6));
        assertThat(USUAL.decide(conformity)).isNotEqualTo(Finding.PASSES);
    }

    @Property(seed = "1")
    void more_confidence_never_decides_more(
            @ForAll @DoubleRange(min = 0.5, max = 0.999) @Scale(3) double less,
            @ForAll @DoubleRange(min = 0.5, max = 0.999) @Scale(3) double more,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double a,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double b) {
        Conformity conformity = new Conformity(Math.min(a, b), Math.max(a, b), 0, 0);
        Finding strict = DecisionRule.guarded(Math.max(less, more)).decide(conformity);
        Finding lenient = DecisionRule.guarded(Math.min(less, more)).decide(conformity);
        if (strict != Finding.OPEN) {
            assertThat(lenient).isEqualTo(strict);
        }
    }

    @Property(seed = "1")
    void more_evidence_never_turns_a_finding_round(
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double a,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double b,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double c,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double d) {
        double[] sorted = DoubleStream.of(a, b, c, d).sorted().toArray();
        Finding wide = USUAL.decide(new Conformity(sorted[0], sorted[3], 0, 0));
        Finding narrow = USUAL.decide(new Conformity(sorted[1], sorted[2], 0, 0));
        if (wide != Finding.OPEN) {
            assertThat(narrow).isEqualTo(wide);
        }
    }

    @Property(seed = "1")
    void a_higher_probability_never_makes_a_worse_finding(
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double a,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(3) double b) {
        Finding worse = USUAL.decide(certainly(Math.min(a, b)));
        Finding better = USUAL.decide(certainly(Math.max(a, b)));
        if (worse == Finding.PASSES) {
            assertThat(better).isEqualTo(Finding.PASSES);
        }
        if (better == Finding.FAILS) {
            assertThat(worse).isEqualTo(Finding.FAILS);
        }
    }

    private static Conformity certainly(double p) {
        return new Conformity(p, p, 0, 0);
    }

    @Example
    void a_leaf_that_measures_0_11_leaves_a_limit_of_0_10_open() {
        // The 0.05 leaf passes and the one sold as 0.10, measuring 0.110 (u 0.001), refuses: nothing shows a gap under
        // 0.10.
        Conformity gap = new Conformity(0, 1, 0, 0);
        assertThat(USUAL.decide(gap)).isEqualTo(Finding.OPEN);
        assertThat(USUAL.decide(gap, gap)).isEqualTo(Outcome.OPEN);
    }

    @ParameterizedTest
    @CsvSource({
        "1.00, 1.00, PASSES",
        "0.96, 0.99, PASSES",
        "0.50, 0.99, TOLERATED",
        "0.01, 0.99, TOLERATED",
        "0.01, 0.50, OPEN",
        "0.50, 0.50, OPEN",
        "0.01, 0.01, FAILS",
    })
    void a_second_limit_decides_where_the_first_is_not_shown_to_be_kept(
            double aimed, double tolerated, Outcome outcome) {
        assertThat(USUAL.decide(certainly(aimed), certainly(tolerated))).isEqualTo(outcome);
    }

    @Test
    void the_rule_says_itself_in_words() {
        assertThat(USUAL.words()).isEqualTo("at 95 % confidence");
        assertThat(DecisionRule.guarded(0.999).words()).isEqualTo("at 99.9 % confidence");
        assertThat(DecisionRule.simpleAcceptance().words()).isEqualTo("by simple acceptance");
    }

    @ParameterizedTest
    @CsvSource({"0.25, 25.0", "1, 100.0", "95, 9500.0", "NaN, NaN"})
    void a_confidence_lies_from_one_half_to_under_one(double confidence, String percent) {
        assertThatThrownBy(() -> DecisionRule.guarded(confidence))
                .hasMessage("a confidence lies from 50 % to under 100 %, not at " + percent + " %");
    }
}
