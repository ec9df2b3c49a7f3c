package io.github.leafproof.inspection.gauge;

import static io.github.leafproof.inspection.gauge.Metal.MM;
import static io.github.leafproof.inspection.gauge.Metal.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Uncertainty;
import org.junit.jupiter.api.Test;

class ReadingInstrumentTest {
    private static final ReadingInstrument INFRARED = new ReadingInstrument(
            "infrared", Dimension.TEMPERATURE, q("0.1 K"), Uncertainty.limits(q("1.0 K")), Calibration.unknown());

    @Test
    void the_difference_of_two_readings_does_not_contain_the_calibration_error() {
        Estimate head = INFRARED.read(q("24.0 °C"), "head");
        Estimate room = INFRARED.read(q("21.0 °C"), "room");
        assertThat(head.standardUncertainty()).isCloseTo(Math.sqrt(1 / 3.0 + 0.01 / 12), within(1e-12));
        // Only the two last digits are left: √2 × 0.1/√12.
        assertThat(head.minus(room).standardUncertainty()).isCloseTo(0.1 / Math.sqrt(6), within(1e-12));
        assertThat(head.minus(room).value()).isCloseTo(3, within(1e-9));
    }

    // GUM F.2.2.1 (clause from memory): a display step of d adds 0.29 d.
    @Test
    void of_an_instrument_with_a_resolution_alone_only_the_last_digit_is_uncertain() {
        ReadingInstrument depth =
                new ReadingInstrument("depth", Dimension.LENGTH, q("0.01 mm"), null, Calibration.unknown());
        assertThat(depth.read(q("1.23 mm"), "needle").standardUncertainty())
                .isCloseTo(0.0029 * MM, within(0.00005 * MM));
    }

    @Test
    void an_instrument_without_a_stated_resolution_has_its_uncertainty_alone() {
        ReadingInstrument depth = new ReadingInstrument(
                "depth", Dimension.LENGTH, null, Uncertainty.expanded(q("0.02 mm"), 2), Calibration.unknown());
        assertThat(depth.read(q("1.23 mm"), "needle").standardUncertainty()).isCloseTo(0.01 * MM, within(1e-15));
        assertThat(depth.kind()).isEqualTo("reading");
    }

    @Test
    void an_instrument_of_which_nothing_is_known_is_refused() {
        assertThatThrownBy(() -> new ReadingInstrument("ruler", Dimension.LENGTH, null, null, Calibration.unknown()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("ruler needs a resolution or an uncertainty, or both:"
                        + " an instrument without either is never wrong");
    }

    @Test
    void an_instrument_reads_what_it_measures_and_nothing_else() {
        assertThatThrownBy(() -> INFRARED.read(q("21 mm"), "head"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("infrared reads temperature, but 21 mm is of another kind (length)");
    }

    @Test
    void a_resolution_of_another_kind_or_not_above_zero_is_refused() {
        assertThatThrownBy(() -> new ReadingInstrument(
                        "infrared", Dimension.TEMPERATURE, q("0.1 mm"), null, Calibration.unknown()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the resolution of infrared must be a temperature difference; 0.1 mm is a length");
        assertThatThrownBy(
                        () -> new ReadingInstrument("depth", Dimension.LENGTH, q("0 mm"), null, Calibration.unknown()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the resolution of depth must be above zero, not 0 mm");
        assertThatThrownBy(() -> new ReadingInstrument(
                        "depth", Dimension.LENGTH, null, Uncertainty.limits(q("1 K")), Calibration.unknown()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the uncertainty of depth must be a length, not a temperature difference");
    }
}
