package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.inspection.quantity.Slate;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Finding;

/**
 * Numbers and gaps against limits that may be uncertain themselves, each on a line of the slate; a line below zero stands for no
 * limit. What is shared by a number and its limit cancels, as the interpreter has it.
 */
final class UncertainLimits {

    private final DecisionRule rule;
    private final Odds odds;
    private final double z;

    UncertainLimits(DecisionRule rule, Odds odds) {
        this.rule = rule;
        this.odds = odds;
        this.z = rule.z();
    }

    /** What is tolerated below, given one margin more: it counts where it lies further out. */
    static int widerLow(Slate slate, int limit, int margin) {
        return limit >= 0 && slate.value(margin) < slate.value(limit) ? margin : limit;
    }

    /** What is tolerated above, given one margin more. */
    static int widerHigh(Slate slate, int limit, int margin) {
        return limit >= 0 && slate.value(margin) > slate.value(limit) ? margin : limit;
    }

    /** Whether two numbers are the same; of what is uncertain nobody can tell. */
    static int same(Slate slate, int spare, int one, int other, boolean same) {
        slate.minus(spare, one, other);
        return slate.isExact(spare) ? Exact.same(slate.value(one), slate.value(other), same) : Truth.OPEN;
    }

    /**
     * A number against limits.
     *
     * @param spare a line to calculate on
     */
    int reading(Slate slate, int spare, int number, boolean strict, int low, int high, int wideLow, int wideHigh) {
        if (isUpsideDown(slate, low, high)) {
            return Truth.NOT_COMPUTABLE;
        }
        Finding aimed = reading(slate, spare, number, strict, low, high);
        return Truth.of(
                aimed,
                aimed == Finding.PASSES || (wideLow == low && wideHigh == high)
                        ? aimed
                        : reading(slate, spare, number, strict, wideLow, wideHigh));
    }

    private Finding reading(Slate slate, int spare, int number, boolean strict, int low, int high) {
        if (isExact(slate, low) && isExact(slate, high)) {
            double from = value(slate, low, Double.NEGATIVE_INFINITY);
            double to = value(slate, high, Double.POSITIVE_INFINITY);
            double y = slate.value(number);
            if (slate.isExact(number)) {
                return Finding.of(strict ? Exact.strictlyKeeps(y, from, to) : Exact.keeps(y, from, to));
            }
            return odds.reading(y, slate.standardUncertainty(number), slate.degreesOfFreedom(number), from, to);
        }
        double above = low < 0 ? 1 : probability(slate, spare, number, low, true);
        double under = high < 0 ? 1 : probability(slate, spare, number, high, false);
        double most = Math.min(above, under);
        return rule.decide(Math.min(most, Math.max(0, above + under - 1)), most);
    }

    /** That a number keeps one limit: their difference, in which shared errors cancel, is judged against zero. */
    private static double probability(Slate slate, int spare, int number, int limit, boolean lower) {
        slate.minus(spare, number, limit);
        double y = slate.value(spare);
        if (slate.isExact(spare)) {
            boolean keeps =
                    lower ? Exact.keeps(y, 0, Double.POSITIVE_INFINITY) : Exact.keeps(y, Double.NEGATIVE_INFINITY, 0);
            return keeps ? 1 : 0;
        }
        double far = (0 - y) / slate.standardUncertainty(spare);
        double freedom = slate.degreesOfFreedom(spare);
        return Math.max(
                0, 1 - (lower ? Coverage.probabilityBelow(far, freedom) : Coverage.probabilityAbove(far, freedom)));
    }

    /** A gap against limits. */
    int gap(Figures of, int gap, Slate slate, int low, int high, int wideLow, int wideHigh) {
        if (isUpsideDown(slate, low, high)) {
            return Truth.NOT_COMPUTABLE;
        }
        if (Gap.isUntried(of, gap)) {
            return Truth.LACKS | Truth.OTHERWISE;
        }
        if (Gap.isContradictory(of, gap, rule)) {
            return Truth.CONTRADICTED;
        }
        Finding aimed = gap(of.number, gap, slate, low, high);
        return Truth.of(
                aimed,
                aimed == Finding.PASSES || (wideLow == low && wideHigh == high)
                        ? aimed
                        : gap(of.number, gap, slate, wideLow, wideHigh));
    }

    /** Conforming must be shown against the limits drawn in by their uncertainty, failing against the limits let out by it. */
    private Finding gap(double[] row, int gap, Slate slate, int low, int high) {
        double from = value(slate, low, Double.NEGATIVE_INFINITY);
        double to = value(slate, high, Double.POSITIVE_INFINITY);
        if (isExact(slate, low) && isExact(slate, high)) {
            return odds.gap(row, gap, from, to);
        }
        double byLow = low < 0 ? 0 : z * slate.standardUncertainty(low);
        double byHigh = high < 0 ? 0 : z * slate.standardUncertainty(high);
        double most = Odds.most(row, gap, from - byLow, to + byHigh);
        double innerFrom = from + byLow;
        double innerTo = to - byHigh;
        double least = innerFrom > innerTo ? 0 : Odds.least(row, gap, innerFrom, innerTo);
        return rule.decide(Math.min(least, most), most);
    }

    private static boolean isUpsideDown(Slate slate, int low, int high) {
        return low >= 0 && high >= 0 && slate.value(low) > slate.value(high);
    }

    private static boolean isExact(Slate slate, int line) {
        return line < 0 || slate.isExact(line);
    }

    private static double value(Slate slate, int line, double none) {
        return line < 0 ? none : slate.value(line);
    }
}
