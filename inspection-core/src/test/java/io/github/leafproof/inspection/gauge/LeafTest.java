package io.github.leafproof.inspection.gauge;

import static io.github.leafproof.inspection.gauge.Metal.MM;
import static io.github.leafproof.inspection.gauge.Metal.SET;
import static io.github.leafproof.inspection.gauge.Metal.leaf;
import static io.github.leafproof.inspection.gauge.Metal.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Uncertainty;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class LeafTest {
    @Test
    void of_a_measured_leaf_only_the_measured_thickness_counts() {
        Leaf ten = leaf("0.10 mm", "0.110 mm", "0.001 mm");
        assertThat(ten.thickness().value()).isCloseTo(0.110 * MM, within(1e-15));
        assertThat(ten.thickness().standardUncertainty()).isCloseTo(0.001 * MM, within(1e-15));
        assertThat(ten.neverMeasured()).isFalse();
    }

    // Common practice: leaves marked 0.10 mm have measured 0.076 and 0.127 mm, a quarter off either way.
    @Test
    void a_leaf_never_measured_is_taken_at_its_marking_give_or_take_a_quarter() {
        Leaf marked = Leaf.asMarked(SET, q("0.10 mm"));
        assertThat(marked.neverMeasured()).isTrue();
        assertThat(marked.thickness().value()).isCloseTo(0.10 * MM, within(1e-15));
        assertThat(marked.thickness().standardUncertainty()).isCloseTo(0.025 / Math.sqrt(3) * MM, within(1e-15));
        double reach = 2 * marked.thickness().standardUncertainty();
        assertThat(0.127 * MM).isLessThan(0.10 * MM + reach);
        assertThat(0.076 * MM).isGreaterThan(0.10 * MM - reach);
    }

    // A feeler stock maker states ±0.000 35 in for a 0.010 in leaf.
    @Test
    void whoever_vouches_for_a_marking_states_the_limits() {
        Leaf stock = Leaf.asMarked(SET, q("0.010 in"), Uncertainty.limits(q("0.00035 in")));
        assertThat(stock.neverMeasured()).isTrue();
        assertThat(stock.thickness().standardUncertainty()).isCloseTo(0.00035 * 0.0254 / Math.sqrt(3), within(1e-15));
    }

    // DIN 863 (from a one-page extract): an outside micrometer of 0 to 25 mm is within 4 µm, so u = 4 µm/√3.
    @Test
    void a_marking_confirmed_by_a_micrometer_counts_for_far_more() {
        Leaf confirmed = Leaf.asMarked(SET, q("0.10 mm")).asIfMeasured();
        assertThat(confirmed.neverMeasured()).isFalse();
        assertThat(confirmed.thickness().value()).isCloseTo(0.10 * MM, within(1e-15));
        assertThat(confirmed.thickness().standardUncertainty()).isCloseTo(0.0023 * MM, within(0.00005 * MM));
    }

    @Test
    void each_leaf_errs_on_its_own_and_by_the_same_amount_every_time() {
        Leaf five = leaf("0.05 mm", "0.050 mm", "0.001 mm");
        Leaf six = leaf("0.06 mm", "0.060 mm", "0.001 mm");
        assertThat(five.thickness().minus(five.thickness()).isExact()).isTrue();
        assertThat(six.thickness().minus(five.thickness()).standardUncertainty())
                .isCloseTo(Math.sqrt(2) * 0.001 * MM, within(1e-15));
    }

    @Test
    void a_leaf_is_named_as_it_is_stamped() {
        assertThat(leaf("0.1 mm", "0.11 mm", "0.001 mm").label()).isEqualTo("0.10 mm");
        assertThat(leaf("1 mm", "1.01 mm", "0.001 mm").label()).isEqualTo("1.00 mm");
        assertThat(leaf("0.035 mm", "0.035 mm", "0.001 mm").label()).isEqualTo("0.035 mm");
        assertThat(leaf("1/3 mm", "0.33 mm", "0.001 mm").label()).isEqualTo("1/3 mm");
        assertThat(leaf("2 thou", "2.1 thou", "0.1 thou").label()).isEqualTo("2 thou");
    }

    @Test
    void what_is_known_of_its_calibration_goes_with_the_leaf() {
        Calibration known = new Calibration(LocalDate.of(2026, 1, 10), LocalDate.of(2027, 1, 10));
        assertThat(leaf("0.05 mm", "0.05 mm", "0.001 mm").with(known).calibration())
                .isEqualTo(known);
        assertThat(leaf("0.05 mm", "0.05 mm", "0.001 mm").calibration()).isEqualTo(Calibration.unknown());
    }

    @Test
    void a_thickness_that_is_no_length_or_not_above_zero_is_refused() {
        assertThatThrownBy(() -> Leaf.asMarked(SET, q("0.05 kPa")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the marking of a leaf must be a length; 0.05 kPa is of another kind (pressure)");
        assertThatThrownBy(() -> Leaf.asMarked(SET, q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the marking of a leaf must be above zero, not 0 mm");
        assertThatThrownBy(() -> leaf("0.05 mm", "-0.05 mm", "0.001 mm"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the measured thickness of the leaf marked 0.05 mm must be above zero, not -0.05 mm");
        assertThatThrownBy(() -> leaf("0.05 mm", "0.05 mm", "1 K"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "the uncertainty of the leaf marked 0.05 mm must be a length, not a temperature difference");
        assertThatThrownBy(() -> Leaf.asMarked(" ", q("0.05 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the set a leaf belongs to needs a name");
    }
}
