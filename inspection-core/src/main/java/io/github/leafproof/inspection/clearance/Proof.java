package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.Limits;

/**
 * How strongly trials speak for and against a gap lying inside a window: the best trial on each side counts.
 *
 * @param aboveLower p_L, that the gap is above the lower limit
 * @param belowUpper p_U, that it is below the upper limit
 * @param aboveUpper q_U, that it is above the upper limit
 * @param belowLower q_L, that it is below the lower limit
 */
record Proof(double aboveLower, double belowUpper, double aboveUpper, double belowLower) {

    /** Nothing was tried; a limit that does not exist is kept anyway. No gap is smaller than nothing. */
    static Proof untried(Limits window) {
        return new Proof(window.lower() <= 0 ? 1 : 0, window.upper() == Double.POSITIVE_INFINITY ? 1 : 0, 0, 0);
    }

    /** The gap is no smaller than this thickness. */
    static Proof atLeast(Estimate thickness, Limits window) {
        return untried(window)
                .and(new Proof(
                        probabilityAbove(window.lower(), thickness),
                        0,
                        probabilityAbove(window.upper(), thickness),
                        0));
    }

    /** The gap is smaller than this thickness. */
    static Proof lessThan(Estimate thickness, Limits window) {
        double belowLower = window.lower() <= 0 ? 0 : probabilityBelow(window.lower(), thickness);
        return untried(window).and(new Proof(0, probabilityBelow(window.upper(), thickness), 0, belowLower));
    }

    /** Both together: on each side the stronger. */
    Proof and(Proof other) {
        return new Proof(
                Math.max(aboveLower, other.aboveLower),
                Math.max(belowUpper, other.belowUpper),
                Math.max(aboveUpper, other.aboveUpper),
                Math.max(belowLower, other.belowLower));
    }

    /** The same with every near certainty made one. */
    Proof levelled(double nearly) {
        return new Proof(
                level(aboveLower, nearly),
                level(belowUpper, nearly),
                level(aboveUpper, nearly),
                level(belowLower, nearly));
    }

    private static double level(double probability, double nearly) {
        if (probability < nearly) {
            return 0;
        }
        return probability > 1 - nearly ? 1 : probability;
    }

    /**
     * The bounds these proofs set. Trials that nearly contradict each other can prove more than they leave possible; then
     * the lower bound gives way, so that nothing is credited against a trial that speaks against it.
     */
    Conformity conformity() {
        double high = 1 - Math.max(aboveUpper, belowLower);
        double low = Math.min(high, Math.max(0, aboveLower + belowUpper - 1));
        return new Conformity(low, high, belowLower, aboveUpper);
    }

    private static double probabilityAbove(double limit, Estimate thickness) {
        return Coverage.probabilityBelow(
                (thickness.value() - limit) / thickness.standardUncertainty(), thickness.degreesOfFreedom());
    }

    private static double probabilityBelow(double limit, Estimate thickness) {
        return Coverage.probabilityBelow(
                (limit - thickness.value()) / thickness.standardUncertainty(), thickness.degreesOfFreedom());
    }
}
