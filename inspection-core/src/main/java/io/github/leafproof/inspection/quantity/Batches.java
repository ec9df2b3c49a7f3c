package io.github.leafproof.inspection.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Trials of a Monte Carlo in batches, and how still their results stand (JCGM 101 clause 7.9, from memory). */
final class Batches {
    private static final double FIFTH = 0.2;

    private final List<double[]> values = new ArrayList<>();
    private final List<Distribution> each = new ArrayList<>();

    private static double end(Distribution one, ToDoubleFunction<Interval> end) {
        return one.symmetric(MonteCarlo.PROBABILITY)
                .map(interval -> end.applyAsDouble(interval))
                .orElse(Double.NaN);
    }

    void add(double[] batch) {
        values.add(batch);
        each.add(Distribution.of(batch));
    }

    int trials() {
        return values.stream().mapToInt(batch -> batch.length).sum();
    }

    Distribution together() {
        return Distribution.of(values.stream().flatMapToDouble(Arrays::stream).toArray());
    }

    /**
     * Whether two standard deviations of each result's average are within a fifth of the tolerance: that of u, or of what
     * the first batch shows where u is zero.
     */
    boolean standStill(double u) {
        if (each.size() < 2) {
            return false;
        }
        double tolerance = MonteCarlo.tolerance(u > 0 ? u : each.get(0).standardUncertainty());
        return stands(Distribution::mean, tolerance)
                && stands(Distribution::standardUncertainty, tolerance)
                && stands(one -> end(one, Interval::low), tolerance)
                && stands(one -> end(one, Interval::high), tolerance);
    }

    private boolean stands(ToDoubleFunction<Distribution> result, double tolerance) {
        double n = each.size();
        double[] results = each.stream().mapToDouble(result).toArray();
        double mean = Arrays.stream(results).average().orElseThrow();
        double squares =
                Arrays.stream(results).map(r -> (r - mean) * (r - mean)).sum();
        return 2 * Math.sqrt(squares / (n * (n - 1))) <= tolerance * FIFTH;
    }
}
