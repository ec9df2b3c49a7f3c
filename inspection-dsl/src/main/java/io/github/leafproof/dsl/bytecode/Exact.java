package io.github.leafproof.dsl.bytecode;

/** Numbers without uncertainty against limits; an infinite limit stands for none. */
final class Exact {

    // As in Conformity: differences of decimals miss the last few bits.
    private static final double SLACK = 1e-12;

    private Exact() {}

    static int within(double y, double low, double high, double wideLow, double wideHigh) {
        if (keeps(y, low, high)) {
            return Truth.PASSES;
        }
        return keeps(y, wideLow, wideHigh) ? Truth.TOLERATED : Truth.FAILS;
    }

    /** A number that is at a limit, to the last bits of a calculation, lies beyond it. */
    static int strictlyWithin(double y, double low, double high, double wideLow, double wideHigh) {
        if (strictlyKeeps(y, low, high)) {
            return Truth.PASSES;
        }
        return strictlyKeeps(y, wideLow, wideHigh) ? Truth.TOLERATED : Truth.FAILS;
    }

    /** Whether two numbers are the same, to the last bits of a calculation. */
    static int same(double one, double other, boolean same) {
        return Truth.certain(keeps(one, other, other) == same);
    }

    static double absolute(double number) {
        return number < 0 ? -number : number;
    }

    static double tangent(double angle) {
        return Math.sin(angle) / Math.cos(angle);
    }

    static boolean keeps(double y, double low, double high) {
        return !(y < low - slack(y, low)) && !(y > high + slack(y, high));
    }

    static boolean strictlyKeeps(double y, double low, double high) {
        boolean above = low == Double.NEGATIVE_INFINITY || y > low + slack(y, low);
        boolean below = high == Double.POSITIVE_INFINITY || y < high - slack(y, high);
        return above && below;
    }

    private static double slack(double y, double limit) {
        return Double.isInfinite(limit) ? 0 : SLACK * Math.max(Math.abs(y), Math.abs(limit));
    }
}
