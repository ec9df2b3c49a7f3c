package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** Laws of propagation that hold for all estimates, whatever sources they share. */
@Domain(Samples.class)
class EstimateLawsTest {
    private static final double TINY = 1e-12;

    @Property(seed = "1")
    void taking_away_what_was_added_leaves_the_first(@ForAll Estimate a, @ForAll Estimate b) {
        Estimate back = a.plus(b).minus(b);
        assertThat(back.value()).isCloseTo(a.value(), within(TINY));
        assertThat(back.standardUncertainty()).isCloseTo(a.standardUncertainty(), within(TINY));
        assertThat(a.minus(a).isExact()).isTrue();
    }

    @Property(seed = "1")
    void variances_of_sum_and_difference_obey_the_parallelogram_law(@ForAll Estimate a, @ForAll Estimate b) {
        double sum = Math.pow(a.plus(b).standardUncertainty(), 2)
                + Math.pow(a.minus(b).standardUncertainty(), 2);
        double parts = Math.pow(a.standardUncertainty(), 2) + Math.pow(b.standardUncertainty(), 2);
        assertThat(sum).isCloseTo(2 * parts, within(TINY));
    }

    @Property(seed = "1")
    void shared_errors_are_counted_as_the_correlation_says(@ForAll Estimate a, @ForAll Estimate b) {
        double together = 2 * a.correlationWith(b) * a.standardUncertainty() * b.standardUncertainty();
        double variance = Math.pow(a.standardUncertainty(), 2) + Math.pow(b.standardUncertainty(), 2) + together;
        assertThat(Math.pow(a.plus(b).standardUncertainty(), 2)).isCloseTo(variance, within(TINY));
        assertThat(a.correlationWith(b)).isBetween(-1.0, 1.0).isEqualTo(b.correlationWith(a));
    }

    @Property(seed = "1")
    void the_shares_of_the_sources_make_up_the_whole(@ForAll Estimate a, @ForAll Estimate b) {
        Estimate product = a.times(b);
        double squares = product.contributions().stream()
                .mapToDouble(c -> c.amount() * c.amount())
                .sum();
        assertThat(Math.sqrt(squares)).isCloseTo(product.standardUncertainty(), within(TINY));
    }

    @Property(seed = "1")
    void degrees_of_freedom_lie_from_the_least_of_the_sources_to_their_sum(@ForAll Estimate a) {
        Assume.that(!a.isExact());
        double least = a.contributions().stream()
                .mapToDouble(c -> dof(c.source()))
                .min()
                .orElseThrow();
        double sum =
                a.contributions().stream().mapToDouble(c -> dof(c.source())).sum();
        assertThat(a.degreesOfFreedom()).isGreaterThanOrEqualTo(least - TINY);
        if (Double.isFinite(sum)) {
            assertThat(a.degreesOfFreedom()).isLessThanOrEqualTo(sum + 1e-9);
        }
    }

    // As Samples makes them: the first source is stated, the others have 3, 6 and 9 degrees of freedom.
    private static double dof(String source) {
        int number = source.charAt(source.length() - 1) - '0';
        return number == 0 ? Double.POSITIVE_INFINITY : 3.0 * number;
    }
}
