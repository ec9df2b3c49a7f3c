package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * A set of feeler leaves, which can also be offered in stacks.
 *
 * @param name what the shop calls it
 * @param leaves one leaf or more, no two with the same marking, each naming this set as its own
 * @param dragBand how much wider than a dragging leaf the gap can be, zero or more; zero when the shop has not stated it
 * @param film the allowance for the film between two leaves of a stack, zero or more
 */
public record LeafSet(String name, List<Leaf> leaves, Quantity dragBand, Quantity film) implements FeelSet {

    /** Refuses an empty set and two leaves with the same marking. */
    public LeafSet {
        leaves = List.copyOf(leaves);
        GaugeTerms.requireOneOfEach(name, leaves, "leaf");
        GaugeTerms.requireLengthOrZero(dragBand, "the drag band of " + name);
        GaugeTerms.requireLengthOrZero(film, "the film allowance of " + name);
    }

    @Override
    public String kind() {
        return "leaf set";
    }

    @Override
    public List<Feeler> feelers(int mostLeaves) {
        List<Feeler> feelers = new ArrayList<>(leaves);
        for (int together = 2; together <= mostLeaves; together++) {
            stacksOf(together, 0, new ArrayList<>(), feelers);
        }
        return feelers;
    }

    private void stacksOf(int together, int from, List<Leaf> chosen, List<Feeler> stacks) {
        if (chosen.size() == together) {
            stacks.add(new LeafStack(chosen, film));
            return;
        }
        for (int next = from; next < leaves.size(); next++) {
            chosen.add(leaves.get(next));
            stacksOf(together, next + 1, chosen, stacks);
            chosen.remove(chosen.size() - 1);
        }
    }

    @Override
    public Optional<Feeler> feeler(List<Quantity> markings) {
        if (markings.size() == 1) {
            return leaf(markings.get(0)).map(leaf -> leaf);
        }
        List<Leaf> chosen = new ArrayList<>();
        markings.forEach(marked -> leaf(marked).ifPresent(chosen::add));
        boolean allThereOnce = chosen.size() == markings.size() && new HashSet<>(chosen).size() == chosen.size();
        return allThereOnce && !chosen.isEmpty() ? Optional.of(new LeafStack(chosen, film)) : Optional.empty();
    }
}
