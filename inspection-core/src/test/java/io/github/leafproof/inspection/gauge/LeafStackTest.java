package io.github.leafproof.inspection.gauge;

import static io.github.leafproof.inspection.gauge.Metal.INCH;
import static io.github.leafproof.inspection.gauge.Metal.MM;
import static io.github.leafproof.inspection.gauge.Metal.SET;
import static io.github.leafproof.inspection.gauge.Metal.leaf;
import static io.github.leafproof.inspection.gauge.Metal.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LeafStackTest {
    private static final Leaf FOUR = leaf("0.04 mm", "0.040 mm", "0.001 mm");
    private static final Leaf FIVE = leaf("0.05 mm", "0.050 mm", "0.001 mm");

    @Test
    void a_stack_is_thicker_than_its_leaves_by_a_film_for_each_pair_of_faces() {
        LeafStack stack = new LeafStack(List.of(FOUR, FIVE), q("0.001 mm"));
        assertThat(stack.thickness().value()).isCloseTo(0.091 * MM, within(1e-15));
        Leaf three = leaf("0.03 mm", "0.030 mm", "0.001 mm");
        assertThat(new LeafStack(List.of(FOUR, FIVE, three), q("0.001 mm"))
                        .thickness()
                        .value())
                .isCloseTo(0.122 * MM, within(1e-15));
    }

    @Test
    void its_uncertainty_is_the_root_sum_square_of_its_leaves_and_of_a_film_known_no_better_than_itself() {
        LeafStack stack = new LeafStack(List.of(FOUR, FIVE), q("0.003 mm"));
        double expected = Math.sqrt(1 + 1 + 9 / 3.0) * 0.001 * MM;
        assertThat(stack.thickness().standardUncertainty()).isCloseTo(expected, within(1e-15));
    }

    @Test
    void without_a_film_allowance_only_the_leaves_count() {
        LeafStack stack = new LeafStack(List.of(FOUR, FIVE), q("0 mm"));
        assertThat(stack.thickness().value()).isCloseTo(0.090 * MM, within(1e-15));
        assertThat(stack.thickness().standardUncertainty()).isCloseTo(Math.sqrt(2) * 0.001 * MM, within(1e-15));
    }

    // A feeler stock maker stacked ten leaves of 0.010 in, each ±0.000 35 in, and measured 0.106 in, then 0.105 in.
    @Test
    void ten_stacked_leaves_measured_more_than_their_tolerances_explain_and_the_film_explains_the_rest() {
        Estimate bare = tenOfTenThou(q("0 in")).thickness();
        Estimate filmed = tenOfTenThou(q("0.0005 in")).thickness();
        for (double measured : new double[] {0.105 * INCH, 0.106 * INCH}) {
            assertThat(measured - bare.value()).isGreaterThan(2 * bare.standardUncertainty());
            assertThat(Math.abs(measured - filmed.value())).isLessThan(2 * filmed.standardUncertainty());
        }
    }

    private static LeafStack tenOfTenThou(Quantity film) {
        List<Leaf> ten = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            ten.add(Leaf.asMarked("stock " + i, q("0.010 in"), Uncertainty.limits(q("0.00035 in"))));
        }
        return new LeafStack(ten, film);
    }

    @Test
    void what_a_stack_and_its_leaf_share_cancels_in_their_difference() {
        LeafStack stack = new LeafStack(List.of(FOUR, FIVE), q("0 mm"));
        assertThat(stack.thickness().minus(FIVE.thickness()).standardUncertainty())
                .isCloseTo(0.001 * MM, within(1e-15));
    }

    @Test
    void the_order_in_the_hand_makes_no_difference() {
        LeafStack one = new LeafStack(List.of(FOUR, FIVE), q("0.001 mm"));
        LeafStack other = new LeafStack(List.of(FIVE, FOUR), q("0.001 mm"));
        assertThat(one).isEqualTo(other);
        assertThat(one.label()).isEqualTo("0.05 + 0.04 mm");
        assertThat(one.thickness().minus(other.thickness()).isExact()).isTrue();
    }

    @Test
    void leaves_of_different_units_are_named_with_their_own() {
        LeafStack mixed = new LeafStack(List.of(FOUR, leaf("2 thou", "2.1 thou", "0.05 thou")), q("0.001 mm"));
        assertThat(mixed.label()).isEqualTo("2 thou + 0.04 mm");
    }

    @Test
    void one_unmeasured_leaf_makes_a_stack_never_measured() {
        assertThat(new LeafStack(List.of(FOUR, FIVE), q("0 mm")).neverMeasured())
                .isFalse();
        assertThat(new LeafStack(List.of(FOUR, Leaf.asMarked(SET, q("0.06 mm"))), q("0 mm")).neverMeasured())
                .isTrue();
    }

    @Test
    void a_stack_of_one_or_with_the_same_leaf_twice_is_refused() {
        assertThatThrownBy(() -> new LeafStack(List.of(FOUR), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a stack holds two leaves or more");
        assertThatThrownBy(() -> new LeafStack(List.of(FOUR, FIVE, FOUR), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a leaf can be only once in a stack, but 0.05 + 0.04 + 0.04 mm has one twice");
        assertThatThrownBy(() -> new LeafStack(List.of(FOUR, FIVE), q("-0.001 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the film between two leaves cannot be below zero, as -0.001 mm is");
    }
}
