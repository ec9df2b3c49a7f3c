package io.github.leafproof.inspection.quantity;

/**
 * How well a gauge or an instrument is known, in one of the three ways people state it.
 *
 * <p>Which way was meant changes the number by a factor of up to two, so each is written out and none is assumed. An
 * uncertainty is an interval: {@code 1 °C} is understood as {@code 1 K}.
 */
public sealed interface Uncertainty {
    /**
     * Limits ±a: every value within is as likely as another, so that u = a/√3 (JCGM 100 clause 4.3.7, clause from memory).
     *
     * @throws QuantityException unless a is above zero
     */
    static Uncertainty limits(Quantity a) {
        return new PlusMinus(a.asDifference());
    }

    /**
     * A standard uncertainty, as it is.
     *
     * @throws QuantityException unless u is above zero
     */
    static Uncertainty standard(Quantity u) {
        return new Standard(u.asDifference());
    }

    /**
     * An expanded uncertainty U with its coverage factor k: u = U/k.
     *
     * @throws QuantityException unless both are above zero
     */
    static Uncertainty expanded(Quantity expanded, double k) {
        return new Expanded(expanded.asDifference(), k);
    }

    /**
     * What a display adds that shows steps of d: d/√12, in coherent SI units (JCGM 100 clause F.2.2.1, from memory).
     *
     * @throws QuantityException unless d is above zero
     */
    static double ofResolution(Quantity d) {
        return positive(d.asDifference(), "a resolution").base() / Math.sqrt(12);
    }

    /** The standard uncertainty in coherent SI units (kelvins for a temperature); always above zero. */
    double standard();

    /** What the uncertainty is an amount of; temperature difference for a thermometer's. */
    Dimension dimension();

    /** The law of errors that this way of stating it stands for (JCGM 101 clause 6.4, from memory). */
    default Source.Shape shape() {
        return Source.Shape.NORMAL;
    }

    /** The statement in words, with the standard uncertainty that follows from it. */
    String words();

    /** Limits of ±{@code halfWidth}. */
    record PlusMinus(Quantity halfWidth) implements Uncertainty {
        public PlusMinus {
            positive(halfWidth, "a limit of error");
        }

        @Override
        public double standard() {
            return halfWidth.base() / Math.sqrt(3);
        }

        @Override
        public Dimension dimension() {
            return halfWidth.dimension();
        }

        @Override
        public Source.Shape shape() {
            return Source.Shape.RECTANGULAR;
        }

        @Override
        public String words() {
            return "±" + halfWidth + " (limits, so u = " + shown(standard(), halfWidth.unit()) + ")";
        }
    }

    /** A standard uncertainty {@code u}. */
    record Standard(Quantity u) implements Uncertainty {
        public Standard {
            positive(u, "a standard uncertainty");
        }

        @Override
        public double standard() {
            return u.base();
        }

        @Override
        public Dimension dimension() {
            return u.dimension();
        }

        @Override
        public String words() {
            return "u " + u + " (standard uncertainty)";
        }
    }

    /** An expanded uncertainty {@code expanded} with coverage factor {@code k}. */
    record Expanded(Quantity expanded, double k) implements Uncertainty {
        public Expanded {
            positive(expanded, "an expanded uncertainty");
            if (!(k > 0) || Double.isInfinite(k)) {
                throw new QuantityException(
                        "a coverage factor k of " + k + " makes no sense", "k is a number above zero, mostly 2");
            }
        }

        @Override
        public double standard() {
            return expanded.base() / k;
        }

        @Override
        public Dimension dimension() {
            return expanded.dimension();
        }

        @Override
        public String words() {
            return "U " + expanded + " (expanded with k " + Display.shortest(k) + ", so u = "
                    + shown(standard(), expanded.unit()) + ")";
        }
    }

    private static String shown(double u, Unit unit) {
        return Display.amount(Display.significant(unit.differenceFromBase(u), 2), unit);
    }

    private static Quantity positive(Quantity amount, String what) {
        if (!(amount.base() > 0)) {
            throw new QuantityException(
                    what + " of " + amount + " makes no sense", "give an amount above zero; nothing is known exactly");
        }
        return amount;
    }
}
