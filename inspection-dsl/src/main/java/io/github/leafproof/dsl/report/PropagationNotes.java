package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.Propagation;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Interval;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.SecondOpinion;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where a verdict leans on a number for which first-order propagation is not good enough (JCGM 101 clause 8). */
final class PropagationNotes {

    /** A longer formula is not repeated in a note. */
    private static final int LONGEST_NAME = 60;

    /** Nobody reads a longer list of what is no harm. */
    private static final int MOST_NAMED = 8;

    private final UnitSystem units;

    PropagationNotes(UnitSystem units) {
        this.units = units;
    }

    /** What a check may claim too much by. */
    List<String> of(List<Propagation.Doubt> doubts) {
        return doubts.stream().map(this::words).toList();
    }

    /** What the whole report has to say: which numbers are known better, and that some were too much work. */
    List<String> of(Propagation propagation) {
        List<String> notes = new ArrayList<>();
        List<Propagation.Doubt> better = propagation.knownBetter();
        if (!better.isEmpty()) {
            String rest = better.size() > MOST_NAMED ? "; and " + (better.size() - MOST_NAMED) + " more" : "";
            notes.add(better.stream()
                    .limit(MOST_NAMED)
                    .map(this::better)
                    .collect(Collectors.joining(
                            "; ",
                            "known better than was judged (95 % by Monte Carlo trials and by first order): ",
                            rest)));
        }
        int unchecked = propagation.unchecked();
        if (unchecked > 0) {
            notes.add((unchecked == 1 ? "one computed value" : unchecked + " computed values")
                    + " had no second opinion by Monte Carlo trials: this procedure computes too much for that");
        }
        return notes;
    }

    private String words(Propagation.Doubt doubt) {
        SecondOpinion opinion = doubt.opinion();
        List<String> found = new ArrayList<>();
        opinion.monteCarlo()
                .map(interval -> "Monte Carlo trials give " + shown(doubt, interval))
                .ifPresent(found::add);
        if (opinion.lacksValues()) {
            found.add("in " + Display.percent(opinion.shareWithoutValue())
                    + " of the cases that its readings leave possible it cannot be computed at all");
        }
        return name(doubt) + " was judged as " + shown(doubt, opinion.firstOrder()) + " (first order, 95 %), but "
                + String.join(", and ", found)
                + ": this verdict may claim more than is known; read better, or put the limit on what is read";
    }

    private String better(Propagation.Doubt doubt) {
        String found = doubt.opinion()
                .monteCarlo()
                .map(interval -> shown(doubt, interval))
                .orElse("nothing");
        return name(doubt) + " is " + found + ", taken as "
                + shown(doubt, doubt.opinion().firstOrder());
    }

    private static String name(Propagation.Doubt doubt) {
        return doubt.number().length() > LONGEST_NAME ? "a computed value" : doubt.number();
    }

    /** Both ends in one unit, to a digit more than the tolerance: what differs by more than that must look different. */
    private String shown(Propagation.Doubt doubt, Interval interval) {
        Dimension dimension = doubt.estimate().dimension();
        Interval first = doubt.opinion().firstOrder();
        Unit unit = units.unitFor(dimension, Math.max(Math.abs(first.low()), Math.abs(first.high())));
        if (interval.width() == 0) {
            return "exactly " + Display.of(interval.low(), dimension, 0, unit);
        }
        double digit = 2 * doubt.opinion().tolerance();
        return Display.of(interval.low(), dimension, digit, unit) + " to "
                + Display.of(interval.high(), dimension, digit, unit);
    }
}
