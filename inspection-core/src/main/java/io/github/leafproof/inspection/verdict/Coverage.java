package io.github.leafproof.inspection.verdict;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The probability laws behind a judgement: the normal law, and Student's t when an uncertainty itself was found from few
 * readings (JCGM 100 annex G). Infinite degrees of freedom stand for the normal law.
 */
public final class Coverage {
    private static final ContinuousDistribution NORMAL = NormalDistribution.of(0, 1);

    private Coverage() {}

    /** The probability that a value lies no more than z standard uncertainties above its estimate. */
    public static double probabilityBelow(double z, double degreesOfFreedom) {
        return law(degreesOfFreedom).cumulativeProbability(z);
    }

    /** The probability that a value lies more than z standard uncertainties above its estimate; exact far out, too. */
    public static double probabilityAbove(double z, double degreesOfFreedom) {
        return law(degreesOfFreedom).survivalProbability(z);
    }

    /** The number of standard uncertainties below which a value lies with probability p. */
    public static double quantile(double p, double degreesOfFreedom) {
        return law(degreesOfFreedom).inverseCumulativeProbability(p);
    }

    /** The coverage factor k: the value lies within ±k standard uncertainties with probability p (JCGM 100 table G.2). */
    public static double coverageFactor(double p, double degreesOfFreedom) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("a coverage probability lies between 0 and 1, not at " + p);
        }
        return law(degreesOfFreedom).inverseSurvivalProbability((1 - p) / 2);
    }

    /** How dense the probability lies z standard uncertainties from the estimate, for each standard uncertainty. */
    public static double density(double z, double degreesOfFreedom) {
        return law(degreesOfFreedom).density(z);
    }

    private static ContinuousDistribution law(double degreesOfFreedom) {
        return Double.isInfinite(degreesOfFreedom) ? NORMAL : TDistribution.of(degreesOfFreedom);
    }
}
