package io.github.leafproof.inspection.quantity;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * Where an error comes from: the calibration of one leaf, the display of one reading, the spread of one series.
 *
 * <p>Two values that carry the same source err together, so the error cancels in their difference. Names must therefore be
 * told apart by whoever makes them: "leaf 0.10 of set A", not "leaf".
 *
 * @param name what the error belongs to, in words a report can show
 * @param degreesOfFreedom how well the size of the error is known; infinite unless it was found by repeated readings
 * @param shape which errors are how likely
 */
public record Source(String name, double degreesOfFreedom, Shape shape) implements Comparable<Source> {
    private static final Comparator<Source> ORDER = Comparator.comparing(Source::name)
            .thenComparingDouble(Source::degreesOfFreedom)
            .thenComparing(Source::shape);

    /** The law that an error follows (JCGM 101 clause 6.4, from memory). */
    public enum Shape {
        /** Nothing beyond the limits, and anything within them as likely as another: stated limits, the last digit shown. */
        RECTANGULAR,
        /**
         * The normal law: a stated standard or expanded uncertainty. Where the size of the error was itself found with
         * finite degrees of freedom, it stands for Student's t with as many.
         */
        NORMAL
    }

    public Source {
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degrees of freedom of " + name + " must be above zero, not " + degreesOfFreedom);
        }
    }

    /** A source that follows the normal law or, with finite degrees of freedom, Student's t. */
    public Source(String name, double degreesOfFreedom) {
        this(name, degreesOfFreedom, Shape.NORMAL);
    }

    /** A source whose size is stated rather than found by repeating: its degrees of freedom are infinite. */
    public static Source stated(String name) {
        return new Source(name, Double.POSITIVE_INFINITY);
    }

    /** A source of which only limits are known: any error within them is as likely as another. */
    public static Source withinLimits(String name) {
        return stated(name).shaped(Shape.RECTANGULAR);
    }

    /** The same source with another law. */
    Source shaped(Shape other) {
        return new Source(name, degreesOfFreedom, other);
    }

    @Override
    public int compareTo(Source other) {
        return ORDER.compare(this, other);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Source source
                        && name.equals(source.name)
                        && Double.compare(degreesOfFreedom, source.degreesOfFreedom) == 0
                        && shape == source.shape);
    }

    /** Names tell sources apart, and a text remembers its own. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }
}
