package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Resistance and reactance from voltage, current and phase read together five times.
 *
 * <p>Source: JCGM 100:2008 example H.2; the five rows and the results verified in three transcriptions that agree, the
 * correlations of the results from memory and recalculated, the digits beyond the printed ones recalculated from the rows.
 */
class ResistanceExampleTest {
    private final List<Estimate> read = Estimate.readTogether(
            List.of(
                    List.of(5.007, 4.994, 5.005, 4.990, 4.999),
                    List.of(19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3),
                    List.of(1.0456, 1.0438, 1.0468, 1.0428, 1.0433)),
            List.of(Dimension.RATIO, Dimension.RATIO, Dimension.RATIO),
            "five rounds");
    private final Estimate voltage = read.get(0);
    private final Estimate current = read.get(1);
    private final Estimate phase = read.get(2);

    private final Estimate impedance = voltage.dividedBy(current);
    private final Estimate resistance =
            impedance.times(phase.map(Math::cos, -Math.sin(phase.value()), Dimension.RATIO));
    private final Estimate reactance = impedance.times(phase.map(Math::sin, Math.cos(phase.value()), Dimension.RATIO));

    @Test
    void the_means_are_those_of_the_example() {
        assertThat(voltage.value()).isCloseTo(4.9990, within(1e-9));
        assertThat(current.value()).isCloseTo(19.6610e-3, within(1e-12));
        assertThat(phase.value()).isCloseTo(1.04446, within(1e-9));
        assertThat(voltage.standardUncertainty()).isCloseTo(0.003_209_361_3, within(1e-10));
        assertThat(current.standardUncertainty()).isCloseTo(0.009_471_008_4e-3, within(1e-13));
        assertThat(phase.standardUncertainty()).isCloseTo(0.000_752_063_83, within(1e-11));
    }

    @Test
    void what_moved_together_while_reading_is_remembered() {
        assertThat(voltage.correlationWith(current)).isCloseTo(-0.355_311_220, within(1e-8));
        assertThat(voltage.correlationWith(phase)).isCloseTo(0.857_624_211, within(1e-8));
        assertThat(current.correlationWith(phase)).isCloseTo(-0.645_111_218, within(1e-8));
    }

    @Test
    void the_results_are_those_of_the_example() {
        assertThat(resistance.value()).isCloseTo(127.732_169_928, within(1e-8));
        assertThat(reactance.value()).isCloseTo(219.846_511_913, within(1e-8));
        assertThat(impedance.value()).isCloseTo(254.259_701_948, within(1e-8));
    }

    @Test
    void their_uncertainties_rest_on_the_rows_and_not_on_rounded_correlations() {
        // From correlations rounded to two digits u(R) would come out as 0.070.
        assertThat(resistance.standardUncertainty()).isCloseTo(0.071_071_407, within(1e-8));
        assertThat(reactance.standardUncertainty()).isCloseTo(0.295_581_677, within(1e-8));
        assertThat(impedance.standardUncertainty()).isCloseTo(0.236_336_130, within(1e-8));
    }

    @Test
    void the_results_are_correlated_as_the_example_says() {
        assertThat(resistance.correlationWith(reactance)).isCloseTo(-0.588_429_784, within(1e-7));
        assertThat(resistance.correlationWith(impedance)).isCloseTo(-0.485_259_224, within(1e-7));
        assertThat(reactance.correlationWith(impedance)).isCloseTo(0.992_511_649, within(1e-7));
    }

    @Test
    void five_rounds_leave_four_degrees_of_freedom() {
        assertThat(voltage.degreesOfFreedom()).isCloseTo(4, within(1e-12));
        assertThat(resistance.degreesOfFreedom()).isCloseTo(4, within(1e-12));
        assertThat(resistance.contributions()).extracting(Contribution::source).containsExactly("five rounds");
    }
}
