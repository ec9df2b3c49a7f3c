package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;

import java.util.List;

/** Valves, rockers and cam: what lash does to the events, where it may be measured, and how an adjuster answers. */
public final class ValveGear {
    private static final double CYCLE = 4 * Math.PI;
    private static final String HARMONIC = "harmonic lobe, lift·sin²(π·φ/duration): a common simplification";
    private static final String NOT_A_REAL_LOBE = "a real lobe has ramps and flanks of its own";
    private static final String SCREW = "a screw advances by its pitch in a turn";
    private static final String GEAR = "geometry of a four-stroke: the cam turns once in two turns of the crank";

    private static final Input LIFT = Input.of(
            "lift",
            "how far the valve opens at most, without lash",
            "0.05 mm",
            "30 mm",
            "no valve of such an engine opens less or further");
    private static final Input DURATION = Input.of(
            "duration",
            "the crank angle during which the lobe lifts, without lash",
            "60 deg",
            "500 deg",
            "no lobe of a four-stroke lifts shorter or longer");
    private static final Input LASH = Input.of(
            "lash",
            "the gap between rocker and valve",
            "0 mm",
            "5 mm",
            "a gap below nothing is a valve held open, and a wider one is no lash");
    private static final Input LEAD = Input.of(
            "lead",
            "how long before top dead centre the inlet valve begins to open, or after it the exhaust valve ends",
            "0 deg",
            "120 deg",
            "no cam overlaps further");
    private static final Input PITCH = Input.of(
            "pitch",
            "what the adjuster screw advances in a turn",
            "0.1 mm per turn",
            "3 mm per turn",
            "no adjuster has so fine or so coarse a thread");
    private static final Input LEVER = Input.of(
            "lever",
            "how much of the screw's way arrives at the valve: the rocker ratio for a screw on the push rod, 1 for one on the valve",
            "0.5",
            "3",
            "no rocker is so uneven");
    private static final Input TURN = Input.of(
            "turn",
            "by how much the screw was turned",
            "1 deg",
            "3600 deg",
            "a smaller turn tells nothing, and a larger one is no adjustment");
    private static final Input TEETH = Input.of(
            "number_of_teeth", "how many teeth the cam's gear has", "6", "300", "no cam gear has fewer or more");
    private static final Input RAMP = Input.of(
            "ramp", "the crank angle that is left aside for the lobe's ramps", "0 deg", "90 deg", "no ramp is longer");
    private static final Input ARM = Input.of(
            "valve_arm",
            "from the rocker's pivot to where it meets the valve",
            "1 mm",
            "200 mm",
            "no rocker is so short or so long");

    private static final Input AFTER_OPENING = Input.of(
            "after_opening",
            "the crank angle since the lobe began to lift",
            "0 deg",
            "500 deg",
            "no lobe of a four-stroke lifts longer");

    /** How far a valve is open a crank angle after its lobe began to lift. */
    public static final Mechanism LOBE_LIFT = Mechanism.called(
                    "lobe_lift",
                    "how far a valve without lash is open, a crank angle after its lobe began to lift; at overlap, with the lead")
            .takes(AFTER_OPENING, LIFT, DURATION)
            .where(AFTER_OPENING, AT_MOST, "the duration", x -> x[2], "the valve would be shut again")
            .source(HARMONIC)
            .assuming(NOT_A_REAL_LOBE)
            .example("20 deg", "2.5 mm", "260 deg")
            .gives("mm", "lift·sin²(π·φ/duration)", x -> lift(x[0], x[1], x[2]));

    /** By how much lash delays the opening of a valve. */
    public static final Mechanism EVENT_SHIFT = Mechanism.called(
                    "event_shift", "by how much lash makes a valve open later, and close earlier")
            .takes(LASH, LIFT, DURATION)
            .where(LASH, BELOW, "the lift", x -> x[1], "the valve would never open")
            .source(HARMONIC)
            .assuming(NOT_A_REAL_LOBE)
            .example("0.05 mm", "2.5 mm", "260 deg")
            .gives("deg", "duration/π·arcsin √(lash/lift)", x -> shift(x[0], x[1], x[2]));

    /** How long a valve with lash stays open. */
    public static final Mechanism OPEN_DURATION = Mechanism.called(
                    "open_duration", "the crank angle during which a valve with lash is open")
            .takes(LASH, LIFT, DURATION)
            .where(LASH, BELOW, "the lift", x -> x[1], "the valve would never open")
            .source(HARMONIC)
            .assuming(NOT_A_REAL_LOBE)
            .example("0.05 mm", "2.5 mm", "260 deg")
            .gives("deg", "duration − 2 × event_shift", x -> x[2] - 2 * shift(x[0], x[1], x[2]));

    /** The lash that is really there after it was set at the top of the wrong stroke. */
    public static final Mechanism WRONG_STROKE_LASH = Mechanism.called(
                    "wrong_stroke_lash",
                    "the lash to find at the right top after this one was set at the wrong one, where both valves stand open")
            .takes(LASH, LEAD, LIFT, DURATION)
            .where(LEAD, AT_MOST, "the duration", x -> x[3], "the valve would be shut again")
            .source(HARMONIC)
            .assuming(NOT_A_REAL_LOBE)
            .example("0.05 mm", "20 deg", "2.5 mm", "260 deg")
            .gives("mm", "lash + lift·sin²(π·lead/duration)", x -> x[0] + lift(x[1], x[2], x[3]));

    private static final Input INLET_CLOSING = Input.of(
            "inlet_closing",
            "how long after bottom dead centre the inlet valve closes",
            "0 deg",
            "150 deg",
            "an inlet valve that closes earlier or later leaves no compression stroke");
    private static final Input EXHAUST_OPENING = Input.of(
            "exhaust_opening",
            "how long before bottom dead centre the exhaust valve opens",
            "0 deg",
            "150 deg",
            "an exhaust valve that opens earlier or later leaves no power stroke");

    /** How long before the top of the compression stroke lash may be measured. */
    public static final Mechanism ARC_BEFORE_TOP = Mechanism.called(
                    "lash_arc_before_top",
                    "how far before the top of the compression stroke lash may already be measured")
            .takes(INLET_CLOSING, RAMP)
            .where(RAMP, AT_MOST, "what the closed valves leave", x -> Math.PI - x[0], "no arc would be left")
            .source(GEAR)
            .example("55 deg", "20 deg")
            .gives("deg", "180° − inlet_closing − ramp", x -> Math.PI - x[0] - x[1]);

    /** How long after the top of the compression stroke lash may be measured. */
    public static final Mechanism ARC_AFTER_TOP = Mechanism.called(
                    "lash_arc_after_top", "how far after the top of the compression stroke lash may still be measured")
            .takes(EXHAUST_OPENING, RAMP)
            .where(RAMP, AT_MOST, "what the closed valves leave", x -> Math.PI - x[0], "no arc would be left")
            .source(GEAR)
            .example("55 deg", "20 deg")
            .gives("deg", "180° − exhaust_opening − ramp", x -> Math.PI - x[0] - x[1]);

    /** What one tooth of the cam's gear is at the crank. */
    public static final Mechanism TOOTH_ANGLE = Mechanism.called(
                    "tooth_angle", "the crank angle by which a cam set one tooth wrong is off")
            .takes(TEETH)
            .source(GEAR)
            .example("30")
            .gives("deg", "720°/number_of_teeth", x -> CYCLE / x[0]);

    /** How many teeth an error of the cam amounts to. */
    public static final Mechanism TEETH_OUT = Mechanism.called(
                    "teeth_out",
                    "how many teeth an error of the cam amounts to: near a whole number other than 0, a tooth; otherwise something else")
            .takes(
                    Input.of(
                            "cam_error",
                            "the crank angle of equal lift at overlap, less the angle it should be at",
                            "-360 deg",
                            "360 deg",
                            "further off it is nearer the other way round"),
                    TEETH)
            .source(GEAR)
            .assuming("both valves have the lash that the nominal angle is meant for")
            .example("13 deg", "30")
            .gives("", "cam_error·number_of_teeth/720°", x -> x[0] * x[1] / CYCLE);

    /** The lever factor that an adjuster shows. */
    public static final Mechanism LEVER_FOUND = Mechanism.called(
                    "lever_found",
                    "how much of the screw's way really arrives at the valve; outside 0.9 to 1.6 the pitch or the side of the screw is another than was thought (common practice)")
            .takes(
                    Input.of(
                            "change",
                            "by how much the turn changed the lash",
                            "0 mm",
                            "5 mm",
                            "a wider gap is no lash"),
                    TURN,
                    PITCH)
            .source(SCREW)
            .assuming("both gaps were measured with the nut locked")
            .example("0.144 mm", "90 deg", "0.5 mm per turn")
            .gives("", "change / (pitch·turn)", x -> x[0] / (x[1] * x[2]));

    /** By how much the lash changes when the lock nut drags the screw along. */
    public static final Mechanism LOCKING_SHIFT = Mechanism.called(
                    "locking_shift",
                    "by how much the lash closes when the lock nut drags the screw along by this angle")
            .takes(
                    Input.of(
                            "drag",
                            "the angle by which the screw follows the nut, clockwise above zero",
                            "-180 deg",
                            "180 deg",
                            "a screw that turns further was not held"),
                    PITCH,
                    LEVER)
            .source(SCREW)
            .assuming("the play of the thread is taken up the same way before and after")
            .example("10 deg", "0.5 mm per turn", "1.15")
            .gives("mm", "drag·pitch·lever", x -> x[0] * x[1] * x[2]);

    /** The gap that lets a leaf in which is held at a tilt. */
    public static final Mechanism COCKED_LEAF_GAP = Mechanism.called(
                    "cocked_leaf_gap", "the gap that a leaf needs which is held at a tilt over the valve stem")
            .takes(
                    Input.of("leaf", "how thick the leaf is", "0 mm", "5 mm", "a thicker one is no leaf"),
                    Input.of("stem", "the diameter of the valve stem", "0.5 mm", "20 mm", "no valve has such a stem"),
                    Input.of("tilt", "how far the leaf is tilted", "0 deg", "30 deg", "nobody holds a leaf so"))
            .source("geometry of a stiff plate between two flats")
            .assuming("the leaf is stiff; a thin one bends and needs less")
            .example("0.05 mm", "2.5 mm", "1 deg")
            .gives("mm", "leaf·cos a + stem·sin a", x -> x[0] * Math.cos(x[2]) + x[1] * Math.sin(x[2]));

    /** The lash at the valve, from a dial elsewhere on the rocker. */
    public static final Mechanism LASH_AT_STEM = Mechanism.called(
                    "lash_at_stem", "the lash at the valve, when the dial stands elsewhere on the rocker")
            .takes(
                    LASH.called("reading", "what the dial shows while the rocker is lifted through its play"),
                    ARM,
                    ARM.called("probe_arm", "from the rocker's pivot to where the dial stands"))
            .source("geometry of a lever")
            .assuming("the angle is small, and the pivot has no play")
            .example("0.08 mm", "12 mm", "16 mm")
            .gives("mm", "reading·valve_arm/probe_arm", x -> x[0] * x[1] / x[2]);

    static final List<Mechanism> ALL = List.of(
            LOBE_LIFT,
            EVENT_SHIFT,
            OPEN_DURATION,
            WRONG_STROKE_LASH,
            ARC_BEFORE_TOP,
            ARC_AFTER_TOP,
            TOOTH_ANGLE,
            TEETH_OUT,
            LEVER_FOUND,
            LOCKING_SHIFT,
            COCKED_LEAF_GAP,
            LASH_AT_STEM);

    private ValveGear() {}

    private static double lift(double angle, double lift, double duration) {
        double sin = Math.sin(Math.PI * angle / duration);
        return lift * sin * sin;
    }

    private static double shift(double lash, double lift, double duration) {
        return duration / Math.PI * Math.asin(Math.sqrt(lash / lift));
    }
}
