package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sources: JCGM 100:2008 clauses 4.3.7 (rectangular) and F.2.2.1 (resolution), clauses from memory, factors recalculated. */
class UncertaintyTest {
    @Test
    void limits_are_rectangular_and_divided_by_the_root_of_three() {
        Uncertainty limits = Uncertainty.limits(Quantity.parse("1 mm"));
        assertThat(limits.standard()).isCloseTo(0.577_350_269_19e-3, within(1e-14));
        assertThat(limits.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(Uncertainty.limits(Quantity.parse("0.002 mm")).words())
                .isEqualTo("±0.002 mm (limits, so u = 0.0012 mm)");
    }

    @Test
    void a_standard_uncertainty_is_taken_as_it_is() {
        Uncertainty standard = Uncertainty.standard(Quantity.parse("0.04 thou"));
        assertThat(standard.standard()).isCloseTo(0.04 * 25.4e-6, within(1e-20));
        assertThat(standard.words()).isEqualTo("u 0.04 thou (standard uncertainty)");
        assertThat(standard.dimension()).isEqualTo(Dimension.LENGTH);
    }

    @Test
    void an_expanded_uncertainty_is_divided_by_its_k() {
        Uncertainty expanded = Uncertainty.expanded(Quantity.parse("0.002 mm"), 2);
        assertThat(expanded.standard()).isCloseTo(1e-6, within(1e-20));
        assertThat(expanded.words()).isEqualTo("U 0.002 mm (expanded with k 2, so u = 0.001 mm)");
        assertThat(expanded.dimension()).isEqualTo(Dimension.LENGTH);
    }

    @Test
    void a_display_adds_its_step_divided_by_the_root_of_twelve() {
        assertThat(Uncertainty.ofResolution(Quantity.parse("1 mm"))).isCloseTo(0.288_675_135e-3, within(1e-12));
        assertThat(Uncertainty.ofResolution(Quantity.parse("0.1 °C"))).isCloseTo(0.029, within(5e-4));
    }

    @Test
    void between_a_leaf_that_enters_and_one_that_does_not_the_middle_is_known_by_the_rectangular_rule() {
        // Go at 0.05 mm, no-go at 0.06 mm: mean 0.055 mm, u 0.002 886 751 mm, recalculated by the same rule.
        assertThat(Uncertainty.limits(Quantity.parse("0.005 mm")).standard())
                .isCloseTo(0.002_886_751e-3, within(1e-12));
    }

    @Test
    void degrees_in_an_uncertainty_are_an_interval() {
        assertThat(Uncertainty.limits(Quantity.parse("1.8 °F")).words()).isEqualTo("±1.8 Δ°F (limits, so u = 1 Δ°F)");
        assertThat(Uncertainty.standard(Quantity.parse("1 °C")).standard()).isEqualTo(1);
        assertThat(Uncertainty.expanded(Quantity.parse("2 °C"), 2).standard()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 mm", "-0.001 mm"})
    void nothing_is_known_exactly(String amount) {
        Quantity quantity = Quantity.parse(amount);
        assertThatThrownBy(() -> Uncertainty.limits(quantity))
                .hasMessage("a limit of error of " + amount + " makes no sense")
                .extracting(e -> ((QuantityException) e).remedy())
                .isEqualTo("give an amount above zero; nothing is known exactly");
        assertThatThrownBy(() -> Uncertainty.standard(quantity))
                .hasMessage("a standard uncertainty of " + amount + " makes no sense");
        assertThatThrownBy(() -> Uncertainty.expanded(quantity, 2))
                .hasMessage("an expanded uncertainty of " + amount + " makes no sense");
        assertThatThrownBy(() -> Uncertainty.ofResolution(quantity))
                .hasMessage("a resolution of " + amount + " makes no sense");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -2, Double.NaN, Double.POSITIVE_INFINITY})
    void a_coverage_factor_is_a_number_above_zero(double k) {
        assertThatThrownBy(() -> Uncertainty.expanded(Quantity.parse("0.002 mm"), k))
                .hasMessage("a coverage factor k of " + k + " makes no sense")
                .extracting(e -> ((QuantityException) e).remedy())
                .isEqualTo("k is a number above zero, mostly 2");
    }
}
