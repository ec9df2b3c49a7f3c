package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.junit.jupiter.api.Test;

/** What a numerical library makes of the same problems: sums by quadrature, curves by least squares. */
class SecondOpinionOnMechanicsTest {

    private static double of(Mechanism mechanism, String... inputs) {
        return mechanism
                .of(Stream.of(inputs).map(Quantity::parse).map(Estimate::exact).toList())
                .known()
                .value();
    }

    @Property(tries = 100, seed = "1")
    void the_lens_of_two_circles_is_what_its_chords_sum_to(
            @ForAll @DoubleRange(min = 1, max = 9) double second,
            @ForAll @DoubleRange(min = 0.1, max = 9) double apart) {
        double r = 5;
        double summed = new RombergIntegrator(1e-7, 1e-10, 6, 25)
                .integrate(10_000_000, x -> chord(r, second, apart, x), 0, Math.PI);

        assertThat(of(Carburettor.CIRCLE_OVERLAP, "10 mm", 2 * second + " mm", apart + " mm") * 1e6)
                .isCloseTo(summed, within(2e-3 * summed + 1e-3));
    }

    /** Half-chords that lie in both circles, over the first circle's diameter, its ends smoothed by a cosine. */
    private static double chord(double r, double s, double apart, double turned) {
        double x = -r * Math.cos(turned);
        double first = r * Math.sin(turned);
        double second = Math.sqrt(Math.max(0, s * s - (x - apart) * (x - apart)));
        return 2 * Math.min(first, second) * r * Math.sin(turned);
    }

    @Property(tries = 30, seed = "2")
    void the_time_a_cylinder_holds_is_what_its_flow_sums_to(
            @ForAll @IntRange(min = 150, max = 700) int before, @ForAll @IntRange(min = 110, max = 140) int after) {
        double summed = new RombergIntegrator(1e-8, 1e-12, 6, 22)
                .integrate(
                        10_000_000,
                        kPa -> 1e-6
                                / (287.05287 * 293.15)
                                * 1000
                                / of(Tightness.ORIFICE_FLOW, "0.1 mm", "0.6", kPa + " kPa", "101.3 kPa", "20 °C"),
                        after,
                        before);

        assertThat(of(
                        Tightness.HOLD_TIME,
                        "1 mL",
                        before + " kPa",
                        after + " kPa",
                        "101.3 kPa",
                        "0.1 mm",
                        "0.6",
                        "20 °C"))
                .isCloseTo(summed, within(1e-6 * summed));
    }

    @Property(tries = 100, seed = "3")
    void the_needles_peak_is_where_a_fitted_parabola_has_it(
            @ForAll @IntRange(min = 0, max = 200) int left, @ForAll @IntRange(min = 0, max = 200) int right) {
        WeightedObservedPoints points = new WeightedObservedPoints();
        points.add(1.7, 9600 - left - 1.0);
        points.add(2, 9600);
        points.add(2.4, 9600 - right - 1.0);
        double[] c = PolynomialCurveFitter.create(2).fit(points.toList());
        double vertex = -c[1] / (2 * c[2]);
        double speed = c[0] - c[1] * c[1] / (4 * c[2]);
        String[] inputs = {
            "1.7 turns", 9600 - left - 1 + " rpm", "2 turns", "9600 rpm", "2.4 turns", 9600 - right - 1 + " rpm"
        };

        assertThat(of(Tuning.PEAK_TURNS, inputs) / (2 * Math.PI)).isCloseTo(vertex, within(1e-6));
        assertThat(of(Tuning.PEAK_SPEED, inputs) * 60 / (2 * Math.PI)).isCloseTo(speed, within(1e-5));
    }

    @Test
    void a_tester_and_the_leak_it_finds_pass_the_same_flow() {
        double leak = of(Tightness.LEAK_ORIFICE, "1 mm", "550 kPa", "480 kPa", "101.3 kPa") * 1000;

        assertThat(of(Tightness.ORIFICE_FLOW, leak + " mm", "0.6", "581.3 kPa", "101.3 kPa", "20 °C"))
                .isCloseTo(of(Tightness.ORIFICE_FLOW, "1 mm", "0.6", "651.3 kPa", "581.3 kPa", "20 °C"), within(1e-12));
    }
}
