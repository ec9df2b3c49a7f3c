package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;

/**
 * How a thickness that somebody is to look for is shown: rounded towards the inside of its range, never out of it. A leaf
 * that has to measure 0.098 36 mm at most must not be sought at 0.0984 mm.
 */
final class Inward {
    /** What the last bits of a calculation may make of a round number. */
    private static final double NOISE = 1e-6;

    private final Unit unit;
    private final int digits;

    private Inward(Unit unit, int digits) {
        this.unit = unit;
        this.digits = digits;
    }

    /** Rounding to the second digit of this length, as large as the ones to be shown. */
    static Inward toSecondDigitOf(double metres, double typical, UnitSystem system) {
        Unit unit = system.unitFor(Dimension.LENGTH, typical);
        int exponent = (int) Math.floor(Math.log10(unit.differenceFromBase(metres)));
        return new Inward(unit, 1 - exponent);
    }

    /** A thickness not to fall short of. */
    String atLeast(double metres) {
        return shown(Math.ceil(steps(metres) - NOISE));
    }

    /** A thickness not to exceed. */
    String atMost(double metres) {
        return shown(Math.floor(steps(metres) + NOISE));
    }

    private double steps(double metres) {
        return unit.fromBase(metres) * Math.pow(10, digits);
    }

    private String shown(double steps) {
        return Display.number(steps / Math.pow(10, digits), digits) + " " + unit;
    }
}
