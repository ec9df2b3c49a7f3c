package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Calibration of a gauge block of 50 mm by comparison: l = l_S + d − l_S (δα θ + α_S δθ).
 *
 * <p>Source: JCGM 100:2008 example H.1; figures verified in three transcriptions that agree, the digits beyond the printed
 * ones recalculated from the inputs. Lengths are in nanometres here: the arithmetic does not care.
 */
class EndGaugeExampleTest {
    private static final double RECTANGULAR = Math.sqrt(3);

    private final Estimate standard = Estimate.of(50_000_623, Dimension.LENGTH, 25, new Source("l_S", 18));
    private final Estimate difference = Estimate.of(215, Dimension.LENGTH, 5.8, new Source("repeats", 24))
            .withIndependent(3.9, new Source("comparator, random", 5))
            .withIndependent(6.7, new Source("comparator, systematic", 8));
    private final Estimate expansion =
            Estimate.of(11.5e-6, Dimension.THERMAL_EXPANSION, 2e-6 / RECTANGULAR, Source.stated("alpha_S"));
    private final Estimate bed = Estimate.of(-0.1, Dimension.TEMPERATURE_DIFFERENCE, 0.2, Source.stated("theta, mean"))
            .withIndependent(0.5 / Math.sqrt(2), Source.stated("theta, cycle"));
    private final Estimate expansionDifference =
            Estimate.of(0, Dimension.THERMAL_EXPANSION, 1e-6 / RECTANGULAR, new Source("d_alpha", 50));
    private final Estimate temperatureDifference =
            Estimate.of(0, Dimension.TEMPERATURE_DIFFERENCE, 0.05 / RECTANGULAR, new Source("d_theta", 2));

    private final Estimate length = standard.plus(difference)
            .minus(standard.times(expansionDifference.times(bed).plus(expansion.times(temperatureDifference))));

    @Test
    void the_block_is_50_000_838_nanometres_long() {
        assertThat(length.value()).isCloseTo(50_000_838, within(0.5));
        assertThat(length.dimension()).isEqualTo(Dimension.LENGTH);
    }

    @Test
    void the_comparison_has_25_degrees_of_freedom() {
        assertThat(difference.standardUncertainty()).isCloseTo(9.681_941_954, within(1e-8));
        assertThat(difference.degreesOfFreedom()).isCloseTo(25.447_250_777_4, within(25e-9));
    }

    @Test
    void each_source_adds_what_the_example_says() {
        Map<String, Double> shares =
                length.contributions().stream().collect(Collectors.toMap(Contribution::source, Contribution::amount));
        assertThat(shares.get("l_S")).isCloseTo(25, within(1e-6));
        assertThat(shares.get("d_alpha")).isCloseTo(2.886_787_3, within(1e-6));
        assertThat(shares.get("d_theta")).isCloseTo(16.599_027_1, within(1e-5));
        assertThat(length.contributions())
                .extracting(Contribution::source)
                .containsExactly(
                        "l_S", "d_theta", "comparator, systematic", "repeats", "comparator, random", "d_alpha");
    }

    @Test
    void what_has_no_effect_to_first_order_has_exactly_none() {
        // With both differences at zero the slopes toward alpha_S and theta vanish; noise in their place would be
        // wrong.
        assertThat(length.contributions())
                .extracting(Contribution::source)
                .doesNotContainAnyElementsOf(List.of("alpha_S", "theta, mean", "theta, cycle"));
    }

    @Test
    void the_combined_uncertainty_is_32_nanometres_with_16_degrees_of_freedom() {
        assertThat(length.standardUncertainty()).isCloseTo(31.663_879_1, within(32e-6));
        assertThat(length.degreesOfFreedom()).isCloseTo(16.751_856, within(1.7e-3));
        assertThat(Display.number(length.standardUncertainty(), 0)).isEqualTo("32");
    }
}
