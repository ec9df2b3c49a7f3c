package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Source;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.apache.commons.math3.analysis.differentiation.UnivariateDifferentiableFunction;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** The crank and slider, turned round and differentiated by a library that knows no engines. */
class CrankLawsTest {
    private static final double STROKE = 0.0248;

    private static Estimate length(double metres) {
        return Estimate.exact(metres, Dimension.LENGTH);
    }

    private static Estimate angle(double degrees) {
        return Estimate.exact(Math.toRadians(degrees), Dimension.ANGLE);
    }

    private static double travel(double degrees, double rod) {
        return CrankSlider.PISTON_TRAVEL
                .of(angle(degrees), length(STROKE), length(rod))
                .known()
                .value();
    }

    @Property(tries = 200, seed = "1")
    void the_angle_of_a_travel_is_the_angle_it_came_from(
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 179) double degrees,
            @ForAll @Scale(4) @DoubleRange(min = 0.0125, max = 0.2) double rod) {
        Estimate found = CrankSlider.CRANK_ANGLE_AT
                .of(length(travel(degrees, rod)), length(STROKE), length(rod))
                .known();

        assertThat(Math.toDegrees(found.value())).isCloseTo(degrees, within(1e-7));
    }

    @Property(tries = 200, seed = "2")
    void a_longer_way_round_makes_no_difference(
            @ForAll @Scale(4) @DoubleRange(min = -360, max = 360) double degrees,
            @ForAll @Scale(4) @DoubleRange(min = 0.0125, max = 0.2) double rod) {
        assertThat(travel(degrees, rod)).isCloseTo(travel(-degrees, rod), within(1e-15));
        assertThat(travel(degrees, rod))
                .isCloseTo(travel(degrees > 0 ? degrees - 360 : degrees + 360, rod), within(1e-14));
        assertThat(travel(degrees, rod)).isBetween(0.0, STROKE + 1e-12);
    }

    @Property(tries = 100, seed = "3")
    void speed_and_acceleration_are_the_slopes_that_a_library_finds(
            @ForAll @Scale(4) @DoubleRange(min = -170, max = 170) double degrees,
            @ForAll @Scale(4) @DoubleRange(min = 0.02, max = 0.1) double rod) {
        UnivariateDifferentiableFunction travel = new FiniteDifferencesDifferentiator(7, 0.01)
                .differentiate((UnivariateFunction) turned -> travel(Math.toDegrees(turned), rod));
        DerivativeStructure at = travel.value(new DerivativeStructure(1, 2, 0, Math.toRadians(degrees)));
        Estimate turning = Estimate.exact(100, Dimension.ROTATIONAL_SPEED);

        assertThat(CrankSlider.PISTON_SPEED
                        .of(angle(degrees), length(STROKE), length(rod), turning)
                        .known()
                        .value())
                .isCloseTo(100 * at.getPartialDerivative(1), within(1e-6));
        assertThat(CrankSlider.PISTON_ACCELERATION
                        .of(angle(degrees), length(STROKE), length(rod), turning)
                        .known()
                        .value())
                .isCloseTo(1e4 * at.getPartialDerivative(2), within(1e-2));
    }

    @Property(tries = 30, seed = "4")
    void the_mean_speed_is_the_speed_summed_over_a_stroke(
            @ForAll @Scale(4) @DoubleRange(min = 0.02, max = 0.1) double rod) {
        Estimate turning = Estimate.exact(100, Dimension.ROTATIONAL_SPEED);
        double summed = new RombergIntegrator(1e-9, 1e-12, 4, 20)
                .integrate(
                        1_000_000,
                        turned -> CrankSlider.PISTON_SPEED
                                .of(Estimate.exact(turned, Dimension.ANGLE), length(STROKE), length(rod), turning)
                                .known()
                                .value(),
                        0,
                        Math.PI);

        assertThat(CrankSlider.MEAN_PISTON_SPEED
                        .of(length(STROKE), turning)
                        .known()
                        .value())
                .isCloseTo(summed / Math.PI, within(1e-8));
    }

    @Property(tries = 50, seed = "5")
    void a_root_finder_comes_to_the_same_angle(
            @ForAll @Scale(4) @DoubleRange(min = 0.001, max = 0.999) double share,
            @ForAll @Scale(4) @DoubleRange(min = 0.02, max = 0.1) double rod) {
        double root = new BrentSolver(1e-12).solve(200, degrees -> travel(degrees, rod) - share * STROKE, 0, 180);

        assertThat(Math.toDegrees(CrankSlider.CRANK_ANGLE_AT
                        .of(length(share * STROKE), length(STROKE), length(rod))
                        .known()
                        .value()))
                .isCloseTo(root, within(1e-9));
    }

    /** Common practice in words: the top is found by a stop, for near it the piston hardly moves. */
    @Property(tries = 20, seed = "6")
    void a_stop_tells_the_top_better_than_a_dial(@ForAll @Scale(4) @DoubleRange(min = 20, max = 60) double stop) {
        Estimate before = Estimate.of(Math.toRadians(-stop), Dimension.ANGLE, Math.toRadians(0.25), Source.stated("a"));
        Estimate after = Estimate.of(Math.toRadians(stop), Dimension.ANGLE, Math.toRadians(0.25), Source.stated("b"));
        double byStop = CrankSlider.TOP_BY_STOP.of(before, after).known().standardUncertainty();
        double byDial = CrankSlider.DWELL_ANGLE
                .of(length(0.00001), length(STROKE), length(0.042))
                .known()
                .value();

        assertThat(Math.toDegrees(byStop)).isCloseTo(0.25 / Math.sqrt(2), within(1e-9));
        assertThat(byDial).isGreaterThan(20 * byStop);
    }
}
