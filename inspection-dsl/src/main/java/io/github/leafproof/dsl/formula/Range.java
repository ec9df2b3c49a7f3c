package io.github.leafproof.dsl.formula;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The numbers from one to another, in coherent SI units, ends included; an infinite end stands for none. What is computed
 * from ranges holds every number that can be computed from numbers in them (interval arithmetic), up to rounding.
 */
public record Range(double low, double high) {

    /** Any number. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Any number but a negative one. */
    public static final Range FROM_ZERO = new Range(0, Double.POSITIVE_INFINITY);

    public Range {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a range cannot run from " + low + " to " + high);
        }
    }

    /** This number alone. */
    public static Range at(double number) {
        return new Range(number, number);
    }

    /** Whether a number lies in it. */
    public boolean holds(double number) {
        return low <= number && number <= high;
    }

    /** The numbers of both and those between. */
    public Range with(Range other) {
        return new Range(Math.min(low, other.low), Math.max(high, other.high));
    }

    /** The sums. */
    public Range plus(Range other) {
        return spanning(low + other.low, high + other.high);
    }

    /** The products. */
    public Range times(Range other) {
        return spanning(low * other.low, low * other.high, high * other.low, high * other.high);
    }

    /** Turned about zero. */
    public Range negated() {
        return new Range(-high, -low);
    }

    /** One divided by these. */
    public Range inverted() {
        return holds(0) ? ANY : new Range(1 / high, 1 / low);
    }

    /** Without signs. */
    public Range absolute() {
        return holds(0) ? new Range(0, Math.max(-low, high)) : low > 0 ? this : negated();
    }

    /** Multiplied by itself; a negative exponent divides. */
    public Range power(int exponent) {
        if (exponent < 0) {
            return power(-exponent).inverted();
        }
        Range even = exponent % 2 == 0 ? absolute() : this;
        return exponent == 0 ? at(1) : even.rising(number -> Math.pow(number, exponent));
    }

    /** The square roots, where there are any. */
    public Range root() {
        return high < 0 ? ANY : new Range(Math.max(0, low), high).rising(Math::sqrt);
    }

    /** The smallest of numbers from these. */
    public static Range least(List<Range> all) {
        return all.stream()
                .reduce((a, b) -> new Range(Math.min(a.low, b.low), Math.min(a.high, b.high)))
                .orElse(ANY);
    }

    /** The largest of numbers from these. */
    public static Range greatest(List<Range> all) {
        return least(all.stream().map(Range::negated).toList()).negated();
    }

    private Range rising(DoubleUnaryOperator law) {
        return spanning(law.applyAsDouble(low), law.applyAsDouble(high));
    }

    /** From the least to the greatest of these; nothing is known of what infinity less infinity may be. */
    private static Range spanning(double... ends) {
        double low = ends[0];
        double high = ends[0];
        for (double end : ends) {
            low = Math.min(low, end);
            high = Math.max(high, end);
        }
        return Double.isNaN(low) ? ANY : new Range(low, high);
    }
}
