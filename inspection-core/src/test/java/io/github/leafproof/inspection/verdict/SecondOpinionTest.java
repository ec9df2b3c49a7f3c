package io.github.leafproof.inspection.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import io.github.leafproof.inspection.quantity.Source;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether first order is good enough, after JCGM 101:2008 clause 8 (from memory). */
class SecondOpinionTest {

    private static Estimate normal(String name, double value, double u) {
        return Estimate.of(value, Dimension.RATIO, u, Source.stated(name));
    }

    private static Estimate rectangular(String name, double value, double u) {
        return Estimate.of(value, Dimension.RATIO, u, Source.withinLimits(name));
    }

    private static SecondOpinion on(Estimate estimate, MonteCarlo.Model model) {
        return SecondOpinion.on(estimate, model, MonteCarlo.ENOUGH);
    }

    @Property(tries = 15, seed = "1")
    void a_straight_model_of_normal_inputs_is_always_in_order(
            @ForAll @DoubleRange(min = -10, max = 10) double a,
            @ForAll @DoubleRange(min = -10, max = 10) double b,
            @ForAll @DoubleRange(min = 0.01, max = 2) double u) {
        Estimate x = normal("x", 3, u);
        Estimate y = normal("y", -5, 0.1);
        Estimate sum = x.scaledBy(a).plus(y.scaledBy(b));

        assertThat(on(sum, trial -> a * trial.of(x) + b * trial.of(y)).agrees()).isTrue();
    }

    @Property(tries = 15, seed = "1")
    void the_square_of_what_is_not_shown_to_differ_from_zero_never_is(
            @ForAll @DoubleRange(min = -1, max = 1) double value) {
        Estimate x = normal("x", value, 1);
        SecondOpinion square = on(x.power(2), trial -> Math.pow(trial.of(x), 2));

        assertThat(square.agrees()).isFalse();
        assertThat(square.reachesFurther()).isTrue();
    }

    // χ² of one degree of freedom: 0.000 98 and 5.024 in any table.
    @Test
    void at_zero_first_order_sees_nothing_and_the_trials_see_chi_squared() {
        Estimate x = normal("x", 0, 1);
        SecondOpinion square = on(x.power(2), trial -> Math.pow(trial.of(x), 2));

        assertThat(square.firstOrder().width()).isZero();
        assertThat(square.monteCarlo().orElseThrow().low()).isCloseTo(0.000_98, within(0.000_2));
        assertThat(square.monteCarlo().orElseThrow().high()).isCloseTo(5.024, within(0.1));
        assertThat(square.agrees()).isFalse();
    }

    // Clause 9.4: even at ten standard uncertainties from zero, the two differ by 70 and 63 where 50 are tolerated.
    @ParameterizedTest
    @CsvSource({"0, false", "0.010, false", "0.050, false", "0.5, true"})
    void the_comparison_loss_of_the_supplement_is_not_in_order_near_zero(double x1, boolean agrees) {
        Estimate first = normal("X1", x1, 0.005);
        Estimate second = normal("X2", 0, 0.005);
        SecondOpinion loss = on(
                first.power(2).plus(second.power(2)),
                trial -> Math.pow(trial.of(first), 2) + Math.pow(trial.of(second), 2));

        assertThat(loss.agrees()).isEqualTo(agrees);
    }

    // Clause 9.3: first order says 1.128 to 1.340 mg, the trials 1.083 to 1.383, and 0.005 is tolerated.
    @Test
    void the_calibrated_weight_of_the_supplement_is_not_in_order() {
        Estimate mass = normal("m_R", 100_000, 0.050).plus(normal("dm_R", 1.234, 0.020));
        Estimate air = rectangular("a", 0, 0.10 / Math.sqrt(3));
        Estimate weight = rectangular("rho_W", 8_000, 1_000 / Math.sqrt(3));
        Estimate standard = rectangular("rho_R", 8_000, 50 / Math.sqrt(3));
        Estimate one = Estimate.exact(1, Dimension.RATIO);
        Estimate lift = air.times(one.dividedBy(weight).minus(one.dividedBy(standard)));
        Estimate corrected = mass.times(one.plus(lift)).minus(Estimate.exact(100_000, Dimension.RATIO));
        SecondOpinion opinion = on(
                corrected,
                trial -> trial.of(mass) * (1 + trial.of(air) * (1 / trial.of(weight) - 1 / trial.of(standard)))
                        - 100_000);

        assertThat(opinion.firstOrder().low()).isCloseTo(1.128_45, within(0.000_05));
        assertThat(opinion.firstOrder().high()).isCloseTo(1.339_55, within(0.000_05));
        assertThat(opinion.tolerance()).isCloseTo(0.005, within(1e-12));
        assertThat(opinion.reachesFurther()).isTrue();
        assertThat(opinion.agrees()).isFalse();
    }

    // Clause 9.2.3 and 9.2.4: 3.88 beside 3.92, where 0.5 is tolerated; 17.0 beside 19.9, where 5 are.
    @Test
    void readings_that_know_limits_only_are_in_order_when_added_up() {
        Estimate even = rectangular("X1", 0, 1).plus(rectangular("X2", 0, 1)).plus(rectangular("X3", 0, 1));
        assertThat(on(even.plus(rectangular("X4", 0, 1)), trial -> trial.of(even.plus(rectangular("X4", 0, 1))))
                        .agrees())
                .isTrue();
        Estimate uneven = even.plus(rectangular("X4", 0, 10));
        assertThat(on(uneven, trial -> trial.of(uneven)).agrees()).isTrue();
    }

    // A rectangular law reaches to 0.95 √3 u = 1.645 u, and first order says 1.960 u.
    @Test
    void a_single_known_limit_can_make_first_order_too_wide() {
        Estimate twice = rectangular("X", 0, 3).scaledBy(2);
        SecondOpinion opinion = on(twice, trial -> trial.of(twice));

        assertThat(opinion.agrees()).isFalse();
        assertThat(opinion.reachesFurther()).isFalse();
        assertThat(opinion.monteCarlo().orElseThrow().high()).isCloseTo(1.645 * 6, within(0.1));
    }

    @Test
    void what_cannot_be_computed_for_some_of_the_readings_possible_is_not_in_order() {
        Estimate x = normal("x", 1, 0.5);
        SecondOpinion root = on(x.sqrt(), trial -> Math.sqrt(trial.of(x)));
        assertThat(root.lacksValues()).isTrue();
        assertThat(root.agrees()).isFalse();

        SecondOpinion never = on(x, trial -> Double.NaN);
        assertThat(never.monteCarlo()).isEmpty();
        assertThat(never.reachesFurther()).isFalse();
        assertThat(never.agrees()).isFalse();
    }

    // With one degree of freedom the trials hardly know their ends: 200 000 tell 12.7 u to 0.2 u.
    @Test
    void what_few_readings_leave_to_chance_is_no_difference() {
        Estimate mean = Estimate.ofReadings(List.of(1.0, 2.0), Dimension.RATIO, "two readings");

        assertThat(on(mean, trial -> trial.of(mean)).agrees()).isTrue();
    }

    @Test
    void the_reciprocal_of_what_may_be_near_zero_is_not_in_order_though_its_trials_scatter_without_bound() {
        Estimate x = normal("x", 1, 0.4);
        SecondOpinion reciprocal = on(x.power(-1), trial -> 1 / trial.of(x));

        assertThat(reciprocal.agrees()).isFalse();
        assertThat(reciprocal.reachesFurther()).isTrue();
    }
}
