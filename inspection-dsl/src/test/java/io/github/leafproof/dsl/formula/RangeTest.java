package io.github.leafproof.dsl.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Ranges are computed with as in any textbook of interval arithmetic (the rules are from memory). */
class RangeTest {

    private static final double NO_END = Double.POSITIVE_INFINITY;

    private static Range range(double low, double high) {
        return new Range(low, high);
    }

    @Test
    void both_ends_belong_to_a_range_and_nothing_beyond_them() {
        assertThat(range(1, 2).holds(1)).isTrue();
        assertThat(range(1, 2).holds(2)).isTrue();
        assertThat(range(1, 2).holds(Math.nextDown(1.0))).isFalse();
        assertThat(range(1, 2).holds(Math.nextUp(2.0))).isFalse();
        assertThat(Range.at(3).holds(3)).isTrue();
        assertThat(Range.FROM_ZERO.holds(0)).isTrue();
        assertThat(Range.FROM_ZERO.holds(-Double.MIN_VALUE)).isFalse();
    }

    @Test
    void a_range_does_not_run_backwards_or_to_what_is_no_number() {
        assertThatThrownBy(() -> range(2, 1)).hasMessage("a range cannot run from 2.0 to 1.0");
        assertThatThrownBy(() -> range(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> range(1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void what_lies_in_one_of_two_ranges_lies_between_their_outermost_ends() {
        assertThat(range(1, 2).with(range(4, 5))).isEqualTo(range(1, 5));
        assertThat(range(4, 5).with(range(1, 2))).isEqualTo(range(1, 5));
        assertThat(range(1, 5).with(range(2, 3))).isEqualTo(range(1, 5));
    }

    @Test
    void sums_and_products_reach_from_the_least_to_the_greatest_that_the_ends_make() {
        assertThat(range(1, 2).plus(range(-3, 5))).isEqualTo(range(-2, 7));
        assertThat(range(1, 2).times(range(3, 5))).isEqualTo(range(3, 10));
        assertThat(range(-1, 2).times(range(-3, 5))).isEqualTo(range(-6, 10));
        assertThat(range(-2, -1).times(range(3, 5))).isEqualTo(range(-10, -3));
        assertThat(range(1, 2).negated()).isEqualTo(range(-2, -1));
    }

    @Test
    void of_nothing_times_any_number_nothing_is_claimed() {
        assertThat(Range.at(0).times(Range.ANY)).isEqualTo(Range.ANY);
        assertThat(Range.ANY.plus(Range.ANY)).isEqualTo(Range.ANY);
    }

    @Test
    void the_inverse_is_known_where_nothing_is_divided_by_zero() {
        assertThat(range(2, 4).inverted()).isEqualTo(range(0.25, 0.5));
        assertThat(range(-4, -2).inverted()).isEqualTo(range(-0.5, -0.25));
        assertThat(range(-1, 4).inverted()).isEqualTo(Range.ANY);
        assertThat(range(0, 4).inverted()).isEqualTo(Range.ANY);
    }

    @Test
    void without_its_sign_a_number_from_both_sides_of_zero_may_be_as_small_as_zero() {
        assertThat(range(-3, 2).absolute()).isEqualTo(range(0, 3));
        assertThat(range(-2, 3).absolute()).isEqualTo(range(0, 3));
        assertThat(range(2, 3).absolute()).isEqualTo(range(2, 3));
        assertThat(range(-3, -2).absolute()).isEqualTo(range(2, 3));
    }

    @Test
    void an_even_power_has_no_sign_and_an_odd_one_keeps_it() {
        assertThat(range(-3, 2).power(2)).isEqualTo(range(0, 9));
        assertThat(range(-3, -2).power(2)).isEqualTo(range(4, 9));
        assertThat(range(-3, 2).power(3)).isEqualTo(range(-27, 8));
        assertThat(range(-3, 2).power(1)).isEqualTo(range(-3, 2));
        assertThat(range(-3, 2).power(0)).isEqualTo(Range.at(1));
        assertThat(range(2, 4).power(-1)).isEqualTo(range(0.25, 0.5));
        assertThat(range(-4, -2).power(-2)).isEqualTo(range(1.0 / 16, 0.25));
    }

    @Test
    void a_root_is_taken_of_what_is_not_negative() {
        assertThat(range(4, 9).root()).isEqualTo(range(2, 3));
        assertThat(range(-4, 9).root()).isEqualTo(range(0, 3));
        assertThat(range(-4, 0).root()).isEqualTo(Range.at(0));
        assertThat(range(-4, -1).root()).isEqualTo(Range.ANY);
        assertThat(Range.FROM_ZERO.root()).isEqualTo(range(0, NO_END));
    }

    @Test
    void the_smallest_of_several_is_no_greater_than_any_of_them() {
        List<Range> all = List.of(range(1, 5), range(2, 3), range(-1, 9));

        assertThat(Range.least(all)).isEqualTo(range(-1, 3));
        assertThat(Range.greatest(all)).isEqualTo(range(2, 9));
        assertThat(Range.least(List.of())).isEqualTo(Range.ANY);
    }
}
