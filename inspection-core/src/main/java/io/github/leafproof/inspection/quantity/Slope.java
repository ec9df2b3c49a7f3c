package io.github.leafproof.inspection.quantity;

import java.util.function.ToDoubleFunction;

/**
 * How far a model moves when one of its inputs does, found by trying a standard uncertainty above and below (JCGM 100
 * clause 5.1.3, note 2, clause from memory). Where the model ends on one side, the other side alone tells.
 */
final class Slope {
    /** Below this share of a value a step would drown in the rounding of a double. */
    private static final double LEAST_STEP = 1e-6;

    private static final int HALVINGS = 40;

    private Slope() {}

    static double of(ToDoubleFunction<double[]> model, double[] at, int input, double u) {
        double step = Math.max(u, LEAST_STEP * Math.abs(at[input]));
        for (int i = 0; i < HALVINGS; i++) {
            double slope = over(model, at, input, step);
            if (Double.isFinite(slope)) {
                return slope;
            }
            step /= 2;
        }
        return Double.NaN;
    }

    private static double over(ToDoubleFunction<double[]> model, double[] at, int input, double step) {
        double above = beside(model, at, input, step);
        double below = beside(model, at, input, -step);
        if (Double.isFinite(above) && Double.isFinite(below)) {
            return (above - below) / (2 * step);
        }
        double here = model.applyAsDouble(at);
        return Double.isFinite(above) ? (above - here) / step : (here - below) / step;
    }

    private static double beside(ToDoubleFunction<double[]> model, double[] at, int input, double step) {
        double stays = at[input];
        at[input] = stays + step;
        double beside = model.applyAsDouble(at);
        at[input] = stays;
        return beside;
    }
}
