package io.github.leafproof.inspection.gauge;

import static io.github.leafproof.inspection.gauge.Metal.SET;
import static io.github.leafproof.inspection.gauge.Metal.leaf;
import static io.github.leafproof.inspection.gauge.Metal.q;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.inspection.quantity.Contribution;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FeelSetTest {
    private static final Leaf THREE = leaf("0.03 mm", "0.030 mm", "0.001 mm");
    private static final Leaf FOUR = leaf("0.04 mm", "0.040 mm", "0.001 mm");
    private static final Leaf FIVE = leaf("0.05 mm", "0.050 mm", "0.001 mm");
    private static final LeafSet LEAVES = new LeafSet(SET, List.of(THREE, FOUR, FIVE), q("0.005 mm"), q("0.001 mm"));
    private static final PinSet PINS = new PinSet(SET, List.of(THREE, FOUR, FIVE), q("0.01 mm"));

    private static List<String> labels(List<Feeler> feelers) {
        return feelers.stream().map(Feeler::label).toList();
    }

    @Test
    void leaves_can_be_offered_alone_and_in_stacks() {
        assertThat(labels(LEAVES.feelers(1))).containsExactly("0.03 mm", "0.04 mm", "0.05 mm");
        assertThat(labels(LEAVES.feelers(2)))
                .containsExactly("0.03 mm", "0.04 mm", "0.05 mm", "0.04 + 0.03 mm", "0.05 + 0.03 mm", "0.05 + 0.04 mm");
        assertThat(LEAVES.feelers(3)).hasSize(7).last().isEqualTo(new LeafStack(LEAVES.leaves(), q("0.001 mm")));
        assertThat(LEAVES.feelers(4)).hasSize(7);
    }

    @Test
    void what_a_leaf_is_off_it_is_off_every_time_and_a_film_is_another_each_time() {
        Feeler stack = LEAVES.feeler(List.of(q("0.03 mm"), q("0.05 mm"))).orElseThrow();

        assertThat(LEAVES.lastingErrors())
                .containsExactlyInAnyOrder(SET + " 0.03 mm", SET + " 0.04 mm", SET + " 0.05 mm");
        assertThat(stack.thickness().contributions())
                .extracting(Contribution::source)
                .filteredOn(source -> !LEAVES.lastingErrors().contains(source))
                .containsExactly("film 1 in " + SET + " 0.05 + 0.03 mm");
        assertThat(new Counter("strokes").lastingErrors()).isEmpty();
    }

    @Test
    void pins_are_never_stacked() {
        assertThat(labels(PINS.feelers(3))).containsExactly("0.03 mm", "0.04 mm", "0.05 mm");
        assertThat(PINS.film()).isEqualTo(q("0 mm"));
        assertThat(PINS.feeler(List.of(q("0.03 mm")))).contains(THREE);
        assertThat(PINS.feeler(List.of(q("0.03 mm"), q("0.04 mm")))).isEmpty();
    }

    @Test
    void a_leaf_is_found_by_its_marking_in_whatever_unit() {
        assertThat(LEAVES.leaf(q("0.05 mm"))).contains(FIVE);
        assertThat(LEAVES.leaf(q("50 µm"))).contains(FIVE);
        assertThat(LEAVES.leaf(q("0.06 mm"))).isEmpty();
    }

    @Test
    void markings_name_a_leaf_or_a_stack() {
        assertThat(LEAVES.feeler(List.of(q("0.05 mm")))).contains(FIVE);
        assertThat(LEAVES.feeler(List.of(q("0.04 mm"), q("0.05 mm"))))
                .contains(new LeafStack(List.of(FIVE, FOUR), q("0.001 mm")));
        assertThat(LEAVES.feeler(List.of(q("0.05 mm"), q("0.07 mm")))).isEmpty();
        assertThat(LEAVES.feeler(List.of(q("0.05 mm"), q("0.05 mm")))).isEmpty();
        assertThat(LEAVES.feeler(List.of())).isEmpty();
    }

    @Test
    void the_kind_is_spelled_as_files_spell_it() {
        assertThat(LEAVES.kind()).isEqualTo("leaf set");
        assertThat(PINS.kind()).isEqualTo("pin set");
    }

    @Test
    void two_leaves_that_nobody_could_tell_apart_are_refused() {
        Leaf twin = leaf("50 µm", "0.051 mm", "0.001 mm");
        assertThatThrownBy(() -> new LeafSet(SET, List.of(FIVE, twin), q("0 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("leaves has two leaves marked 50 µm");
        assertThatThrownBy(() -> new PinSet(SET, List.of(FIVE, FIVE), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("leaves has two pins marked 0.05 mm");
    }

    @Test
    void a_set_without_leaves_or_with_a_strangers_leaf_or_with_too_many_is_refused() {
        assertThatThrownBy(() -> new LeafSet(SET, List.of(), q("0 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("leaves holds no leaf");
        assertThatThrownBy(() -> new LeafSet("others", List.of(FIVE), q("0 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the 0.05 mm leaf belongs to leaves, not to others");
        List<Leaf> many = new ArrayList<>();
        for (int i = 1; i <= 65; i++) {
            many.add(Leaf.asMarked(SET, q(i + " mm")));
        }
        assertThatThrownBy(() -> new LeafSet(SET, many, q("0 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("leaves holds 65 leaves; one set holds 64 at most");
        assertThatThrownBy(() -> new LeafSet("", List.of(FIVE), q("0 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a set of leaves needs a name");
    }

    @Test
    void a_drag_band_or_a_film_below_zero_is_refused() {
        assertThatThrownBy(() -> new LeafSet(SET, List.of(FIVE), q("-0.01 mm"), q("0 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the drag band of leaves cannot be below zero, as -0.01 mm is");
        assertThatThrownBy(() -> new LeafSet(SET, List.of(FIVE), q("0 mm"), q("3 K")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the film allowance of leaves must be a length; 3 K is of another kind"
                        + " (temperature difference)");
        assertThatThrownBy(() -> new PinSet(SET, List.of(FIVE), q("-0.01 mm")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the drag band of leaves cannot be below zero, as -0.01 mm is");
    }
}
