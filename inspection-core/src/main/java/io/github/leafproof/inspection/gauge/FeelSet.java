package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A set of leaves or pins: gauges that tell by feel whether a gap is smaller or larger than they are. */
public sealed interface FeelSet extends Gauge permits LeafSet, PinSet {

    /** The most leaves or pins one set can hold; more than any set in the trade has. */
    int MOST_LEAVES = 64;

    /** The leaves or pins, in the order of the tray. */
    List<Leaf> leaves();

    /**
     * How much wider than a dragging leaf the gap can be and still make it drag, as the shop states it. Zero says that the
     * shop has stated nothing; then a drag shows no more than that the leaf entered.
     */
    Quantity dragBand();

    /** The allowance for the film between two faces in a stack; zero where nothing is stacked. */
    Quantity film();

    /** Everything the set can offer: each leaf alone, and the stacks of up to so many leaves. Pins are never stacked. */
    List<Feeler> feelers(int mostLeaves);

    /**
     * What somebody offered who named these markings: one leaf, or a stack of several.
     *
     * @return empty when the set has no such leaf, when a leaf would be needed twice, when nothing is named, or for a
     *     stack of pins
     */
    Optional<Feeler> feeler(List<Quantity> markings);

    @Override
    default Set<String> lastingErrors() {
        return leaves().stream().map(Leaf::errorName).collect(Collectors.toUnmodifiableSet());
    }

    /** The leaf with this marking, in whatever unit it is named. */
    default Optional<Leaf> leaf(Quantity marked) {
        return leaves().stream()
                .filter(leaf -> leaf.marked().sameAmountAs(marked))
                .findFirst();
    }
}
