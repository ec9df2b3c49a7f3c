package io.github.leafproof.inspection.quantity;

import java.util.Comparator;

/**
 * Where an error comes from: the calibration of one leaf, the display of one reading, the spread of one series.
 *
 * <p>Two values that carry the same source err together, so the error cancels in their difference. Names must therefore be
 * told apart by whoever makes them: "leaf 0.10 of set A", not "leaf".
 *
 * @param name what the error belongs to, in words a report can show
 * @param degreesOfFreedom how well the size of the error is known; infinite unless it was found by repeated readings
 */
public record Source(String name, double degreesOfFreedom) implements Comparable<Source> {
    private static final Comparator<Source> ORDER =
            Comparator.comparing(Source::name).thenComparingDouble(Source::degreesOfFreedom);

    public Source {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degrees of freedom of " + name + " must be above zero, not " + degreesOfFreedom);
        }
    }

    /** A source whose size is stated rather than found by repeating: its degrees of freedom are infinite. */
    public static Source stated(String name) {
        return new Source(name, Double.POSITIVE_INFINITY);
    }

    @Override
    public int compareTo(Source other) {
        return ORDER.compare(this, other);
    }
}
