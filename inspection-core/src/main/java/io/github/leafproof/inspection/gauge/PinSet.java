package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.List;
import java.util.Optional;

/**
 * A set of pins, as for the idle opening of a throttle barrel. What counts is their diameter; they are offered one at a
 * time.
 *
 * @param name what the shop calls it
 * @param leaves the pins: one or more, no two with the same marking, each naming this set as its own
 * @param dragBand how much wider than a dragging pin the gap can be, zero or more; zero when the shop has not stated it
 */
public record PinSet(String name, List<Leaf> leaves, Quantity dragBand) implements FeelSet {
    private static final Quantity NO_FILM = Quantity.of(0, Unit.parse("mm"));

    /** Refuses an empty set and two pins with the same marking. */
    public PinSet {
        leaves = List.copyOf(leaves);
        GaugeTerms.requireOneOfEach(name, leaves, "pin");
        GaugeTerms.requireLengthOrZero(dragBand, "the drag band of " + name);
    }

    @Override
    public String kind() {
        return "pin set";
    }

    @Override
    public Quantity film() {
        return NO_FILM;
    }

    @Override
    public List<Feeler> feelers(int mostLeaves) {
        return List.copyOf(leaves);
    }

    @Override
    public Optional<Feeler> feeler(List<Quantity> markings) {
        return markings.size() == 1 ? leaf(markings.get(0)).map(pin -> (Feeler) pin) : Optional.empty();
    }
}
