package io.github.leafproof.inspection.mechanism;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.mechanism.NeedleSweep.Point;
import io.github.leafproof.inspection.mechanism.RunPlan.PistonBuild;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** What follows from more than one reading: trends, sweeps, a column looked at thrice, plans of runs. */
class SeveralReadingsTest {

    private static List<Estimate> numbers(double... values) {
        return DoubleStream.of(values)
                .mapToObj(value -> Estimate.exact(value, Dimension.RATIO))
                .toList();
    }

    private static Estimate exact(String quantity) {
        return Estimate.exact(Quantity.parse(quantity));
    }

    private static NeedleSweep sweep(String... needleAndSpeed) {
        return NeedleSweep.of(Stream.of(needleAndSpeed)
                .map(point -> point.split(" at "))
                .map(point -> new Point(exact(point[0] + " turns"), exact(point[1] + " rpm")))
                .toList());
    }

    /** Apache Commons Math's regression has the same slope and the same standard error. */
    @Property(tries = 100, seed = "1")
    void a_slope_and_its_uncertainty_are_those_of_a_library(
            @ForAll @Size(min = 3, max = 12) List<@IntRange(min = 9000, max = 9600) Integer> speeds) {
        SimpleRegression library = new SimpleRegression();
        double[] runs = new double[speeds.size()];
        for (int run = 0; run < runs.length; run++) {
            runs[run] = run + 1.0;
            library.addData(runs[run], speeds.get(run));
        }
        Estimate slope = Trend.slope(
                        numbers(runs),
                        numbers(speeds.stream().mapToDouble(x -> x).toArray()),
                        "peaks")
                .known();

        assertThat(slope.value()).isCloseTo(library.getSlope(), within(1e-8));
        assertThat(slope.standardUncertainty()).isCloseTo(library.getSlopeStdErr(), within(1e-6));
        assertThat(slope.isExact() ? runs.length - 2.0 : slope.degreesOfFreedom())
                .isCloseTo(runs.length - 2.0, within(1e-9));
    }

    @Test
    void lash_that_widens_by_hours_is_a_length_per_time() {
        List<Estimate> hours = List.of(exact("0 h"), exact("0.5 h"), exact("1 h"));
        List<Estimate> lash = List.of(exact("0.06 mm"), exact("0.07 mm"), exact("0.08 mm"));

        Estimate slope = Trend.slope(hours, lash, "lash").known();

        assertThat(slope.dimension()).isEqualTo(Dimension.SPEED);
        assertThat(slope.value()).isCloseTo(Quantity.parse("0.02 mm/h").base(), within(1e-18));
    }

    /** Apache Commons Math's regression has the same slope; with exact readings also the same standard error. */
    @Property(tries = 100, seed = "3")
    void a_slope_of_measured_amounts_is_that_of_a_library_and_as_uncertain_as_gauges_and_scatter_make_it(
            @ForAll @Size(min = 3, max = 8) List<@IntRange(min = 20, max = 140) Integer> micrometres) {
        SimpleRegression library = new SimpleRegression();
        List<Estimate> hours = new ArrayList<>();
        List<Estimate> lash = new ArrayList<>();
        double u = 2e-6;
        for (int i = 0; i < micrometres.size(); i++) {
            double hour = i + 0.25 * (i % 2);
            library.addData(hour, micrometres.get(i));
            hours.add(exact(hour + " h"));
            Source digit = Source.stated("digit of reading " + i);
            lash.add(Estimate.of(micrometres.get(i) * 1e-6, Dimension.LENGTH, u, digit));
        }
        double spread = library.getXSumSquares() * 3600 * 3600;
        double scatter = library.getSlopeStdErr() * 1e-6 / 3600;

        Estimate slope = Trend.slopeOfMeasured(hours, lash, "lash").known();

        assertThat(slope.value()).isCloseTo(library.getSlope() * 1e-6 / 3600, within(1e-20));
        assertThat(slope.standardUncertainty()).isCloseTo(Math.hypot(scatter, u / Math.sqrt(spread)), within(1e-20));
    }

    @Test
    void what_a_gauge_is_off_in_every_reading_moves_no_slope() {
        Source gauge = Source.stated("dial gauge");
        List<Estimate> hours = List.of(exact("0 h"), exact("0.5 h"), exact("1 h"));
        List<Estimate> lash = Stream.of(60e-6, 70e-6, 80e-6)
                .map(metres -> Estimate.of(metres, Dimension.LENGTH, 5e-6, gauge))
                .toList();

        Estimate slope = Trend.slopeOfMeasured(hours, lash, "lash").known();

        assertThat(slope.value()).isCloseTo(Quantity.parse("0.02 mm/h").base(), within(1e-18));
        assertThat(slope.standardUncertainty()).isCloseTo(0, within(1e-18));
        assertThat(Trend.slopeOfMeasured(hours.subList(1, 3), lash.subList(1, 3), "two"))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void two_readings_or_one_place_tell_no_trend() {
        assertThat(((Refusal) Trend.slope(numbers(1, 2), numbers(3, 4), "two")).words())
                .isEqualTo("the readings are 2 and must be at least 3, or nothing is left to tell their scatter from");
        assertThat(((Refusal) Trend.slope(numbers(1, 1, 1), numbers(3, 4, 5), "one")).words())
                .isEqualTo("all readings were taken at one and the same place, which has no slope");
        assertThatThrownBy(() -> Trend.slope(numbers(1, 2), numbers(3), "odd"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Our sheet of the trade: peak 1.98 turns at 9561 rpm, 300 rpm less at 2.33 turns. */
    @Test
    void three_points_have_the_peak_that_the_trade_works_out() {
        NeedleSweep sweep = sweep("1.75 at 9420", "2 at 9560", "2.25 at 9380");

        assertThat(turns(sweep.peakNeedle())).isCloseTo(1.984375, within(1e-9));
        assertThat(sweep.peakSpeed().known().value() * 30 / Math.PI).isCloseTo(9560.625, within(1e-6));
        assertThat(turns(sweep.flightNeedle(exact("300 rpm")))).isCloseTo(2.33, within(0.005));
    }

    @Property(tries = 100, seed = "2")
    void more_points_have_the_peak_that_a_library_fits(
            @ForAll @Size(7) List<@IntRange(min = -15, max = 15) Integer> scatter) {
        WeightedObservedPoints library = new WeightedObservedPoints();
        String[] points = new String[scatter.size()];
        for (int i = 0; i < points.length; i++) {
            double needle = 1.5 + 0.15 * i;
            long speed = Math.round(9600 - 900 * Math.pow(needle - 1.97, 2)) + scatter.get(i);
            library.add(needle, (double) speed);
            points[i] = needle + " at " + speed;
        }
        double[] c = PolynomialCurveFitter.create(2).fit(library.toList());

        assertThat(turns(sweep(points).peakNeedle())).isCloseTo(-c[1] / (2 * c[2]), within(1e-6));
        assertThat(sweep(points).peakSpeed().known().value() * 30 / Math.PI)
                .isCloseTo(c[0] - c[1] * c[1] / (4 * c[2]), within(1e-5));
    }

    @Test
    void the_peak_is_as_uncertain_as_the_tacho_leaves_it() {
        Estimate tacho = Estimate.of(1000, Dimension.ROTATIONAL_SPEED, 1, Source.stated("first"));
        List<Point> points = List.of(
                new Point(exact("1.75 turns"), tacho),
                new Point(exact("2 turns"), Estimate.exact(1010, Dimension.ROTATIONAL_SPEED)),
                new Point(exact("2.25 turns"), Estimate.exact(1000, Dimension.ROTATIONAL_SPEED)));

        // By hand: the vertex moves by 0.25·10/(2·20)·(1/10) = 0.00625 turn for each unit of the first speed.
        assertThat(NeedleSweep.of(points).peakNeedle().known().standardUncertainty() / (2 * Math.PI))
                .isCloseTo(0.00625, within(1e-4));
    }

    @Test
    void a_sweep_without_a_peak_between_its_points_is_refused() {
        assertThat(why(sweep("1.75 at 9420", "2 at 9560").peakNeedle()))
                .isEqualTo("the points are 2 and must be at least 3, or no parabola is told from another");
        assertThat(why(sweep("2 at 9420", "2 at 9560", "2.25 at 9500").peakNeedle()))
                .isEqualTo("the needle must stand at three different places, or no parabola is told from another");
        assertThat(why(sweep("1.75 at 9560", "2 at 9420", "2.25 at 9560").peakSpeed()))
                .isEqualTo("the speed does not fall on both sides: there is no peak");
        assertThat(why(sweep("1.75 at 9000", "2 at 9300", "2.25 at 9450").flightNeedle(exact("300 rpm"))))
                .isEqualTo("the peak would lie outside what was measured");
        assertThat(why(sweep("1.75 at 9420", "2 at 9560", "2.25 at 9380").flightNeedle(exact("-300 rpm"))))
                .isEqualTo("the drop is below zero, and no needle gives more than the highest speed");
        assertThatThrownBy(() -> new Point(exact("2 mm"), exact("9000 rpm")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double turns(Answer answer) {
        return answer.known().value() / (2 * Math.PI);
    }

    private static String why(Answer answer) {
        return ((Refusal) answer).words();
    }

    /** Common practice: with the needle open and the tank low the column falls by nature. */
    @Test
    void a_siphon_is_no_leak() {
        assertThat(ColumnTest.of(false, false, true)).isEqualTo(ColumnTest.SIPHON);
        assertThat(ColumnTest.of(false, false, false)).isEqualTo(ColumnTest.TIGHT);
        assertThat(ColumnTest.of(true, false, true)).isEqualTo(ColumnTest.LEAK);
        assertThat(ColumnTest.of(false, true, true)).isEqualTo(ColumnTest.LEAK_BEHIND_NEEDLE);
    }

    @Test
    void a_warm_reading_without_materials_tells_nothing_of_the_cold_lash() {
        WarmReading warm = new WarmReading(exact("0.12 mm"), exact("40 K"));

        assertThat(why(warm.coldLash(Optional.empty())))
                .isEqualTo(
                        "the metal is 40 K warmer than the shop, and without materials and lengths of cylinder, push rod"
                                + " and valve nobody knows whether lash opens or closes with heat: let it cool");
        assertThat(warm.coldLash(Optional.of(exact("0.037 mm"))).known().value())
                .isCloseTo(0.083e-3, within(1e-12));
        assertThat(warm.wait(exact("10 min")).known().value()).isCloseTo(600 * Math.log(4), within(1e-9));
    }

    @Test
    void metal_within_ten_kelvin_of_the_shop_counts_as_cold() {
        WarmReading cold = new WarmReading(exact("0.06 mm"), exact("8 K"));

        assertThat(cold.coldLash(Optional.empty()).known().value())
                .isEqualTo(exact("0.06 mm").value());
        assertThat(cold.wait(exact("10 min")).known().value()).isZero();
        assertThatThrownBy(() -> new WarmReading(exact("8 K"), exact("0.06 mm")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Common practice: the shop's plan is 40 to 60 minutes of running, and 13 times cooling. */
    @Test
    void the_plan_of_a_shop_takes_an_afternoon() {
        RunPlan shop = RunPlan.all().get(0);

        assertThat(shop.runningTime().value() / 60).isEqualTo(40, within(1e-9));
        assertThat(shop.clockTime(exact("17 min")).known().value() / 60).isCloseTo(40 + 13 * 17, within(1e-9));
        assertThat(shop.fuel(exact("20 mL/min")).known().value()).isCloseTo(800e-6, within(1e-12));
        assertThat(shop.clockTime(exact("0 s"))).isInstanceOf(Refusal.class);
    }

    @Test
    void no_ringed_plan_is_offered_for_a_ringless_piston() {
        assertThat(RunPlan.suiting(PistonBuild.RINGLESS)).isEmpty();
        assertThat(RunPlan.suiting(PistonBuild.RINGED)).isEqualTo(RunPlan.all());
        assertThatThrownBy(() -> new RunPlan("none", PistonBuild.RINGED, List.of(), ""))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
