package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;

/**
 * How far to turn the lash adjuster, and what that should make of the gap.
 *
 * @param turn an angle; above zero it turns the screw in, which closes the gap
 * @param predictedGap the gap to expect after exactly that turn: as uncertain as the gap before it, the pitch and the lever
 *     make it, and before anything the lock nut does
 * @param direction which way to turn
 */
public record LashAdjustment(Estimate turn, Estimate predictedGap, Direction direction) {
    private static final double RADIANS_PER_TURN = 2 * Math.PI;
    private static final double DEGREES_PER_TURN = 360;
    private static final double CLOCK_MINUTES_PER_TURN = 60;

    /** Which way an adjuster with the usual right-hand thread goes. */
    public enum Direction {
        /** Clockwise: the gap closes. */
        IN,
        /** Anticlockwise: the gap opens. */
        OUT,
        /** The gap is where it should be. */
        NONE
    }

    /** What the adjuster screw bears on, which decides how much of its travel arrives at the valve. */
    public enum Bearing {
        PUSH_ROD,
        VALVE;

        /** The lever factor: the rocker ratio when the screw bears on the push rod, one when it bears on the valve. */
        public Estimate leverFactor(Estimate rockerRatio) {
            return this == PUSH_ROD ? rockerRatio : Estimate.exact(1, Dimension.RATIO);
        }
    }

    /**
     * The turn that brings a gap to where it is wanted: (gap − target) / (pitch × lever factor).
     *
     * @param gap the gap now, a length
     * @param target the gap wanted, a length
     * @param pitch what the adjuster advances in a turn, a length per turn above zero
     * @param leverFactor how much of that arrives at the valve, a ratio above zero: {@link Bearing#leverFactor}
     */
    public static LashAdjustment of(Estimate gap, Estimate target, Estimate pitch, Estimate leverFactor) {
        require(gap, Dimension.LENGTH, "the gap");
        require(target, Dimension.LENGTH, "the gap wanted");
        requireAboveZero(pitch, Dimension.LENGTH_PER_TURN, "the adjuster's pitch");
        requireAboveZero(leverFactor, Dimension.RATIO, "the lever factor");
        Estimate travel = pitch.times(leverFactor);
        Estimate turn = gap.minus(target).dividedBy(travel);
        // The screw is turned by a number, not by an uncertain amount: what is not known of the gap stays unknown.
        Estimate turned = Estimate.exact(turn.value(), Dimension.ANGLE);
        return new LashAdjustment(turn, gap.minus(turned.times(travel)), directionOf(turn.value()));
    }

    private static Direction directionOf(double turn) {
        if (turn == 0) {
            return Direction.NONE;
        }
        return turn > 0 ? Direction.IN : Direction.OUT;
    }

    /** How far to turn, in turns; never below zero. */
    public double turns() {
        return Math.abs(turn.value()) / RADIANS_PER_TURN;
    }

    /** How far to turn, in degrees; never below zero. */
    public double degrees() {
        return turns() * DEGREES_PER_TURN;
    }

    /** How far to turn, as a clock's minute hand goes: 60 to the turn. Never below zero. */
    public double clockMinutes() {
        return turns() * CLOCK_MINUTES_PER_TURN;
    }

    /** The adjustment as advice for the bench, with what to expect of it. */
    public String words(UnitSystem system) {
        if (direction == Direction.NONE) {
            return "Leave the adjuster as it is.";
        }
        String way = direction == Direction.IN
                ? "Turn the adjuster in (clockwise; this closes the gap)"
                : "Turn the adjuster out (anticlockwise; this opens the gap)";
        return way + " by " + Display.number(turns(), 3) + " turn, that is " + number(degrees()) + "° or "
                + number(clockMinutes()) + " minutes on a clock face" + uncertainty() + ". That should make it "
                + Display.withUncertainty(predictedGap, system)
                + ". Lock the nut, then measure again: locking can move it.";
    }

    private String uncertainty() {
        double u = turn.standardUncertainty() / RADIANS_PER_TURN * DEGREES_PER_TURN;
        return u == 0 ? "" : " (u " + number(u) + "°)";
    }

    private static String number(double value) {
        return Display.number(value, value < 10 ? 1 : 0);
    }

    private static void requireAboveZero(Estimate estimate, Dimension dimension, String what) {
        require(estimate, dimension, what);
        if (estimate.value() <= 0) {
            throw new IllegalArgumentException(what + " must be above zero, not " + estimate);
        }
    }

    private static void require(Estimate estimate, Dimension dimension, String what) {
        if (!estimate.dimension().equals(dimension)) {
            throw new IllegalArgumentException(what + " must be a " + dimension + ", not a " + estimate.dimension());
        }
    }
}
