package io.github.leafproof.inspection.quantity;

import java.util.HashMap;
import java.util.Map;

/**
 * Propagation of distributions (JCGM 101): every source errs by chance, as its law says, and the model is computed anew,
 * many thousand times over. What comes out shows where the value may lie, however bent the model is.
 *
 * <p>The number of trials is found as clause 7.9 has it (from memory): batches of 10 000, until mean, standard uncertainty
 * and both ends of the interval, as the batches scatter, stand still to a fifth of the tolerance that is asked for (clause
 * 8.2, from memory), or the trials allowed are used up. The seed is fixed, so that the same question always has the same
 * answer.
 */
public final class MonteCarlo {
    /** The probability of every interval here. */
    public static final double PROBABILITY = 0.95;

    /** Trials in a batch: the most of 100/(1 − p) and 10 000 (clause 7.9.4, from memory). */
    public static final int BATCH = 10_000;

    /** Where more are not allowed for, 10 000/(1 − p) trials are enough (clause 7.2.2, from memory). */
    public static final int ENOUGH = 200_000;

    private static final long SEED = 101_2008;

    private MonteCarlo() {}

    /** Something computed from uncertain values. */
    @FunctionalInterface
    public interface Model {
        /** Its value in one trial, in coherent SI units; not a number where it has none. */
        double in(Trial trial);
    }

    /** One trial: how far each source errs in it. A source errs by the same amount wherever it takes part. */
    public static final class Trial {
        private final Dice dice = new Dice(SEED);
        private final Map<Errors.Key, Draw> errors = new HashMap<>();
        private final Map<Source, Draw> scales = new HashMap<>();
        private int number;

        private Trial() {}

        private static final class Draw {
            private double size;
            private int drawnIn = -1;
        }

        /** The amount in this trial, in coherent SI units. */
        public double of(Estimate estimate) {
            return estimate.drawn(this);
        }

        /** The amount in this trial, where nothing about it is uncertain. */
        public Estimate settled(Estimate estimate) {
            return estimate.isExact() ? estimate : Estimate.exact(of(estimate), estimate.dimension());
        }

        /** Whether anything uncertain took part in any trial so far. */
        public boolean hasDrawn() {
            return !errors.isEmpty();
        }

        /** In standard uncertainties. */
        double error(Errors.Key key) {
            Draw error = errors.computeIfAbsent(key, any -> new Draw());
            if (error.drawnIn != number) {
                error.size = drawn(key.source());
                error.drawnIn = number;
            }
            return error.size;
        }

        private double drawn(Source source) {
            if (source.shape() == Source.Shape.RECTANGULAR) {
                return Math.sqrt(3) * (2 * dice.uniform() - 1);
            }
            return Double.isInfinite(source.degreesOfFreedom()) ? dice.normal() : dice.normal() * scale(source);
        }

        /** What makes Student's t of a normal law, the same for all components of a source (clause 6.4.9, from memory). */
        private double scale(Source source) {
            Draw scale = scales.computeIfAbsent(source, any -> new Draw());
            if (scale.drawnIn != number) {
                double dof = source.degreesOfFreedom();
                scale.size = Math.sqrt(dof / dice.chiSquared(dof));
                scale.drawnIn = number;
            }
            return scale.size;
        }

        private void next() {
            number++;
        }
    }

    /** Whether anything uncertain takes part in a model. */
    public static boolean isUncertain(Model model) {
        Trial trial = new Trial();
        model.in(trial);
        return trial.hasDrawn();
    }

    /**
     * What a model may come to.
     *
     * @param u the standard uncertainty to whose tolerance the answer should be right; zero when only the trials can tell
     * @param mostTrials how many trials it may take, at least one batch
     */
    public static Distribution propagate(Model model, double u, int mostTrials) {
        Batches batches = new Batches();
        Trial trial = new Trial();
        do {
            double[] values = new double[BATCH];
            for (int i = 0; i < BATCH; i++) {
                trial.next();
                values[i] = model.in(trial);
            }
            batches.add(values);
        } while (batches.trials() + BATCH <= mostTrials && !batches.standStill(u));
        return batches.together();
    }

    /**
     * The numerical tolerance of a standard uncertainty: half a unit of its first significant digit (clause 7.9.2, from
     * memory, with one digit regarded as meaningful).
     */
    public static double tolerance(double u) {
        if (u == 0 || !Double.isFinite(u)) {
            return 0;
        }
        double unit = Math.pow(10, Math.floor(Math.log10(u)));
        // To one digit, 0.96 is 1, whose digit stands a place higher.
        return Math.round(u / unit) == 10 ? unit * 5 : unit / 2;
    }
}
