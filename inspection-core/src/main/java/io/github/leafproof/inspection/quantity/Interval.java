package io.github.leafproof.inspection.quantity;

/**
 * Where a value lies with a stated probability.
 *
 * @param low its lower end, in coherent SI units
 * @param high its upper end, no lower
 */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval does not go from " + low + " to " + high);
        }
    }

    /** How wide it is. */
    public double width() {
        return high - low;
    }
}
