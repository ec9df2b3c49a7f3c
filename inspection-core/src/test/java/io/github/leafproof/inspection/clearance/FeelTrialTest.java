package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.MM;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.set;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.Leaf;
import org.junit.jupiter.api.Test;

class FeelTrialTest {
    private static final Leaf FIVE = leaf("0.05", "0.050");

    @Test
    void the_drag_band_is_a_property_of_the_set_that_the_leaf_comes_from() {
        FeelTrial trial = FeelTrial.of(FIVE, TrialResult.DRAGS, set(FIVE));
        assertThat(trial.dragBand()).isCloseTo(0.005 * MM, within(1e-15));
        assertThat(trial.lessThan().orElseThrow().value()).isCloseTo(0.055 * MM, within(1e-15));
    }

    @Test
    void a_drag_band_below_zero_or_beyond_number_is_refused() {
        for (double band : new double[] {-1e-9, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new FeelTrial(FIVE, TrialResult.PASSES, band))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a drag band is zero or more, not " + band);
        }
    }

    @Test
    void results_are_spelled_in_small_letters_in_every_locale() {
        assertThat(TrialResult.PASSES.word()).isEqualTo("passes");
        assertThat(TrialResult.REFUSES.word()).isEqualTo("refuses");
        assertThat(TrialResult.DRAGS.word()).isEqualTo("drags");
        assertThat(TrialResult.named("drags")).contains(TrialResult.DRAGS);
        assertThat(TrialResult.named("Drags")).isEmpty();
    }
}
