package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.Counter;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class TrayFileTest {
    private static final double MICROMETRE = 1e-6;

    private final GaugeTray tray = TrayFile.read(Good.TRAY).orElseThrow().content();

    @Test
    void a_tray_has_its_name_and_its_gauges_in_order() {
        assertThat(tray.name()).isEqualTo("Bench one");
        assertThat(tray.gauges()).extracting("name").containsExactly("leaves", "pins", "infrared", "rule", "strokes");
    }

    @Test
    void of_a_leaf_the_measured_thickness_counts() {
        assertThat(leaf("0.10 mm").thickness().value()).isCloseTo(110 * MICROMETRE, within(1e-15));
    }

    @Test
    void each_way_to_state_an_uncertainty_gives_its_own_standard_uncertainty() {
        // GUM 4.3.7 for limits, 4.3.3 for expanded; clauses from memory.
        assertThat(leaf("0.05 mm").uncertainty().standard()).isCloseTo(1 * MICROMETRE, within(1e-15));
        assertThat(leaf("0.10 mm").uncertainty().standard()).isCloseTo(2 * MICROMETRE / Math.sqrt(3), within(1e-15));
        assertThat(leaf("0.15 mm").uncertainty().standard()).isCloseTo(1 * MICROMETRE, within(1e-15));
    }

    @Test
    void a_leaf_never_measured_is_taken_at_its_marking_give_or_take_a_quarter() {
        // Common practice: leaves marked 0.10 mm have measured 0.076 and 0.127 mm.
        Leaf never = leaf("0.20 mm");

        assertThat(never.neverMeasured()).isTrue();
        assertThat(never.thickness().value()).isCloseTo(200 * MICROMETRE, within(1e-15));
        assertThat(never.uncertainty().standard()).isCloseTo(50 * MICROMETRE / Math.sqrt(3), within(1e-15));
    }

    @Test
    void a_shop_may_vouch_for_a_marking_within_limits_of_its_own() {
        assertThat(leaf("0.30 mm").neverMeasured()).isTrue();
        assertThat(leaf("0.30 mm").uncertainty().standard()).isCloseTo(10 * MICROMETRE / Math.sqrt(3), within(1e-15));
    }

    @Test
    void calibration_dates_come_along() {
        assertThat(leaf("0.05 mm").calibration().calibrated()).isEqualTo(LocalDate.of(2026, 1, 10));
        assertThat(leaf("0.05 mm").calibration().due()).isEqualTo(LocalDate.of(2027, 1, 10));
        assertThat(instrument("infrared").calibration().overdueOn(LocalDate.of(2026, 3, 4)))
                .isTrue();
    }

    @Test
    void drag_band_and_film_are_the_sets_own_and_nothing_where_not_stated() {
        LeafSet leaves = (LeafSet) tray.gauge("leaves").orElseThrow();
        PinSet pins = (PinSet) tray.gauge("pins").orElseThrow();

        assertThat(leaves.dragBand()).isEqualTo(Quantity.parse("0.005 mm"));
        assertThat(leaves.film()).isEqualTo(Quantity.parse("0.001 mm"));
        assertThat(pins.dragBand().base()).isZero();
        assertThat(pins.leaves()).hasSize(1);
    }

    @Test
    void a_thermometers_degree_is_understood_as_a_step_of_one_kelvin() {
        assertThat(instrument("infrared").of()).isEqualTo(Dimension.TEMPERATURE);
        assertThat(instrument("infrared").resolution()).isEqualTo(Quantity.parse("0.1 K"));
    }

    @Test
    void a_display_alone_is_enough_to_know_an_instrument_by() {
        assertThat(instrument("rule").uncertainty()).isNull();
        assertThat(instrument("rule").resolution()).isEqualTo(Quantity.parse("1 mm"));
    }

    @Test
    void a_counter_needs_no_more_than_a_name() {
        assertThat(tray.gauge("strokes")).contains(new Counter("strokes"));
    }

    @Test
    void a_tray_may_be_empty() {
        String text = "{ \"tray\": \"new\", \"gauges\": [] }";

        assertThat(TrayFile.parse("t.json", text.getBytes(StandardCharsets.UTF_8))
                        .orElseThrow()
                        .content()
                        .gauges())
                .isEmpty();
    }

    private Leaf leaf(String marked) {
        return ((FeelSet) tray.gauge("leaves").orElseThrow())
                .leaf(Quantity.parse(marked))
                .orElseThrow();
    }

    private ReadingInstrument instrument(String name) {
        return (ReadingInstrument) tray.gauge(name).orElseThrow();
    }
}
