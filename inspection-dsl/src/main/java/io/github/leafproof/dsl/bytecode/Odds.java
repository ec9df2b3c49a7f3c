package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Finding;

/**
 * How a decision rule decides, with its limits worked out as numbers of standard uncertainties: far from them nobody needs
 * the probability itself.
 *
 * <p>The interpreter decides by a probability p and a confidence c: it passes when p ≥ c, and fails when p ≤ 1 − c. Φ rises
 * with z, so that z beyond the quantile of c tells as much. The quantile and Φ are computed, and so are the sums of
 * probabilities, each off by far less than 10⁻¹² (their libraries promise 10⁻¹⁵); the rule itself forgives 10⁻¹². Every limit
 * here therefore keeps {@value #MARGIN} away from the probability that it stands for, a thousand times as much as all that
 * can be off together. What lies nearer is decided by the probabilities, by the very operations of the interpreter.
 */
final class Odds {

    private static final double MARGIN = 1e-9;
    /** Beyond so many standard uncertainties lies less than a twentieth of the margin (4·10⁻¹¹). */
    private static final double FAR = 6.5;

    private final DecisionRule rule;
    /** One tail beyond this alone, or either of two, is too much to pass; below it one alone passes. */
    private final double tooMuchToPass;

    private final double littleEnoughToPass;
    private final double bothLittleEnoughToPass;
    private final double enoughToFail;
    private final double tooLittleToFail;
    private final double bothTooLittleToFail;

    Odds(DecisionRule rule) {
        this.rule = rule;
        double doubt = 1 - rule.confidence();
        this.tooMuchToPass = zAbove(doubt);
        this.littleEnoughToPass = zBelow(doubt);
        this.bothLittleEnoughToPass = zBelow(doubt / 2);
        this.enoughToFail = zAbove(rule.confidence());
        this.tooLittleToFail = zBelow(rule.confidence());
        this.bothTooLittleToFail = zBelow(rule.confidence() / 2);
    }

    /** From here on up Φ is above p for certain. */
    private static double zAbove(double p) {
        return p + MARGIN >= 1 ? Double.POSITIVE_INFINITY : Coverage.quantile(p + MARGIN, Double.POSITIVE_INFINITY);
    }

    /** From here on down Φ is below p for certain. */
    private static double zBelow(double p) {
        return p - MARGIN <= 0 ? Double.NEGATIVE_INFINITY : Coverage.quantile(p - MARGIN, Double.POSITIVE_INFINITY);
    }

    /** A number against limits, an infinite one for none, and against the wider ones that are tolerated. */
    int reading(double y, double u, double freedom, double low, double high, double wideLow, double wideHigh) {
        if (u == 0) {
            return Exact.within(y, low, high, wideLow, wideHigh);
        }
        Finding aimed = reading(y, u, freedom, low, high);
        return Truth.of(
                aimed,
                aimed == Finding.PASSES || (wideLow == low && wideHigh == high)
                        ? aimed
                        : reading(y, u, freedom, wideLow, wideHigh));
    }

    /** A number that is exact where its uncertainty is zero. */
    int strictReading(double y, double u, double freedom, double low, double high, double wideLow, double wideHigh) {
        return u == 0
                ? Exact.strictlyWithin(y, low, high, wideLow, wideHigh)
                : reading(y, u, freedom, low, high, wideLow, wideHigh);
    }

    Finding reading(double y, double u, double freedom, double low, double high) {
        double under = (low - y) / u;
        double over = (y - high) / u;
        double more = Math.max(under, over);
        double less = Math.min(under, over);
        if (Double.isInfinite(freedom)) {
            // p is what both tails leave: 1 − Φ(under) − Φ(over).
            boolean oneTail = less <= -FAR;
            if (more <= bothLittleEnoughToPass || (oneTail && more <= littleEnoughToPass)) {
                return Finding.PASSES;
            }
            if (more >= enoughToFail) {
                return Finding.FAILS;
            }
            if (more >= tooMuchToPass && (more <= bothTooLittleToFail || (oneTail && more <= tooLittleToFail))) {
                return Finding.OPEN;
            }
        }
        double below = Coverage.probabilityBelow((low - y) / u, freedom);
        double above = Coverage.probabilityAbove((high - y) / u, freedom);
        double within = Math.max(0, 1 - below - above);
        return rule.decide(within, within);
    }

    /** A gap against limits, which are no wider than what is tolerated. */
    int gap(Figures of, int gap, double low, double high, double wideLow, double wideHigh) {
        if (Gap.isUntried(of, gap)) {
            return Truth.LACKS | Truth.OTHERWISE;
        }
        if (Gap.isContradictory(of, gap, rule)) {
            return Truth.CONTRADICTED;
        }
        Finding aimed = gap(of.number, gap, low, high);
        return Truth.of(
                aimed,
                aimed == Finding.PASSES || (wideLow == low && wideHigh == high)
                        ? aimed
                        : gap(of.number, gap, wideLow, wideHigh));
    }

    /** A lower limit of zero or less is none: no gap is smaller than nothing. */
    Finding gap(double[] row, int gap, double low, double high) {
        boolean lower = low > 0;
        boolean upper = high < Double.POSITIVE_INFINITY;
        if (Gap.isNormal(row, gap)) {
            double shownAbove = lower ? Gap.enteredAbove(row, gap, low) : Double.POSITIVE_INFINITY;
            double shownBelow = upper ? Gap.refusedBelow(row, gap, high) : Double.POSITIVE_INFINITY;
            double over = upper ? Gap.enteredAbove(row, gap, high) : Double.NEGATIVE_INFINITY;
            double under = lower ? Gap.refusedBelow(row, gap, low) : Double.NEGATIVE_INFINITY;
            double against = Math.max(over, under);
            if (against >= enoughToFail) {
                return Finding.FAILS;
            }
            // What is left of the doubt on either side, as tails: Φ(−shownAbove) and Φ(−shownBelow).
            double more = -Math.min(shownAbove, shownBelow);
            double less = -Math.max(shownAbove, shownBelow);
            boolean shown = more <= bothLittleEnoughToPass || (less <= -FAR && more <= littleEnoughToPass);
            boolean passes = shown && against <= littleEnoughToPass;
            if (passes) {
                return Finding.PASSES;
            }
            boolean cannotPass = more >= tooMuchToPass || against >= tooMuchToPass;
            if (cannotPass && against <= tooLittleToFail) {
                return Finding.OPEN;
            }
        }
        return rule.decide(least(row, gap, low, high), most(row, gap, low, high));
    }

    /** The most that the probability can be that a gap keeps limits. */
    static double most(double[] row, int gap, double low, double high) {
        double aboveUpper = Gap.probabilityOfEnteredAbove(row, gap, high);
        double belowLower = low > 0 ? Gap.probabilityOfRefusedBelow(row, gap, low) : 0;
        return 1 - Math.max(aboveUpper, belowLower);
    }

    /** The least that it can be. */
    static double least(double[] row, int gap, double low, double high) {
        double aboveLower = low > 0 ? Gap.probabilityOfEnteredAbove(row, gap, low) : 1;
        double belowUpper = high < Double.POSITIVE_INFINITY ? Gap.probabilityOfRefusedBelow(row, gap, high) : 1;
        return Math.min(most(row, gap, low, high), Math.max(0, aboveLower + belowUpper - 1));
    }
}
