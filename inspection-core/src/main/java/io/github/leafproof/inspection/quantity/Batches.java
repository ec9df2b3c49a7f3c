package io.github.leafproof.inspection.quantity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Trials of a Monte Carlo in batches, and how still their results stand (JCGM 101 clause 7.9, from memory). */
final class Batches {
    private static final double FIFTH = 0.2;

    private final List<double[]> values = new ArrayList<>();
    private final List<Results> each = new ArrayList<>();

    /** What one batch came to; its ends are no numbers where no trial had a value. */
    private record Results(double mean, double u, double low, double high) {
        static Results of(Distribution batch) {
            Optional<Interval> interval = batch.symmetric(MonteCarlo.PROBABILITY);
            return new Results(
                    batch.mean(),
                    batch.standardUncertainty(),
                    interval.map(Interval::low).orElse(Double.NaN),
                    interval.map(Interval::high).orElse(Double.NaN));
        }
    }

    /** Takes a batch, and sorts it where it lies: sorted batches are soon put together. */
    void add(double[] batch) {
        Arrays.sort(batch);
        values.add(batch);
        each.add(Results.of(Distribution.of(batch)));
    }

    int trials() {
        return values.stream().mapToInt(batch -> batch.length).sum();
    }

    Distribution together() {
        double[] all = new double[trials()];
        int filled = 0;
        for (double[] batch : values) {
            System.arraycopy(batch, 0, all, filled, batch.length);
            filled += batch.length;
        }
        return Distribution.of(all);
    }

    /**
     * Whether two standard deviations of each result's average are within a fifth of the tolerance: that of u, or of what
     * the first batch shows where u is zero.
     */
    boolean standStill(double u) {
        if (each.size() < 2) {
            return false;
        }
        double tolerance = MonteCarlo.tolerance(u > 0 ? u : each.get(0).u());
        return stands(Results::mean, tolerance)
                && stands(Results::u, tolerance)
                && stands(Results::low, tolerance)
                && stands(Results::high, tolerance);
    }

    private boolean stands(ToDoubleFunction<Results> result, double tolerance) {
        double n = each.size();
        double[] results = each.stream().mapToDouble(result).toArray();
        double mean = Arrays.stream(results).average().orElseThrow();
        double squares =
                Arrays.stream(results).map(r -> (r - mean) * (r - mean)).sum();
        return 2 * Math.sqrt(squares / (n * (n - 1))) <= tolerance * FIFTH;
    }
}
