package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** Repeated readings. The library of the comparisons is Apache Commons Math, which has its own reference data. */
class SeriesTest {
    private static final Unit MM = Unit.parse("mm");

    private static Series series(Unit unit, double... readings) {
        return Series.of(
                "x",
                DoubleStream.of(readings).mapToObj(r -> Quantity.of(r, unit)).toList());
    }

    private static Series plain(double... readings) {
        return series(Unit.ONE, readings);
    }

    // JCGM 100:2008, 4.4.3 and table 1: the twenty readings and the rounded results (100.14, 1.49, 0.33 °C) from
    // memory;
    // further digits recalculated from the readings.
    @Test
    void twenty_readings_of_a_temperature_have_the_mean_and_the_spread_of_the_guide() {
        Series read = series(
                Unit.parse("°C"),
                96.90,
                98.18,
                98.25,
                98.61,
                99.03,
                99.49,
                99.56,
                99.74,
                99.89,
                100.07,
                100.33,
                100.42,
                100.68,
                100.95,
                101.11,
                101.20,
                101.57,
                101.84,
                102.36,
                102.72);

        assertThat(read.mean().orElseThrow().value() - 273.15).isCloseTo(100.145, within(1e-9));
        assertThat(read.mean().orElseThrow().standardUncertainty()).isCloseTo(0.332_915_747, within(1e-9));
        assertThat(read.mean().orElseThrow().degreesOfFreedom()).isCloseTo(19, within(1e-9));
        assertThat(read.spread().orElseThrow().value()).isCloseTo(1.488_844_483, within(1e-9));
        assertThat(read.spread().orElseThrow().dimension()).isEqualTo(Dimension.TEMPERATURE_DIFFERENCE);
        assertThat(read.count()).isEqualTo(20);
    }

    // JCGM 100:2008 example H.2, voltage: five readings, mean 4.9990 V, u 0.0032 V (as in ResistanceExampleTest).
    @Test
    void five_readings_of_a_voltage_have_the_mean_and_the_uncertainty_of_the_guide() {
        Series read = plain(5.007, 4.994, 5.005, 4.990, 4.999);

        assertThat(read.mean().orElseThrow().value()).isCloseTo(4.9990, within(1e-9));
        assertThat(read.mean().orElseThrow().standardUncertainty()).isCloseTo(0.003_209_361_3, within(1e-10));
        assertThat(read.mean().orElseThrow().degreesOfFreedom()).isCloseTo(4, within(1e-9));
    }

    // NIST statistical reference data sets NumAcc1 and NumAcc3: certified mean and deviation, from memory.
    @Test
    void large_readings_that_hardly_differ_lose_no_digits() {
        Series one = plain(10_000_001, 10_000_003, 10_000_002);
        List<Double> alternating = new ArrayList<>(List.of(1_000_000.2));
        for (int i = 0; i < 500; i++) {
            alternating.addAll(List.of(1_000_000.1, 1_000_000.3));
        }
        Series three =
                plain(alternating.stream().mapToDouble(Double::doubleValue).toArray());

        assertThat(one.mean().orElseThrow().value()).isEqualTo(10_000_002);
        assertThat(one.spread().orElseThrow().value()).isCloseTo(1, within(1e-12));
        assertThat(three.mean().orElseThrow().value()).isCloseTo(1_000_000.2, within(1e-9));
        assertThat(three.spread().orElseThrow().value()).isCloseTo(0.1, within(1e-9));
    }

    // By hand: 1, 2, 4 about their line 5/6 + 3/2 i leave 1/6, −1/3, 1/6, whose squares sum to 1/6.
    @Test
    void three_readings_rise_by_the_slope_of_their_line() {
        Estimate slope = series(MM, 1, 2, 4).slope().orElseThrow();

        assertThat(slope.value()).isCloseTo(1.5e-3, within(1e-15));
        assertThat(slope.standardUncertainty()).isCloseTo(1e-3 * Math.sqrt(1.0 / 12), within(1e-12));
        assertThat(slope.degreesOfFreedom()).isEqualTo(1);
        assertThat(slope.dimension()).isEqualTo(Dimension.LENGTH);
    }

    @Property(tries = 200, seed = "1")
    void slope_mean_and_spread_are_those_of_a_reference_library(
            @ForAll @Size(min = 3, max = 40) List<@DoubleRange(min = -1000, max = 1000) Double> readings) {
        Series read = plain(readings.stream().mapToDouble(Double::doubleValue).toArray());
        SimpleRegression line = new SimpleRegression();
        SummaryStatistics summary = new SummaryStatistics();
        for (int i = 0; i < readings.size(); i++) {
            line.addData(i + 1.0, readings.get(i));
            summary.addValue(readings.get(i));
        }

        assertThat(read.slope().orElseThrow().value()).isCloseTo(line.getSlope(), within(1e-9));
        assertThat(read.slope().orElseThrow().standardUncertainty()).isCloseTo(line.getSlopeStdErr(), within(1e-6));
        assertThat(read.mean().orElseThrow().value()).isCloseTo(summary.getMean(), within(1e-9));
        assertThat(read.spread().orElseThrow().value()).isCloseTo(summary.getStandardDeviation(), within(1e-9));
    }

    // JCGM 100, table E.1 (from memory): u(s)/s is 0.76 to 0.24 for n from 2 to 10 exactly; the formula gives 0.71 to
    // 0.24.
    @Test
    void of_few_readings_the_spread_is_poorly_known() {
        Estimate two = plain(1, 2).spread().orElseThrow();
        Estimate ten = plain(1, 2, 1, 2, 1, 2, 1, 2, 1, 2).spread().orElseThrow();

        assertThat(two.standardUncertainty() / two.value()).isCloseTo(0.71, within(0.005));
        assertThat(ten.standardUncertainty() / ten.value()).isCloseTo(0.24, within(0.005));
    }

    @Test
    void one_reading_has_no_mean_and_two_have_no_slope() {
        assertThat(plain(1).mean()).isEmpty();
        assertThat(plain(1).spread()).isEmpty();
        assertThat(plain(1).count()).isEqualTo(1);
        assertThat(plain(1, 2).mean()).isPresent();
        assertThat(plain(1, 2).slope()).isEmpty();
    }

    @Test
    void what_the_instrument_is_off_stays_whole_however_often_it_is_read_and_a_slope_does_not_contain_it() {
        Estimate off = Estimate.of(0, Dimension.RATIO, 3, Source.stated("meter"));
        Series read = plain(8, 12, 8, 12).takenWith(new Series.Instrument(off, 0, ""));
        // s/√n of these is 2/√3.
        assertThat(read.mean().orElseThrow().standardUncertainty()).isCloseTo(Math.sqrt(9 + 4.0 / 3), within(1e-12));
        assertThat(read.mean().orElseThrow().degreesOfFreedom())
                .as("Welch and Satterthwaite: u⁴ over (4/3)²/3")
                .isCloseTo(Math.pow(9 + 4.0 / 3, 2) / (16.0 / 9 / 3), within(1e-9));
        assertThat(read.slope().orElseThrow().contributions())
                .extracting(Contribution::source)
                .containsExactly("scatter about the slope of x");
        assertThat(read.mean().orElseThrow().minus(off).standardUncertainty())
                .isCloseTo(2 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void readings_that_are_all_the_same_are_known_no_better_than_the_last_digit() {
        Series read = plain(5, 5, 5, 5)
                .takenWith(new Series.Instrument(Estimate.exact(0, Dimension.RATIO), 0.5, "meter, last digit of x"));

        assertThat(read.mean().orElseThrow().standardUncertainty()).isEqualTo(0.5);
        assertThat(read.spread().orElseThrow().standardUncertainty()).isEqualTo(0.5);
        assertThat(read.slope().orElseThrow().standardUncertainty())
                .as("over the root of the summed squares of −1.5 to 1.5")
                .isCloseTo(0.5 / Math.sqrt(5), within(1e-12));
    }

    @Test
    void readings_taken_later_stand_behind_the_earlier_ones() {
        Series all = Series.together(List.of(series(MM, 1, 2), series(MM, 4))).orElseThrow();

        assertThat(all).hasToString("1 mm, 2 mm, 4 mm");
        assertThat(all.slope().orElseThrow().value()).isCloseTo(1.5e-3, within(1e-15));
    }
}
