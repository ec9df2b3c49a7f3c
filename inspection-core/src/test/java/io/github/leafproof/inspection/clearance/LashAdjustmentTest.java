package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.MM;
import static io.github.leafproof.inspection.clearance.Bench.evidence;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.mm;
import static io.github.leafproof.inspection.clearance.Bench.passes;
import static io.github.leafproof.inspection.clearance.Bench.refuses;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.clearance.LashAdjustment.Bearing;
import io.github.leafproof.inspection.clearance.LashAdjustment.Direction;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LashAdjustmentTest {
    private static final Estimate M3 = exact("0.5 mm per turn");
    private static final Estimate ROCKER = exact("1.15");
    private static final Estimate ONE = exact("1");

    private static Estimate exact(String quantity) {
        return Estimate.exact(Quantity.parse(quantity));
    }

    private static LashAdjustment from(String gap, String target) {
        return LashAdjustment.of(exact(gap), exact(target), M3, ROCKER);
    }

    // Common practice, arithmetic checked by hand: M3 × 0.5, rocker ratio 1.15, so 0.575 mm of lash to the turn.
    @Test
    void from_0_16_to_0_08_takes_50_degrees_clockwise_on_an_m3_screw_behind_a_rocker_of_1_15() {
        LashAdjustment closing = from("0.16 mm", "0.08 mm");
        assertThat(closing.direction()).isEqualTo(Direction.IN);
        assertThat(closing.turns()).isCloseTo(0.139, within(0.0005));
        assertThat(closing.degrees()).isCloseTo(50, within(0.5));
        assertThat(closing.clockMinutes()).isCloseTo(0.139 * 60, within(0.03));
        assertThat(closing.predictedGap().value()).isCloseTo(0.08 * MM, within(1e-15));
    }

    @Test
    void from_0_02_to_0_06_takes_25_degrees_anticlockwise() {
        LashAdjustment opening = from("0.02 mm", "0.06 mm");
        assertThat(opening.direction()).isEqualTo(Direction.OUT);
        assertThat(opening.degrees()).isCloseTo(25, within(0.5));
        assertThat(opening.turn().value()).isNegative();
    }

    // Common practice: a screw that follows its nut by 10° closes the lash by 13 to 18 µm, by thread and rocker.
    @Test
    void a_screw_that_follows_its_nut_by_ten_degrees_closes_the_lash_by_13_to_18_micrometres() {
        Estimate fine = exact("0.45 mm per turn");
        double least =
                LashAdjustment.of(exact("0.0125 mm"), exact("0 mm"), fine, ONE).degrees();
        double most = LashAdjustment.of(exact("0.01806 mm"), exact("0 mm"), M3, exact("1.3"))
                .degrees();
        assertThat(least).isCloseTo(10, within(0.01));
        assertThat(most).isCloseTo(10, within(0.01));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "adjuster-threads.csv", numLinesToSkip = 3)
    void a_whole_turn_of_a_screw_that_bears_on_the_valve_moves_the_gap_by_its_pitch(String designation, String pitch) {
        LashAdjustment turn = LashAdjustment.of(
                exact(pitch + " mm"), exact("0 mm"), exact(pitch + " mm per turn"), Bearing.VALVE.leverFactor(ROCKER));
        assertThat(turn.turns()).as(designation).isCloseTo(1, within(1e-12));
        assertThat(turn.degrees()).isCloseTo(360, within(1e-9));
        assertThat(turn.clockMinutes()).isCloseTo(60, within(1e-9));
    }

    // Common practice: who takes screw travel for lash with a rocker of 1.3 overshoots by 30 %.
    @Test
    void a_screw_that_bears_on_the_push_rod_moves_the_gap_by_the_rocker_ratio_more() {
        Estimate rocker = exact("1.3");
        double onValve = LashAdjustment.of(exact("0.1 mm"), exact("0 mm"), M3, Bearing.VALVE.leverFactor(rocker))
                .turns();
        double onPushRod = LashAdjustment.of(exact("0.1 mm"), exact("0 mm"), M3, Bearing.PUSH_ROD.leverFactor(rocker))
                .turns();
        assertThat(onValve / onPushRod).isCloseTo(1.3, within(1e-12));
    }

    @Test
    void the_gap_after_the_turn_is_as_uncertain_as_the_gap_before_it() {
        Estimate gap = evidence(passes(leaf("0.05", "0.050")), refuses(leaf("0.10", "0.110")))
                .estimate("lash")
                .orElseThrow();
        LashAdjustment adjustment = LashAdjustment.of(gap, exact("0.065 mm"), M3, ONE);
        assertThat(adjustment.predictedGap().value()).isCloseTo(0.065 * MM, within(1e-15));
        assertThat(adjustment.predictedGap().standardUncertainty()).isCloseTo(gap.standardUncertainty(), within(1e-15));
        // u of the turn: u of the gap over what a turn makes, by GUM 5 first-order propagation.
        double perRadian = 0.5 * MM / (2 * Math.PI);
        assertThat(adjustment.turn().standardUncertainty())
                .isCloseTo(gap.standardUncertainty() / perRadian, within(1e-9));
    }

    @Test
    void a_badly_known_pitch_makes_a_large_turn_less_certain() {
        Estimate pitch = Estimate.of(
                Quantity.parse("0.5 mm per turn").base(),
                Dimension.LENGTH_PER_TURN,
                Quantity.parse("0.05 mm per turn").base(),
                Source.stated("pitch"));
        LashAdjustment adjustment = LashAdjustment.of(exact("0.3 mm"), exact("0.1 mm"), pitch, ONE);
        // A tenth of the pitch is a tenth of the travel of 0.2 mm.
        assertThat(adjustment.predictedGap().standardUncertainty()).isCloseTo(0.02 * MM, within(1e-12));
    }

    @Test
    void the_words_say_which_way_how_far_and_what_to_expect() {
        assertThat(from("0.16 mm", "0.08 mm").words(UnitSystem.METRIC))
                .isEqualTo(
                        "Turn the adjuster in (clockwise; this closes the gap) by 0.139 turn, that is 50° or 8.3 minutes"
                                + " on a clock face. That should make it 0.08 mm. Lock the nut, then measure again: locking can move"
                                + " it.");
        Estimate gap = Estimate.of(0.02 * MM, Dimension.LENGTH, 0.002 * MM, Source.stated("gap"));
        assertThat(LashAdjustment.of(gap, exact("0.06 mm"), M3, ROCKER).words(UnitSystem.METRIC))
                .isEqualTo("Turn the adjuster out (anticlockwise; this opens the gap) by 0.070 turn, that is 25° or 4.2"
                        + " minutes on a clock face (u 1.3°). That should make it 0.0600 mm (u 0.0020 mm). Lock the nut, then"
                        + " measure again: locking can move it.");
    }

    @Test
    void a_gap_where_it_should_be_is_left_alone() {
        LashAdjustment none = from("0.06 mm", "0.06 mm");
        assertThat(none.direction()).isEqualTo(Direction.NONE);
        assertThat(none.words(UnitSystem.METRIC)).isEqualTo("Leave the adjuster as it is.");
    }

    @Test
    void a_thread_without_pitch_or_a_wrong_kind_of_amount_is_refused() {
        Estimate gap = Estimate.exact(mm("0.1"));
        assertThatThrownBy(() -> LashAdjustment.of(gap, gap, exact("0 mm per turn"), ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the adjuster's pitch must be above zero");
        assertThatThrownBy(() -> LashAdjustment.of(gap, gap, M3, exact("-1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("the lever factor must be above zero");
        assertThatThrownBy(() -> LashAdjustment.of(gap, gap, gap, ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the adjuster's pitch must be a length per turn, not a length");
        assertThatThrownBy(() -> LashAdjustment.of(ONE, gap, M3, ONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the gap must be a length, not a ratio");
    }
}
