package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How advice about leaves is put into words. */
final class NextLeafWords {
    private final UnitSystem system;

    NextLeafWords(UnitSystem system) {
        this.system = system;
    }

    String of(NextLeaf next) {
        if (next instanceof NextLeaf.Try offer) {
            return of(offer);
        }
        if (next instanceof NextLeaf.Repeat repeat) {
            return of(repeat.contradiction());
        }
        if (next instanceof NextLeaf.CannotSettle stuck) {
            return of(stuck);
        }
        NextLeaf.Settled settled = (NextLeaf.Settled) next;
        return "Nothing more to offer: " + said(settled.outcome(), settled.side()) + ".";
    }

    private String of(NextLeaf.Try offer) {
        String refusing = "if it refuses, " + branch(offer.ifRefuses());
        String passing = "if it passes, " + branch(offer.ifPasses());
        boolean refusingSettles = offer.ifRefuses() instanceof NextLeaf.Settled;
        String first = refusingSettles ? refusing : passing;
        String second = refusingSettles ? passing : refusing;
        return "Offer " + named(offer.feeler()) + ": " + first + "; " + second + ".";
    }

    private String of(Contradiction contradiction) {
        Feeler entered = contradiction.passing().feeler();
        Feeler refused = contradiction.refusing().feeler();
        String remedy = "wipe the leaves, check that the engine is cold and at the right dead centre, and offer ";
        return entered.equals(refused)
                ? named(entered) + " was found both to enter and to refuse: " + remedy + "it again."
                : named(entered) + " entered, though " + named(refused) + " refused; both cannot be: " + remedy
                        + "both again.";
    }

    private String of(NextLeaf.CannotSettle stuck) {
        String wanted = wanted(stuck);
        String measuring = stuck.neverMeasured().isEmpty()
                ? ""
                : " Never measured: "
                        + stuck.neverMeasured().stream().map(Leaf::label).collect(Collectors.joining(", "))
                        + "; measuring may be all it takes.";
        return "No leaf or stack in this set can settle it." + (wanted.isEmpty() ? "" : " It takes " + wanted + ".")
                + measuring;
    }

    private String branch(AfterTrial after) {
        if (after instanceof AfterTrial.Offer offer) {
            return "offer " + named(offer.feeler());
        }
        if (after instanceof NextLeaf.Repeat) {
            return "that contradicts an earlier trial, and both are to be made again";
        }
        if (after instanceof NextLeaf.CannotSettle) {
            return "nothing in this set can settle it";
        }
        NextLeaf.Settled settled = (NextLeaf.Settled) after;
        return said(settled.outcome(), settled.side());
    }

    private static String said(Outcome outcome, Side side) {
        if (outcome == Outcome.PASSES) {
            return "the gap is inside the limits";
        }
        if (outcome == Outcome.TOLERATED) {
            return "the gap is inside what is tolerated";
        }
        return side == Side.LOW ? "the gap is too small" : "the gap is too large";
    }

    /** What to reach for, and what it measures: that is seldom what is stamped on it. */
    private String named(Feeler feeler) {
        String together = feeler.leaves().size() > 1 ? " together" : "";
        String thickness = Display.of(feeler.thickness(), system);
        String known = feeler.neverMeasured()
                ? "never measured, taken as "
                : feeler.leaves().size() > 1 ? "" : "measures ";
        return feeler.label() + together + " (" + known + thickness + ")";
    }

    private String wanted(NextLeaf.CannotSettle stuck) {
        List<String> ways = new ArrayList<>();
        // Both leaves of a pair are wanted between the same thicknesses, so the one to enter speaks for both.
        stuck.wanted().stream()
                .filter(leaf -> leaf.inPair() && leaf.result() == TrialResult.PASSES)
                .map(leaf -> "two leaves measuring " + range(leaf, stuck.u())
                        + ", of which the thinner passes and the thicker refuses")
                .forEach(ways::add);
        stuck.wanted().stream()
                .filter(leaf -> !leaf.inPair())
                .map(leaf -> "a leaf measuring " + range(leaf, stuck.u()) + " that "
                        + leaf.result().word())
                .forEach(ways::add);
        String known = " (measured to u "
                + Display.of(stuck.u(), Dimension.LENGTH, stuck.u(), system.unitFor(Dimension.LENGTH, stuck.u())) + ")";
        return ways.isEmpty() ? "" : String.join(", or ", ways) + known;
    }

    private String range(LeafWanted leaf, double u) {
        double typical = Double.isInfinite(leaf.thickest()) ? leaf.thinnest() : leaf.thickest();
        Inward inward = Inward.toSecondDigitOf(Math.min(u, leaf.thickest() - leaf.thinnest()), typical, system);
        if (leaf.thinnest() <= 0) {
            return "at most " + inward.atMost(leaf.thickest());
        }
        return Double.isInfinite(leaf.thickest())
                ? "at least " + inward.atLeast(leaf.thinnest())
                : "between " + inward.atLeast(leaf.thinnest()) + " and " + inward.atMost(leaf.thickest());
    }
}
