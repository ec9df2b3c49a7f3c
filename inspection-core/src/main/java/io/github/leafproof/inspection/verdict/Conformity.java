package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.quantity.Estimate;

/**
 * How probable it is that something conforms, as far as the evidence tells.
 *
 * <p>A reading gives one number. A trial with a feeler leaf only bounds it: the gap may be anything that the leaf leaves
 * possible, and no likelihood is invented for the rest. So there are two bounds.
 *
 * @param low the least the probability of conforming can be
 * @param high the most it can be
 * @param below what is proven of lying under the lower limit, as a probability
 * @param above what is proven of lying over the upper limit, as a probability
 */
public record Conformity(double low, double high, double below, double above) {
    // Differences of decimals miss the last few bits: 24 °C less 21 °C is 3 K for people.
    private static final double SLACK = 1e-12;

    public Conformity {
        if (!(0 <= low && low <= high && high <= 1)) {
            throw new IllegalArgumentException(
                    "bounds of a probability must rise from 0 to 1, not be " + low + " and " + high);
        }
        if (!(below >= 0 && below <= 1 && above >= 0 && above <= 1)) {
            throw new IllegalArgumentException("a probability lies from 0 to 1, unlike " + below + " or " + above);
        }
    }

    /** Something that is plainly so, or plainly not; on which side, nobody asks. */
    public static Conformity certain(boolean conforms) {
        return conforms ? new Conformity(1, 1, 0, 0) : new Conformity(0, 0, 0, 0);
    }

    /** Something of which nothing is known. */
    public static Conformity unknown() {
        return new Conformity(0, 1, 0, 0);
    }

    /**
     * The probability that a measured value conforms: Φ((U − y)/u) − Φ((L − y)/u), with Student's t for finite degrees of
     * freedom (JCGM 106 clause 7). An exact value conforms or does not.
     *
     * @param reading what was measured
     * @param limits the window; only what is aimed for counts here
     */
    public static Conformity ofReading(Estimate reading, Limits limits) {
        return reading.isExact() ? ofExact(reading.value(), limits) : ofUncertain(reading, limits);
    }

    private static Conformity ofUncertain(Estimate reading, Limits limits) {
        double y = reading.value();
        double u = reading.standardUncertainty();
        double dof = reading.degreesOfFreedom();
        double below = Coverage.probabilityBelow((limits.lower() - y) / u, dof);
        double above = Coverage.probabilityAbove((limits.upper() - y) / u, dof);
        double within = Math.max(0, 1 - below - above);
        return new Conformity(within, within, below, above);
    }

    private static Conformity ofExact(double y, Limits limits) {
        boolean low = y < limits.lower() - slack(y, limits.lower());
        boolean high = y > limits.upper() + slack(y, limits.upper());
        double conforms = low || high ? 0 : 1;
        return new Conformity(conforms, conforms, low ? 1 : 0, high ? 1 : 0);
    }

    private static double slack(double y, double limit) {
        return Double.isInfinite(limit) ? 0 : SLACK * Math.max(Math.abs(y), Math.abs(limit));
    }

    /** On which side the value lies, when it more probably than not lies outside on that one. */
    public Side side() {
        if (below > 0.5) {
            return Side.LOW;
        }
        return above > 0.5 ? Side.HIGH : Side.NONE;
    }
}
