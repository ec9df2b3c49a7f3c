package io.github.leafproof.inspection.quantity;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Estimates on numbered lines, each wiped and written again: the arithmetic of {@link Estimate} without an object for every
 * result, for whoever calculates very much. Every number comes out as it does there, to the last bit, for the same operations
 * are done in the same order. Dimensions are the caller's business.
 *
 * <p>Each operation tells whether there is a result; where there is none, {@link Estimate} refuses, and what the line holds means
 * nothing. A slate belongs to one thread. What it needs it keeps, so that after a while it needs nothing more.
 */
public final class Slate {

    private static final Errors.Key[] NO_KEYS = {};
    private static final double[] NO_AMOUNTS = {};

    private final double[] values;
    private final int[] counts;
    private final Errors.Key[][] keys;
    private final double[][] amounts;
    private double[][] rows = {};

    /** A slate of so many lines. */
    public Slate(int lines) {
        this.values = new double[lines];
        this.counts = new int[lines];
        this.keys = new Errors.Key[lines][];
        this.amounts = new double[lines][];
        Arrays.fill(keys, NO_KEYS);
        Arrays.fill(amounts, NO_AMOUNTS);
    }

    /** How many lines it has. */
    public int lines() {
        return values.length;
    }

    /** Writes an estimate. */
    public void write(int line, Estimate estimate) {
        write(line, estimate.value(), estimate);
    }

    /** Writes a value, as uncertain as an estimate. */
    public void write(int line, double value, Estimate asUncertain) {
        values[line] = value;
        Errors errors = asUncertain.errors();
        room(line, errors.size());
        counts[line] = errors.copyTo(keys[line], amounts[line]);
    }

    /** Writes an exact value. */
    public void write(int line, double value) {
        values[line] = value;
        counts[line] = 0;
    }

    private void room(int line, int most) {
        if (keys[line].length < most) {
            keys[line] = new Errors.Key[most];
            amounts[line] = new double[most];
        }
    }

    /** The value on a line. */
    public double value(int line) {
        return values[line];
    }

    /** Whether nothing about it is uncertain. */
    public boolean isExact(int line) {
        return counts[line] == 0;
    }

    /** Its standard uncertainty. */
    public double standardUncertainty(int line) {
        return Errors.standard(amounts[line], counts[line]);
    }

    /** The effective degrees of freedom of that. */
    public double degreesOfFreedom(int line) {
        return Errors.degreesOfFreedom(keys[line], amounts[line], counts[line]);
    }

    /** The sum of two other lines. */
    public boolean plus(int into, int a, int b) {
        return combined(into, values[a] + values[b], 1, a, 1, b);
    }

    /** The difference of two other lines. */
    public boolean minus(int into, int a, int b) {
        return combined(into, values[a] - values[b], 1, a, -1, b);
    }

    /** The product of two other lines. */
    public boolean times(int into, int a, int b) {
        return combined(into, values[a] * values[b], values[b], a, values[a], b);
    }

    /** The quotient of two other lines; there is none by zero. */
    public boolean dividedBy(int into, int a, int b) {
        double by = values[b];
        return by != 0 && combined(into, values[a] / by, 1 / by, a, -values[a] / by / by, b);
    }

    /** The opposite of another line. */
    public boolean negated(int into, int a) {
        return scaled(into, -values[a], -1, a);
    }

    /** A whole power of another line. */
    public boolean power(int into, int a, int exponent) {
        double base = values[a];
        if (base == 0 && exponent < 0) {
            return false;
        }
        double slope = exponent == 0 ? 0 : exponent * Math.pow(base, exponent - 1.0);
        return scaled(into, Math.pow(base, exponent), slope, a);
    }

    /** The square root of another line; of an uncertain one only above zero. */
    public boolean sqrt(int into, int a) {
        double of = values[a];
        if (of < 0 || (of == 0 && !isExact(a))) {
            return false;
        }
        return scaled(into, Math.sqrt(of), of == 0 ? 0 : 0.5 / Math.sqrt(of), a);
    }

    /** The same as another line. */
    public void copy(int into, int a) {
        copied(into, a);
    }

    /** Another line without its sign. */
    public boolean absolute(int into, int a) {
        return values[a] < 0 ? negated(into, a) : copied(into, a);
    }

    /** The sine of another line. */
    public boolean sin(int into, int a) {
        return scaled(into, Math.sin(values[a]), Math.cos(values[a]), a);
    }

    /** The cosine of another line. */
    public boolean cos(int into, int a) {
        return scaled(into, Math.cos(values[a]), -Math.sin(values[a]), a);
    }

    /** The smaller of two other lines; of two equal ones, the less certain. */
    public boolean min(int into, int a, int b) {
        return chosen(into, a, b, Double.compare(values[a], values[b]));
    }

    /** The larger of two other lines; of two equal ones, the less certain. */
    public boolean max(int into, int a, int b) {
        return chosen(into, a, b, Double.compare(values[b], values[a]));
    }

    /**
     * What a model makes of other lines: how far each moves it is found by trying.
     *
     * @param model the function, of values in coherent SI units; not a number where it has none
     * @param given the lines, in the model's order
     * @param spare one more line to calculate on
     */
    public boolean through(int into, ToDoubleFunction<double[]> model, int[] given, int spare) {
        double[] at = values(given);
        counts[into] = 0;
        for (int i = 0; i < given.length; i++) {
            if (!isExact(given[i])) {
                double slope = Slope.of(model, at, i, standardUncertainty(given[i]));
                if (!combined(spare, 0, 1, into, slope, given[i])) {
                    return false;
                }
                copied(into, spare);
            }
        }
        values[into] = model.applyAsDouble(at);
        return Double.isFinite(values[into]);
    }

    /** The values on some lines, in a row that is used again for as many the next time. */
    public double[] values(int... lines) {
        if (rows.length <= lines.length) {
            rows = Arrays.copyOf(rows, lines.length + 1);
        }
        double[] row = rows[lines.length];
        if (row == null) {
            row = new double[lines.length];
            rows[lines.length] = row;
        }
        for (int i = 0; i < lines.length; i++) {
            row[i] = values[lines[i]];
        }
        return row;
    }

    private boolean chosen(int into, int a, int b, int order) {
        boolean first = order == 0 ? standardUncertainty(a) >= standardUncertainty(b) : order < 0;
        return copied(into, first ? a : b);
    }

    private boolean copied(int into, int a) {
        values[into] = values[a];
        room(into, counts[a]);
        System.arraycopy(keys[a], 0, keys[into], 0, counts[a]);
        System.arraycopy(amounts[a], 0, amounts[into], 0, counts[a]);
        counts[into] = counts[a];
        return true;
    }

    private boolean scaled(int into, double value, double factor, int a) {
        room(into, counts[a]);
        int count = Errors.combined(
                factor, keys[a], amounts[a], counts[a], 0, NO_KEYS, NO_AMOUNTS, 0, keys[into], amounts[into]);
        return written(into, value, count);
    }

    private boolean combined(int into, double value, double slope, int a, double other, int b) {
        room(into, counts[a] + counts[b]);
        int count = Errors.combined(
                slope,
                keys[a],
                amounts[a],
                counts[a],
                other,
                keys[b],
                amounts[b],
                counts[b],
                keys[into],
                amounts[into]);
        return written(into, value, count);
    }

    private boolean written(int into, double value, int count) {
        values[into] = value;
        counts[into] = Math.max(0, count);
        return count >= 0 && Double.isFinite(value);
    }
}
