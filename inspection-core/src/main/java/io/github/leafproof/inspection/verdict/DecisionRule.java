package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.quantity.Display;

/**
 * How sure one has to be.
 *
 * <p>Something passes when it conforms with at least this confidence, and fails when it does not conform with at least this
 * confidence; in between it is open. That is guarded acceptance together with guarded rejection (JCGM 106 clause 8, and the
 * default of ISO 14253-1; clauses from memory). At 50 % it is simple acceptance, where the better half of the odds decides
 * and the risk is shared.
 *
 * @param confidence from 0.5 to just under 1
 */
public record DecisionRule(double confidence) {
    // A value exactly at its guard band must not be turned away by the last bit of a probability.
    private static final double SLACK = 1e-12;

    public DecisionRule {
        if (!(confidence >= 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "a confidence lies from 50 % to under 100 %, not at " + confidence * 100 + " %");
        }
    }

    /** The rule that asks for this confidence, 0.95 for 95 %. */
    public static DecisionRule guarded(double confidence) {
        return new DecisionRule(confidence);
    }

    /** The rule by which the reading itself decides, wherever it lies (shared risk). */
    public static DecisionRule simpleAcceptance() {
        return new DecisionRule(0.5);
    }

    /** How many standard uncertainties a value must keep from a limit; 1.645 at 95 %, 0 by simple acceptance. */
    public double z() {
        return confidence == 0.5 ? 0 : Coverage.quantile(confidence, Double.POSITIVE_INFINITY);
    }

    /** What is found of one requirement. */
    public Finding decide(Conformity conformity) {
        return decide(conformity.low(), conformity.high());
    }

    /** What is found of one requirement, given the least and the most that the probability of conforming can be. */
    public Finding decide(double low, double high) {
        if (low >= confidence - SLACK) {
            return Finding.PASSES;
        }
        return high <= 1 - confidence + SLACK ? Finding.FAILS : Finding.OPEN;
    }

    /**
     * What comes of a check whose limits have a tolerance beyond them. Where the limits aimed for are not shown to be kept,
     * the tolerated ones decide: shown to be kept is tolerated, shown not to be kept fails, and between the two is open.
     */
    public Outcome decide(Conformity aimed, Conformity tolerated) {
        if (decide(aimed) == Finding.PASSES) {
            return Outcome.PASSES;
        }
        Finding beyond = decide(tolerated);
        return beyond == Finding.PASSES ? Outcome.TOLERATED : beyond.outcome();
    }

    /** The rule in words. */
    public String words() {
        return confidence == 0.5 ? "by simple acceptance" : "at " + Display.percent(confidence) + " confidence";
    }
}
