package io.github.leafproof.inspection.quantity;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.Optional;

/**
 * What the trials of a Monte Carlo came to (JCGM 101 clauses 7.5 to 7.7, from memory), in coherent SI units. Sums are those
 * that make up for what rounding loses; without streams, for these are slow until Java has run for a while.
 */
public final class Distribution {
    private final double[] sorted;
    private final int trials;

    private Distribution(double[] sorted, int trials) {
        this.sorted = sorted;
        this.trials = trials;
    }

    /** The values of all trials, in any order; not a number where a trial had none. */
    static Distribution of(double[] values) {
        double[] sorted = new double[values.length];
        int count = 0;
        for (double value : values) {
            if (Double.isFinite(value)) {
                sorted[count++] = value;
            }
        }
        sorted = Arrays.copyOf(sorted, count);
        Arrays.sort(sorted);
        return new Distribution(sorted, values.length);
    }

    /** How many trials were made. */
    public int trials() {
        return trials;
    }

    /** The share of trials that had no value; the other results leave them out. */
    public double shareWithoutValue() {
        return (trials - sorted.length) / (double) trials;
    }

    /** The mean of the values; not a number where no trial had one. */
    public double mean() {
        double first = sorted.length == 0 ? Double.NaN : sorted[0];
        DoubleSummaryStatistics beyond = new DoubleSummaryStatistics();
        for (double value : sorted) {
            beyond.accept(value - first);
        }
        return first + beyond.getSum() / sorted.length;
    }

    /** Their standard deviation; not a number where less than two trials had a value. */
    public double standardUncertainty() {
        double mean = mean();
        DoubleSummaryStatistics squares = new DoubleSummaryStatistics();
        for (double value : sorted) {
            squares.accept((value - mean) * (value - mean));
        }
        return sorted.length < 2 ? Double.NaN : Math.sqrt(squares.getSum() / (sorted.length - 1.0));
    }

    /** The interval that leaves as many values below as above (clause 7.7.2); empty where no trial had a value. */
    public Optional<Interval> symmetric(double probability) {
        int within = within(probability);
        return from((sorted.length - within) / 2, within);
    }

    /**
     * Where the lower end of the symmetric interval would lie after any number of trials: so many trials know it to three
     * standard deviations of the number of values that fall below it (binomial). Empty where no trial had a value.
     */
    public Optional<Interval> lowEnd(double probability) {
        return end((sorted.length - within(probability)) / 2);
    }

    /** Where the upper end of the symmetric interval would lie after any number of trials. */
    public Optional<Interval> highEnd(double probability) {
        int within = within(probability);
        return end((sorted.length - within) / 2 + within);
    }

    private Optional<Interval> end(int rank) {
        double share = rank / (double) Math.max(1, sorted.length);
        int chance = (int) Math.ceil(3 * Math.sqrt(sorted.length * share * (1 - share)));
        int first = Math.max(0, rank - chance);
        return from(first, rank + chance - first);
    }

    /** The narrowest interval (clause 7.7.2, with 5.3.4); empty where no trial had a value. */
    public Optional<Interval> shortest(double probability) {
        int within = within(probability);
        int best = 0;
        for (int start = 1; start + within < sorted.length; start++) {
            if (sorted[start + within] - sorted[start] < sorted[best + within] - sorted[best]) {
                best = start;
            }
        }
        return from(best, within);
    }

    private int within(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("a coverage probability lies between 0 and 1, not at " + probability);
        }
        return (int) (probability * sorted.length + 0.5);
    }

    private Optional<Interval> from(int start, int within) {
        int last = Math.min(sorted.length - 1, start + within);
        return sorted.length == 0 ? Optional.empty() : Optional.of(new Interval(sorted[start], sorted[last]));
    }
}
