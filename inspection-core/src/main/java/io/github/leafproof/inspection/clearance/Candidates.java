package io.github.leafproof.inspection.clearance;

import static java.util.Comparator.comparingDouble;
import static java.util.Comparator.comparingInt;

import io.github.leafproof.inspection.clearance.Question.Proofs;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Which feelers of a set are worth planning with: 64 at most, of all the leaves and stacks it can offer.
 *
 * <p>A feeler that proves nothing either way is left out, since one that does can be offered in its place. So is a feeler
 * that another one of no more leaves outdoes: entering, a thinner one that proves as much; refusing, a thicker one.
 */
final class Candidates {
    /** A set with this many leaves or fewer is offered in threes, too; a larger one has steps fine enough without. */
    private static final int SMALL_SET = 32;

    private static final int MOST_LEAVES = 3;

    /** Four outdoing lines (two windows, two sides) of this many, and one feeler for each of four ways to fail: 64. */
    private static final int LONGEST_LINE = 15;

    private static final double AS_GOOD_AS_THE_SAME = 1e-6;

    private static final Comparator<Candidate> SIMPLEST_FIRST =
            comparingInt(Candidate::leaves).thenComparingDouble(Candidate::value);

    private final Question question;

    private Candidates(Question question) {
        this.question = question;
    }

    static List<Candidate> of(FeelSet set, Question question) {
        return new Candidates(question).from(set);
    }

    private List<Candidate> from(FeelSet set) {
        List<Candidate> useful =
                usefulOf(set.feelers(set.leaves().size() <= SMALL_SET ? MOST_LEAVES : MOST_LEAVES - 1));
        useful.sort(SIMPLEST_FIRST);
        List<Candidate> distinct = withoutLookalikes(useful);
        Set<Candidate> worthwhile = new LinkedHashSet<>();
        collect(distinct, Proofs::aimed, worthwhile);
        if (question.limits().hasTolerance()) {
            collect(distinct, Proofs::tolerated, worthwhile);
        }
        return worthwhile.stream().sorted(comparingDouble(Candidate::value)).collect(Collectors.toUnmodifiableList());
    }

    /**
     * Feelers that prove something. Large sets have thousands of stacks, nearly all of them thicker than some feeler that
     * already shows the gap to be too large; those need no closer look.
     */
    private List<Candidate> usefulOf(List<Feeler> feelers) {
        List<Candidate> useful = new ArrayList<>();
        double thickEnough = Double.POSITIVE_INFINITY;
        for (Feeler feeler : feelers) {
            if (withoutFilm(feeler) > thickEnough) {
                continue;
            }
            Candidate candidate = Candidate.of(feeler, question);
            if (powers(candidate).contains(true)) {
                useful.add(candidate);
            }
            if (question.showsTooLarge(candidate.ifPasses().tolerated())) {
                thickEnough = Math.min(thickEnough, candidate.value());
            }
        }
        return useful;
    }

    private static double withoutFilm(Feeler feeler) {
        double sum = 0;
        for (Leaf leaf : feeler.leaves()) {
            Quantity measured = leaf.measured();
            sum += (measured == null ? leaf.marked() : measured).base();
        }
        return sum;
    }

    private void collect(List<Candidate> all, Function<Proofs, Proof> window, Set<Candidate> worthwhile) {
        List<Candidate> thinnestFirst = sorted(all, comparingDouble(Candidate::value));
        List<Candidate> thickestFirst =
                sorted(all, comparingDouble(Candidate::value).reversed().thenComparing(Candidate::leaves));
        worthwhile.addAll(notOutdone(
                thinnestFirst,
                window,
                candidate -> window.apply(candidate.ifPasses()).aboveLower()));
        worthwhile.addAll(notOutdone(
                thickestFirst,
                window,
                candidate -> window.apply(candidate.ifRefuses()).belowUpper()));
        thinnestFirst.stream()
                .filter(candidate -> question.showsTooLarge(window.apply(candidate.ifPasses())))
                .findFirst()
                .ifPresent(worthwhile::add);
        thickestFirst.stream()
                .filter(candidate -> question.showsTooSmall(window.apply(candidate.ifRefuses())))
                .findFirst()
                .ifPresent(worthwhile::add);
    }

    private static List<Candidate> sorted(List<Candidate> all, Comparator<Candidate> order) {
        return all.stream().sorted(order).collect(Collectors.toUnmodifiableList());
    }

    private List<Candidate> notOutdone(
            List<Candidate> inOrder, Function<Proofs, Proof> window, ToDoubleFunction<Candidate> strength) {
        List<Candidate> line = new ArrayList<>();
        double[] bestWithLeaves = new double[MOST_LEAVES + 1];
        for (Candidate candidate : inOrder) {
            double proven = strength.applyAsDouble(candidate);
            if (canShowInside(candidate, window) && proven > bestWithLeaves[candidate.leaves()]) {
                line.add(candidate);
                for (int leaves = candidate.leaves(); leaves <= MOST_LEAVES; leaves++) {
                    bestWithLeaves[leaves] = Math.max(bestWithLeaves[leaves], proven);
                }
            }
        }
        return shortened(line);
    }

    /** A long line is thinned evenly; its first reaches furthest and its last proves most, so both stay. */
    private static List<Candidate> shortened(List<Candidate> line) {
        if (line.size() <= LONGEST_LINE) {
            return line;
        }
        List<Candidate> kept = new ArrayList<>();
        for (int i = 0; i < LONGEST_LINE; i++) {
            kept.add(line.get(i * (line.size() - 1) / (LONGEST_LINE - 1)));
        }
        return kept;
    }

    /** Of feelers within a micrometre that prove the same kinds of thing, the one with the fewest leaves stays. */
    private List<Candidate> withoutLookalikes(List<Candidate> simplestFirst) {
        NavigableMap<Double, List<Candidate>> kept = new TreeMap<>();
        for (Candidate candidate : simplestFirst) {
            double at = candidate.value();
            Collection<List<Candidate>> near = kept.subMap(
                            at - AS_GOOD_AS_THE_SAME, true, at + AS_GOOD_AS_THE_SAME, true)
                    .values();
            boolean seen = near.stream()
                    .flatMap(List::stream)
                    .anyMatch(other -> powers(other).equals(powers(candidate)));
            if (!seen) {
                kept.computeIfAbsent(at, value -> new ArrayList<>()).add(candidate);
            }
        }
        return kept.values().stream().flatMap(List::stream).collect(Collectors.toUnmodifiableList());
    }

    private List<Boolean> powers(Candidate candidate) {
        return List.of(
                canShowInside(candidate, Proofs::aimed),
                question.showsTooLarge(candidate.ifPasses().aimed()),
                question.showsTooSmall(candidate.ifRefuses().aimed()),
                canShowInside(candidate, Proofs::tolerated),
                question.showsTooLarge(candidate.ifPasses().tolerated()),
                question.showsTooSmall(candidate.ifRefuses().tolerated()));
    }

    private boolean canShowInside(Candidate candidate, Function<Proofs, Proof> window) {
        return question.canShowInside(window.apply(candidate.ifPasses()), window.apply(candidate.ifRefuses()));
    }
}
