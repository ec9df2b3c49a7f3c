package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: worked examples of JCGM 106:2012 clause 7, from memory and recalculated. */
class ConformityTest {
    private static Estimate reading(double y, double u) {
        return Estimate.of(y, Dimension.RATIO, u, Source.stated("reading"));
    }

    private static double probability(Estimate reading, Limits limits) {
        Conformity conformity = Conformity.ofReading(reading, limits);
        assertThat(conformity.low()).isEqualTo(conformity.high());
        return conformity.low();
    }

    @Test
    void a_voltage_under_its_upper_limit_conforms_with_92_per_cent() {
        // 7.3.3 example 1.
        double p = probability(reading(-5.47, 0.05), Limits.atMost(-5.40));
        assertThat(p).isCloseTo(0.919_243, within(1e-6));
    }

    @Test
    void a_pressure_over_its_lower_limit_conforms_with_99_per_cent() {
        // 7.3.3 example 2.
        double p = probability(reading(509.7, 8.6), Limits.atLeast(490));
        assertThat(p).isCloseTo(0.989_010, within(1e-6));
    }

    @Test
    void a_viscosity_in_its_window_conforms_with_66_per_cent() {
        // 7.4.
        Conformity conformity = Conformity.ofReading(reading(13.6, 1.8), Limits.between(12.5, 16.3));
        assertThat(conformity.low()).isCloseTo(0.662_630, within(1e-6));
        assertThat(conformity.low() + conformity.below() + conformity.above()).isCloseTo(1, within(1e-15));
    }

    @Test
    void few_repeats_make_a_reading_less_sure() {
        Estimate few = Estimate.of(13.6, Dimension.RATIO, 1.8, new Source("repeats", 2));
        Limits limits = Limits.between(12.5, 16.3);
        assertThat(probability(few, limits)).isLessThan(probability(reading(13.6, 1.8), limits));
        // Student's t with 2 degrees of freedom has the closed form 1/2 + t/(2 √(2 + t²)).
        double lower = -1.1 / 1.8;
        double upper = 2.7 / 1.8;
        double expected = upper / (2 * Math.sqrt(2 + upper * upper)) - lower / (2 * Math.sqrt(2 + lower * lower));
        assertThat(probability(few, limits)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.03, 1, 0, 0", "0.10, 1, 0, 0", "0.05, 1, 0, 0", "0.029, 0, 1, 0", "0.101, 0, 0, 1"})
    void an_exact_value_conforms_or_does_not(double y, double conforms, double below, double above) {
        assertThat(Conformity.ofReading(Estimate.exact(y, Dimension.RATIO), Limits.between(0.03, 0.10)))
                .isEqualTo(new Conformity(conforms, conforms, below, above));
    }

    @Test
    void an_engine_3_kelvins_above_a_cold_shed_is_within_3_kelvins_of_it() {
        Estimate head = Estimate.exact(Quantity.parse("-16.8 °C"));
        Estimate shed = Estimate.exact(Quantity.parse("-19.8 °C"));
        // In kelvins the subtraction leaves 3.0000000000000284; people would not call that more than 3.
        assertThat(head.minus(shed).value()).isGreaterThan(3);
        assertThat(probability(head.minus(shed), Limits.within(3, 0))).isEqualTo(1);
    }

    @Test
    void only_the_limits_aimed_for_count() {
        Limits limits = Limits.atMost(0.10).tolerating(Double.NEGATIVE_INFINITY, 0.14);
        assertThat(probability(Estimate.exact(0.12, Dimension.RATIO), limits)).isZero();
        assertThat(probability(Estimate.exact(0.12, Dimension.RATIO), limits.tolerated()))
                .isEqualTo(1);
    }

    @Test
    void the_side_is_named_when_the_odds_favour_it() {
        Limits limits = Limits.between(0.03, 0.10);
        assertThat(Conformity.ofReading(reading(0.02, 0.001), limits).side()).isEqualTo(Side.LOW);
        assertThat(Conformity.ofReading(reading(0.11, 0.001), limits).side()).isEqualTo(Side.HIGH);
        assertThat(Conformity.ofReading(reading(0.05, 0.001), limits).side()).isEqualTo(Side.NONE);
        assertThat(Conformity.ofReading(reading(0.0999, 0.001), limits).side()).isEqualTo(Side.NONE);
        assertThat(Conformity.unknown().side()).isEqualTo(Side.NONE);
        assertThat(Conformity.certain(false).side()).isEqualTo(Side.NONE);
    }

    @Test
    void what_is_certain_and_what_is_unknown() {
        assertThat(List.of(Conformity.certain(true), Conformity.certain(false), Conformity.unknown()))
                .extracting(Conformity::low, Conformity::high)
                .containsExactly(tuple(1.0, 1.0), tuple(0.0, 0.0), tuple(0.0, 1.0));
    }

    @ParameterizedTest
    @CsvSource({
        "0.6, 0.5, 0, 0",
        "-0.1, 0.5, 0, 0",
        "0.5, 1.1, 0, 0",
        "NaN, 1, 0, 0",
        "0, 1, -0.1, 0",
        "0, 1, 0, 1.1",
        "0, 1, NaN, 0"
    })
    void bounds_that_cannot_be_probabilities_are_refused(double low, double high, double below, double above) {
        assertThatThrownBy(() -> new Conformity(low, high, below, above)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        // A trillionth of what is compared is rounding, whatever its size: a lash in metres, a number, a temperature.
        "1e-4, 9.99999999999995e-5, true",
        "1e-4, 9.9999999e-5, false",
        "1, 0.9999999999995, true",
        "1, 0.999999999998, false",
        "300, 299.9999999998, true",
        "300, 299.999999999, false",
    })
    void an_exact_value_off_its_limit_by_rounding_alone_conforms(double limit, double value, boolean conforms) {
        assertThat(probability(Estimate.exact(value, Dimension.RATIO), Limits.atLeast(limit)))
                .isEqualTo(conforms ? 1 : 0);
        assertThat(probability(Estimate.exact(-value, Dimension.RATIO), Limits.atMost(-limit)))
                .isEqualTo(conforms ? 1 : 0);
    }

    @Test
    void rounding_goes_as_far_as_a_trillionth_and_no_farther() {
        assertThat(probability(Estimate.exact(1 - 1e-12, Dimension.RATIO), Limits.atLeast(1)))
                .isEqualTo(1);
        assertThat(probability(Estimate.exact(1e-12 - 1, Dimension.RATIO), Limits.atMost(-1)))
                .isEqualTo(1);
    }

    @Test
    void a_reading_exactly_at_a_limit_lies_on_neither_side() {
        assertThat(Conformity.ofReading(reading(10, 0.1), Limits.atMost(10)).side())
                .isEqualTo(Side.NONE);
        assertThat(Conformity.ofReading(reading(10, 0.1), Limits.atLeast(10)).side())
                .isEqualTo(Side.NONE);
    }
}
