package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.quantity.Distribution;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Interval;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import java.util.Optional;

/**
 * Whether first-order propagation is good enough for a computed value: its 95 % interval against the one that Monte Carlo
 * trials find (JCGM 101 clause 8, from memory).
 *
 * <p>The two agree when neither end differs by more than the numerical tolerance of the standard uncertainty, with one
 * significant digit regarded as meaningful: a bench states what its gauges are worth to one digit. Where first order sees
 * no uncertainty at all, the tolerance is that of the trials' own. A difference that chance in the trials explains is none.
 */
public final class SecondOpinion {

    /** What is missing beyond this share shows at the ends of the interval: 0.1 % moves them by 0.02 u at most. */
    private static final double SHARE_THAT_SHOWS = 0.001;

    private final Interval firstOrder;
    private final Distribution trials;
    private final double tolerance;

    private SecondOpinion(Interval firstOrder, Distribution trials, double tolerance) {
        this.firstOrder = firstOrder;
        this.trials = trials;
        this.tolerance = tolerance;
    }

    /**
     * Makes the trials.
     *
     * @param estimate what first order says
     * @param model the same, to be computed anew in every trial
     * @param mostTrials how many trials it may take; {@link MonteCarlo#ENOUGH} is enough
     */
    public static SecondOpinion on(Estimate estimate, MonteCarlo.Model model, int mostTrials) {
        double u = estimate.standardUncertainty();
        double k = Coverage.coverageFactor(MonteCarlo.PROBABILITY, estimate.degreesOfFreedom());
        Distribution trials = MonteCarlo.propagate(model, u, mostTrials);
        return new SecondOpinion(
                new Interval(estimate.value() - k * u, estimate.value() + k * u),
                trials,
                MonteCarlo.tolerance(u > 0 ? u : trials.standardUncertainty()));
    }

    /** y ± k u, with the coverage factor k of the effective degrees of freedom (JCGM 100 annex G). */
    public Interval firstOrder() {
        return firstOrder;
    }

    /** The interval that leaves 2.5 % of the trials on either side; empty where no trial had a value. */
    public Optional<Interval> monteCarlo() {
        return trials.symmetric(MonteCarlo.PROBABILITY);
    }

    /** How many trials were made. */
    public int trials() {
        return trials.trials();
    }

    /** In which share of the trials nothing could be computed. */
    public double shareWithoutValue() {
        return trials.shareWithoutValue();
    }

    /** How far the ends of the two intervals may differ. */
    public double tolerance() {
        return tolerance;
    }

    /** Whether first order is good enough. */
    public boolean agrees() {
        return !lacksValues() && !reachesFurther() && !reachesLessFar();
    }

    /** Whether for some of what the inputs may be, there is no value at all. */
    public boolean lacksValues() {
        return shareWithoutValue() > SHARE_THAT_SHOWS;
    }

    /** Whether the value may lie further out, on some side, than first order says. */
    public boolean reachesFurther() {
        Interval low = trials.lowEnd(MonteCarlo.PROBABILITY).orElse(firstOrder);
        Interval high = trials.highEnd(MonteCarlo.PROBABILITY).orElse(firstOrder);
        return firstOrder.low() - low.high() > tolerance || high.low() - firstOrder.high() > tolerance;
    }

    private boolean reachesLessFar() {
        Interval low = trials.lowEnd(MonteCarlo.PROBABILITY).orElse(firstOrder);
        Interval high = trials.highEnd(MonteCarlo.PROBABILITY).orElse(firstOrder);
        return low.low() - firstOrder.low() > tolerance || firstOrder.high() - high.high() > tolerance;
    }
}
