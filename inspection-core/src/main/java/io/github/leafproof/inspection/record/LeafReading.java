package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From JSON to the leaves or pins of a set. */
final class LeafReading {
    /** Real leaves miss their marking by a quarter (common practice); a factor of two is a slipped decimal or digit. */
    private static final double FAR_FROM_MARKING = 2;

    private static final List<String> KEYS =
            List.of("marked", "measured", "u", "limits", "U", "k", "calibrated", "due");

    private final String set;
    private final String word;

    /**
     * Reads the leaves of this set.
     *
     * @param word what one of them is called: leaf or pin
     */
    LeafReading(String set, String word) {
        this.set = set;
        this.word = word;
    }

    List<Leaf> leaves(Spot list) {
        List<Leaf> leaves = new ArrayList<>();
        list.someItems("a list of " + (word.equals("leaf") ? "leaves" : "pins")).ifPresent(spots -> {
            if (spots.size() > FeelSet.MOST_LEAVES) {
                list.complain(
                        FileMistake.LP645,
                        "a set of " + spots.size() + " is more than any set holds",
                        "one set holds " + FeelSet.MOST_LEAVES + " at most; make two sets of it");
            }
            spots.forEach(spot -> leaf(spot).ifPresent(leaf -> addUnlessMarkedTwice(leaf, spot, leaves)));
        });
        return leaves;
    }

    private void addUnlessMarkedTwice(Leaf leaf, Spot spot, List<Leaf> leaves) {
        if (leaves.stream().anyMatch(other -> other.marked().sameAmountAs(leaf.marked()))) {
            spot.complain(
                    FileMistake.LP643,
                    "the set has another " + word + " marked " + leaf.marked(),
                    "a sheet names a " + word + " by its marking, so each may be there once; keep the one in use");
        } else {
            leaves.add(leaf);
        }
    }

    private Optional<Leaf> leaf(Spot spot) {
        return spot.fields("a " + word, KEYS).flatMap(fields -> {
            Optional<Quantity> marked = fields.required("marked", "what is stamped on the " + word)
                    .flatMap(s -> Amounts.aboveZero(s, Dimension.LENGTH));
            Optional<Quantity> measured =
                    fields.optional("measured").flatMap(s -> Amounts.aboveZero(s, Dimension.LENGTH));
            Optional<Uncertainty> uncertainty =
                    fields.has("measured") ? ofMeasurement(fields) : ofMarking(fields, marked);
            var calibration = UncertaintyReading.calibration(fields);
            if (marked.isEmpty() || uncertainty.isEmpty()) {
                return Optional.empty();
            }
            measured.ifPresent(thickness -> warnIfFar(fields, marked.get(), thickness));
            return Optional.of(new Leaf(set, marked.get(), measured.orElse(null), uncertainty.get(), calibration));
        });
    }

    private Optional<Uncertainty> ofMeasurement(Fields fields) {
        if (!UncertaintyReading.isStated(fields)) {
            fields.complain(
                    FileMistake.LP641,
                    "this " + word + " was measured, and nothing says how well",
                    UncertaintyReading.HOW_TO_STATE + "; it is on the micrometer's certificate");
            return Optional.empty();
        }
        return UncertaintyReading.read(fields, Dimension.LENGTH);
    }

    /** What a marking is worth on its own, unless somebody vouches for it within limits. */
    private Optional<Uncertainty> ofMarking(Fields fields, Optional<Quantity> marked) {
        for (String way : List.of("u", "U")) {
            if (fields.has(way)) {
                fields.complainAtKey(
                        way,
                        FileMistake.LP642,
                        way + " says how well a " + word + " was measured, and this one was not",
                        "add \"measured\", or state \"limits\" if somebody vouches for the marking");
            }
        }
        return UncertaintyReading.isStated(fields)
                ? UncertaintyReading.read(fields, Dimension.LENGTH)
                : marked.map(Leaf::uncertaintyOfMarking);
    }

    private void warnIfFar(Fields fields, Quantity marked, Quantity measured) {
        double factor = measured.base() / marked.base();
        if (factor > FAR_FROM_MARKING || factor < 1 / FAR_FROM_MARKING) {
            fields.optional("measured")
                    .ifPresent(spot -> spot.complain(
                            FileMistake.LP682,
                            "a " + word + " marked " + marked + " is said to measure " + measured,
                            "check for a slipped decimal point or a " + word + " from another set"));
        }
    }
}
