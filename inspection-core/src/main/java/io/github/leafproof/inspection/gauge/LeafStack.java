package io.github.leafproof.inspection.gauge;

import static java.util.Comparator.comparingDouble;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Several leaves offered together.
 *
 * <p>A stack is thicker than its leaves: between every two lies a film of oil and dirt, 2 to 5 µm on wiped leaves (common
 * practice). The set states one allowance for it; where two faces meet the film is taken to lie anywhere from nothing to
 * twice that allowance, so each film is known no better than ± its own allowance (rectangular, GUM 4.3.7, clause from
 * memory). The uncertainty of the stack is the root-sum-square of its leaves and films.
 *
 * @param leaves two leaves or more, each once; kept with the thickest marking first, whatever the order given
 * @param film the allowance for one pair of faces, zero or more
 */
public record LeafStack(List<Leaf> leaves, Quantity film) implements Feeler {
    private static final Comparator<Leaf> THICKEST_FIRST =
            comparingDouble((Leaf leaf) -> leaf.marked().base()).reversed().thenComparing(Leaf::set);

    /** Refuses fewer than two leaves, the same leaf twice, and a film that is no length. */
    public LeafStack {
        leaves = leaves.stream().sorted(THICKEST_FIRST).collect(Collectors.toUnmodifiableList());
        if (leaves.size() < 2) {
            throw new IllegalArgumentException("a stack holds two leaves or more");
        }
        for (int i = 1; i < leaves.size(); i++) {
            if (isSame(leaves.get(i), leaves.get(i - 1))) {
                throw new IllegalArgumentException(
                        "a leaf can be only once in a stack, but " + labelOf(leaves) + " has one twice");
            }
        }
        GaugeTerms.requireLengthOrZero(film, "the film between two leaves");
    }

    @Override
    public String label() {
        return labelOf(leaves);
    }

    @Override
    public Estimate thickness() {
        Estimate together = leaves.get(0).thickness();
        for (Leaf leaf : leaves.subList(1, leaves.size())) {
            together = together.plus(leaf.thickness());
        }
        return film.base() == 0 ? together : withFilms(together);
    }

    @Override
    public LeafStack asIfMeasured() {
        return new LeafStack(leaves.stream().map(Leaf::asIfMeasured).collect(Collectors.toUnmodifiableList()), film);
    }

    private Estimate withFilms(Estimate bare) {
        Estimate thick = bare;
        for (int face = 1; face < leaves.size(); face++) {
            Source source =
                    Source.withinLimits("film " + face + " in " + leaves.get(0).set() + " " + label());
            thick = thick.plus(Estimate.of(film, Uncertainty.limits(film), source));
        }
        return thick;
    }

    private static boolean isSame(Leaf one, Leaf other) {
        return one.marked().base() == other.marked().base() && one.set().equals(other.set());
    }

    private static String labelOf(List<Leaf> leaves) {
        Quantity first = leaves.get(0).marked();
        boolean oneUnit = leaves.stream().allMatch(leaf -> leaf.marked().unit().equals(first.unit()));
        return oneUnit
                ? leaves.stream().map(leaf -> GaugeTerms.stamped(leaf.marked())).collect(Collectors.joining(" + "))
                        + " " + first.unit()
                : leaves.stream().map(Leaf::label).collect(Collectors.joining(" + "));
    }
}
