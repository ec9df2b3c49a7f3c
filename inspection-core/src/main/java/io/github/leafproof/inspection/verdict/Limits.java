package io.github.leafproof.inspection.verdict;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;

/**
 * Between which values something has to lie, and how far beyond is still tolerated.
 *
 * <p>All four are in coherent SI units; an infinite one stands for no limit on that side. Without a tolerance the tolerated
 * limits are the limits themselves. Limits belong to the window: a value at a limit conforms.
 *
 * @param lower the lower limit aimed for, −∞ for none
 * @param upper the upper limit aimed for, +∞ for none
 * @param toleratedLower at or below {@code lower}
 * @param toleratedUpper at or above {@code upper}
 */
public record Limits(double lower, double upper, double toleratedLower, double toleratedUpper) {
    public Limits {
        // Comparisons with NaN are false, so each is put the way that refuses it.
        if (!(lower <= upper)) {
            throw new IllegalArgumentException(
                    "the lower limit " + lower + " must not lie above the upper limit " + upper);
        }
        if (lower == Double.POSITIVE_INFINITY || upper == Double.NEGATIVE_INFINITY) {
            throw new IllegalArgumentException("no value lies beyond infinity");
        }
        if (Double.isInfinite(lower) && Double.isInfinite(upper)) {
            throw new IllegalArgumentException("limits need a lower or an upper one");
        }
        if (!(toleratedLower <= lower && toleratedUpper >= upper)) {
            throw new IllegalArgumentException("what is tolerated, " + toleratedLower + " to " + toleratedUpper
                    + ", must not be narrower than what is aimed for, " + lower + " to " + upper);
        }
    }

    /** A window from one value to another. */
    public static Limits between(double lower, double upper) {
        return new Limits(lower, upper, lower, upper);
    }

    /** A window from one quantity to another. */
    public static Limits between(Quantity lower, Quantity upper) {
        same(lower.dimension(), upper.dimension());
        return between(lower.base(), upper.base());
    }

    /** A lower limit alone. */
    public static Limits atLeast(double lower) {
        return between(lower, Double.POSITIVE_INFINITY);
    }

    /** A lower limit alone. */
    public static Limits atLeast(Quantity lower) {
        return atLeast(lower.base());
    }

    /** An upper limit alone. */
    public static Limits atMost(double upper) {
        return between(Double.NEGATIVE_INFINITY, upper);
    }

    /** An upper limit alone. */
    public static Limits atMost(Quantity upper) {
        return atMost(upper.base());
    }

    /** A window of ± {@code tolerance} about a value. */
    public static Limits within(double tolerance, double of) {
        return between(of - tolerance, of + tolerance);
    }

    /** A window of ± {@code tolerance} about a quantity; about a temperature, the tolerance is a difference. */
    public static Limits within(Quantity tolerance, Quantity of) {
        same(tolerance.dimension(), of.dimension().difference());
        return within(tolerance.base(), of.base());
    }

    /** These limits with a wider window that is still tolerated; an infinite value tolerates all on that side. */
    public Limits tolerating(double toleratedLower, double toleratedUpper) {
        return new Limits(lower, upper, toleratedLower, toleratedUpper);
    }

    /** These limits with a wider window that is still tolerated. */
    public Limits tolerating(Quantity toleratedLower, Quantity toleratedUpper) {
        same(toleratedLower.dimension(), toleratedUpper.dimension());
        return tolerating(toleratedLower.base(), toleratedUpper.base());
    }

    /** The window aimed for, without the tolerance beyond it. */
    public Limits aimed() {
        return between(lower, upper);
    }

    /** The wider window as limits of its own. */
    public Limits tolerated() {
        return between(toleratedLower, toleratedUpper);
    }

    /** True when something beyond the limits is still tolerated. */
    public boolean hasTolerance() {
        return toleratedLower < lower || toleratedUpper > upper;
    }

    private static void same(Dimension a, Dimension b) {
        if (!a.equals(b)) {
            throw new IllegalArgumentException("limits cannot be made of " + a.phrase() + " and " + b.phrase());
        }
    }
}
