package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;
import static io.github.leafproof.inspection.mechanism.Inputs.CRANK_ANGLE;
import static io.github.leafproof.inspection.mechanism.Inputs.ROD;
import static io.github.leafproof.inspection.mechanism.Inputs.SPEED;
import static io.github.leafproof.inspection.mechanism.Inputs.STROKE;

import java.util.List;

/** Crank, rod and piston: where the piston is, how fast it goes, and how the top of its way is found. */
public final class CrankSlider {
    private static final String GEOMETRY = "plane geometry of crank, rod and piston";
    private static final String ON_AXIS = "the cylinder's axis crosses the crank's axis, and nothing has play";
    private static final String STEADY = "the crank turns evenly";
    private static final String NO_TURN = "the crank could not turn";

    private static final Input TRAVEL = Input.of(
            "travel",
            "how far the piston stands below its top",
            "0 mm",
            "2000 mm",
            "the piston goes no higher than its top");
    private static final Input READING_ERROR = Input.of(
            "reading_error",
            "how far off the dial may be",
            "0 mm",
            "1 mm",
            "a dial that far off tells nothing about a crank angle");
    private static final Input AT = Input.of(
            "crank_angle",
            "the crank's angle from top dead centre",
            "0.1 deg",
            "179.9 deg",
            "at the very top and bottom the piston stands still, and no dial tells the angle");
    private static final Input ONE_WAY = Input.of(
            "first_reading",
            "the wheel's reading with the piston against the stop, one way round",
            "-720 deg",
            "720 deg",
            "a wheel has one turn");
    private static final Input OTHER_WAY =
            ONE_WAY.called("second_reading", "the wheel's reading against the stop, the other way round");

    /** How far the piston has come down from top dead centre. */
    public static final Mechanism PISTON_TRAVEL = withRod(
                    "piston_travel", "how far the piston has come down from top dead centre")
            .takes(CRANK_ANGLE, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, NO_TURN)
            .example("40 deg", "24.8 mm", "42 mm")
            .gives(
                    "mm",
                    "r + l − r·cos θ − √(l² − r²·sin² θ), r = stroke/2, l = rod",
                    x -> travel(x[0], x[1] / 2, x[2]));

    /** The crank angle at which the piston stands so far below its top. */
    public static final Mechanism CRANK_ANGLE_AT = withRod(
                    "crank_angle_at",
                    "the crank angle, before or after top dead centre, at which the piston stands so far below its top")
            .takes(TRAVEL, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, NO_TURN)
            .where(TRAVEL, AT_MOST, "the stroke", x -> x[1], "the piston would be below its bottom")
            .example("2.91 mm", "24.8 mm", "42 mm")
            .gives(
                    "deg",
                    "arccos (((r + l − x)² + r² − l²) / (2·r·(r + l − x))), x = travel",
                    x -> angle(x[0], x[1] / 2, x[2]));

    /** How fast the piston goes at a crank angle. */
    public static final Mechanism PISTON_SPEED = withRod(
                    "piston_speed", "how fast the piston goes at a crank angle; above zero on its way down")
            .takes(CRANK_ANGLE, STROKE, ROD, SPEED)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, NO_TURN)
            .assuming(STEADY)
            .example("76 deg", "24.8 mm", "42 mm", "9500 rpm")
            .gives(
                    "m/s",
                    "ω·(r·sin θ + r²·sin θ·cos θ / √(l² − r²·sin² θ))",
                    x -> x[3] * travelPerAngle(x[0], x[1] / 2, x[2]));

    /** The piston's acceleration at a crank angle. */
    public static final Mechanism PISTON_ACCELERATION = withRod(
                    "piston_acceleration", "the piston's acceleration at a crank angle; above zero away from the head")
            .takes(CRANK_ANGLE, STROKE, ROD, SPEED)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, NO_TURN)
            .assuming(STEADY)
            .example("0 deg", "24.8 mm", "42 mm", "9500 rpm")
            .gives(
                    "m/s²",
                    "ω²·(r·cos θ + r²·(l²·cos 2θ + r²·sin⁴ θ) / (l² − r²·sin² θ)^(3/2))",
                    x -> x[3] * x[3] * accelerationPerSpeedSquared(x[0], x[1] / 2, x[2]));

    /** The piston's mean speed. */
    public static final Mechanism MEAN_PISTON_SPEED = Mechanism.called(
                    "mean_piston_speed", "the piston's mean speed, up and down")
            .takes(STROKE, SPEED)
            .source("two strokes in each turn")
            .example("24.8 mm", "9500 rpm")
            .gives("m/s", "2·stroke·n", x -> x[0] * x[1] / Math.PI);

    /** Where top dead centre is on a degree wheel, by a piston stop. */
    public static final Mechanism TOP_BY_STOP = Mechanism.called(
                    "top_by_stop",
                    "where top dead centre is on the degree wheel: midway between the two readings against a piston stop")
            .takes(ONE_WAY, OTHER_WAY)
            .source("the piston's way is the same before and after the top; common practice")
            .assuming(
                    "the stop does not give way, and the crank is turned gently",
                    "the wheel's hand is not moved between the readings, and the readings are counted the same way round")
            .example("-38.5 deg", "42.5 deg")
            .gives("deg", "(first_reading + second_reading)/2", x -> (x[0] + x[1]) / 2);

    /** The crank angle during which the piston stays within a small travel of its top. */
    public static final Mechanism DWELL_ANGLE = withRod(
                    "dwell_angle",
                    "the crank angle, before and after the top together, within which the piston moves by no more than this: what a dial that"
                            + " tells no less cannot tell apart")
            .takes(TRAVEL, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, NO_TURN)
            .where(TRAVEL, AT_MOST, "the stroke", x -> x[1], "the piston would be below its bottom")
            .example("0.01 mm", "24.8 mm", "42 mm")
            .gives("deg", "2 × crank_angle_at", x -> 2 * angle(x[0], x[1] / 2, x[2]));

    /** How far off a crank angle is that a dial on the piston tells. */
    public static final Mechanism DIAL_ANGLE_ERROR = withRod(
                    "dial_angle_error",
                    "how far off a crank angle is that is found by a dial on the piston; large near the top, which is why the"
                            + " top is found by a stop")
            .takes(READING_ERROR, AT, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[2] / 2, NO_TURN)
            .where(
                    READING_ERROR,
                    BELOW,
                    "the travel there",
                    x -> travel(x[1], x[2] / 2, x[3]),
                    "the dial could not tell it from the top at all")
            .example("0.01 mm", "40 deg", "24.8 mm", "42 mm")
            .gives(
                    "deg",
                    "reading_error / (r·sin θ + r²·sin θ·cos θ / √(l² − r²·sin² θ))",
                    x -> x[0] / travelPerAngle(x[1], x[2] / 2, x[3]));

    static final List<Mechanism> ALL = List.of(
            PISTON_TRAVEL,
            CRANK_ANGLE_AT,
            PISTON_SPEED,
            PISTON_ACCELERATION,
            MEAN_PISTON_SPEED,
            TOP_BY_STOP,
            DWELL_ANGLE,
            DIAL_ANGLE_ERROR);

    private CrankSlider() {}

    private static Mechanism.Draft withRod(String name, String meaning) {
        return Mechanism.called(name, meaning).source(GEOMETRY).assuming(ON_AXIS);
    }

    // Versines, so that the difference of nearly equal lengths near the top loses no digits.
    static double travel(double angle, double r, double l) {
        double half = Math.sin(angle / 2);
        double across = r * Math.sin(angle);
        return 2 * r * half * half + across * across / (l + Math.sqrt(l * l - across * across));
    }

    private static double angle(double x, double r, double l) {
        double down = r + l - x;
        // 1 − cos θ, without the difference of two nearly equal numbers.
        double versine = x * (2 * l - x) / (2 * r * down);
        return versine >= 0 && versine <= 2 + 1e-12 ? 2 * Math.asin(Math.sqrt(Math.min(1, versine / 2))) : Double.NaN;
    }

    private static double travelPerAngle(double angle, double r, double l) {
        double across = r * Math.sin(angle);
        return across + across * r * Math.cos(angle) / Math.sqrt(l * l - across * across);
    }

    private static double accelerationPerSpeedSquared(double angle, double r, double l) {
        double sin = Math.sin(angle);
        double left = l * l - r * r * sin * sin;
        return r * Math.cos(angle)
                + r * r * (l * l * Math.cos(2 * angle) + r * r * sin * sin * sin * sin) / (left * Math.sqrt(left));
    }
}
