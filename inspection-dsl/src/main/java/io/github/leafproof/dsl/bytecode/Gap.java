package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What was felt of a gap, as a row of numbers among the {@link Figures}: the thickness of what entered and of what refused. */
final class Gap {

    private static final int SLOT = 0;
    private static final int ENTERED = 1;
    private static final int REFUSED = 2;
    private static final int THICKEST_ENTERED = 3;
    private static final int THINNEST_REFUSED = 4;
    private static final int NORMAL = 5;
    /** The gap as one number, and how well that is known: with an uncertainty below zero while nothing has refused. */
    static final int MIDDLE = 6;
    /** For each trial a thickness, its uncertainty, and the degrees of freedom of that. */
    private static final int TRIALS = 10;

    private static final int EACH = 3;

    private Gap() {}

    /** The row of a gap that is known by the value of a slot. */
    static double[] row(Value.Felt felt, int slot) {
        List<Estimate> entered = bounds(felt.evidence(), FeelTrial::atLeast);
        List<Estimate> refused = bounds(felt.evidence(), FeelTrial::lessThan);
        double[] row = new double[TRIALS + EACH * (entered.size() + refused.size())];
        row[SLOT] = slot;
        row[ENTERED] = entered.size();
        row[REFUSED] = refused.size();
        row[THICKEST_ENTERED] =
                entered.stream().mapToDouble(Estimate::value).max().orElse(Double.NEGATIVE_INFINITY);
        row[THINNEST_REFUSED] =
                refused.stream().mapToDouble(Estimate::value).min().orElse(Double.POSITIVE_INFINITY);
        row[NORMAL] = isNormal(entered) && isNormal(refused) ? 1 : 0;
        row[MIDDLE + 1] = -1;
        felt.middle().ifPresent(middle -> Figures.put(middle, Origin.ofMiddle(slot), MIDDLE, MIDDLE + 1, row));
        put(entered, row, TRIALS);
        put(refused, row, TRIALS + EACH * entered.size());
        return row;
    }

    private static List<Estimate> bounds(GapEvidence evidence, Function<FeelTrial, Optional<Estimate>> bound) {
        return evidence.trials().stream()
                .flatMap(trial -> bound.apply(trial).stream())
                .toList();
    }

    private static boolean isNormal(List<Estimate> bounds) {
        return bounds.stream().allMatch(bound -> Double.isInfinite(bound.degreesOfFreedom()));
    }

    private static void put(List<Estimate> bounds, double[] row, int first) {
        for (int i = 0; i < bounds.size(); i++) {
            int at = first + EACH * i;
            row[at] = bounds.get(i).value();
            row[at + 1] = bounds.get(i).standardUncertainty();
            row[at + 2] = bounds.get(i).degreesOfFreedom();
        }
    }

    private static GapEvidence evidence(Figures figures, int gap) {
        Value felt = figures.values[(int) figures.number[gap + SLOT]];
        return felt instanceof Value.Felt known ? known.evidence() : GapEvidence.none();
    }

    /** Whether nothing was offered: every trial shows what a gap is no smaller than, or what it is smaller than. */
    static boolean isUntried(Figures figures, int gap) {
        return figures.number[gap + ENTERED] + figures.number[gap + REFUSED] == 0;
    }

    /** Whether trials contradict each other, which they can only where something that entered is as thick as what refused. */
    static boolean isContradictory(Figures figures, int gap, DecisionRule rule) {
        return figures.number[gap + THICKEST_ENTERED] >= figures.number[gap + THINNEST_REFUSED]
                && !evidence(figures, gap).contradictions(rule).isEmpty();
    }

    /** Whether all is known as well as it is stated, so that the normal law holds. */
    static boolean isNormal(double[] row, int gap) {
        return row[gap + NORMAL] != 0;
    }

    /** How many standard uncertainties the best of what entered is above a limit. */
    static double enteredAbove(double[] row, int gap, double limit) {
        double furthest = Double.NEGATIVE_INFINITY;
        int end = refused(row, gap);
        for (int at = gap + TRIALS; at < end; at += EACH) {
            furthest = Math.max(furthest, (row[at] - limit) / row[at + 1]);
        }
        return furthest;
    }

    /** How many standard uncertainties the best of what refused is below a limit. */
    static double refusedBelow(double[] row, int gap, double limit) {
        double furthest = Double.NEGATIVE_INFINITY;
        int first = refused(row, gap);
        int end = first + EACH * (int) row[gap + REFUSED];
        for (int at = first; at < end; at += EACH) {
            furthest = Math.max(furthest, (limit - row[at]) / row[at + 1]);
        }
        return furthest;
    }

    static double probabilityOfEnteredAbove(double[] row, int gap, double limit) {
        double best = 0;
        int end = refused(row, gap);
        for (int at = gap + TRIALS; at < end; at += EACH) {
            best = Math.max(best, Coverage.probabilityBelow((row[at] - limit) / row[at + 1], row[at + 2]));
        }
        return best;
    }

    static double probabilityOfRefusedBelow(double[] row, int gap, double limit) {
        double best = 0;
        int first = refused(row, gap);
        int end = first + EACH * (int) row[gap + REFUSED];
        for (int at = first; at < end; at += EACH) {
            best = Math.max(best, Coverage.probabilityBelow((limit - row[at]) / row[at + 1], row[at + 2]));
        }
        return best;
    }

    private static int refused(double[] row, int gap) {
        return gap + TRIALS + EACH * (int) row[gap + ENTERED];
    }
}
