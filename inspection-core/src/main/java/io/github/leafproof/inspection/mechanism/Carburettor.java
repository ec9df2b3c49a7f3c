package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_LEAST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Inputs.AIR_DENSITY;

import java.util.List;

/** Throttle and needles: how far they are open, and by how much to turn them. */
public final class Carburettor {
    private static final String CIRCLES = "geometry of two circles (the circular lens)";
    private static final String SCREW = "a screw advances by its pitch in a turn";
    private static final String FLOW = "flow goes as the square root of pressure over density; common practice";
    private static final String LINEAR_NEEDLE = "the needle passes fuel as it is turned out from its seat, evenly";
    private static final String ENGINE = "no carburettor of such an engine has such a size";

    private static final Input BARREL_BORE = Input.of(
            "barrel_bore",
            "the diameter of the hole through the throttle barrel, and of the passage",
            "0.5 mm",
            "60 mm",
            ENGINE);
    private static final Input BARREL = BARREL_BORE.called("barrel", "the outer diameter of the barrel");
    private static final Input PIN = Input.of("pin", "the thickest pin that passes the gap", "0 mm", "60 mm", ENGINE);
    private static final Input DIAMETER =
            Input.of("first_diameter", "the diameter of one circle", "0.1 mm", "1000 mm", ENGINE);
    private static final Input AREA = Input.of("area", "the opening wanted", "0 mm²", "3000 mm²", ENGINE);
    private static final Input PITCH = Input.of(
            "pitch",
            "what the needle advances in a turn",
            "0.1 mm per turn",
            "3 mm per turn",
            "no needle has so fine or so coarse a thread");
    private static final Input TURNS = Input.of(
            "needle",
            "how far the needle is turned out from its seat",
            "0 turns",
            "12 turns",
            "a needle further out has left its thread");
    private static final Input DEPTH = Input.of(
            "depth",
            "how deep the needle stands below the face it is read from; below zero where it stands proud",
            "-20 mm",
            "20 mm",
            "no needle stands further in or out");
    private static final Input ARM = Input.of(
            "arm_fitted",
            "how thick the throttle arm is that is fitted",
            "0 mm",
            "20 mm",
            "no throttle arm is so thick");
    private static final Input THEN =
            AIR_DENSITY.called("density_then", "the density of the air when the needle was set");
    private static final Input NOW = AIR_DENSITY.called("density_now", "the density of the air now");

    /** The area that two circles share. */
    public static final Mechanism CIRCLE_OVERLAP = Mechanism.called(
                    "circle_overlap", "the area that two round openings leave free where one lies over the other")
            .takes(
                    DIAMETER,
                    DIAMETER.called("second_diameter", "the diameter of the other"),
                    Input.of("distance", "from centre to centre", "0 mm", "2000 mm", ENGINE))
            .source(CIRCLES)
            .example("9 mm", "9 mm", "8.2 mm")
            .gives(
                    "mm²",
                    "r²·arccos((d² + r² − s²)/(2dr)) + s²·arccos((d² + s² − r²)/(2ds)) − d·h",
                    x -> Lens.area(x[0] / 2, x[1] / 2, x[2]));

    /** How much of the throttle a pin tells to be open. */
    public static final Mechanism AREA_BY_PIN = Mechanism.called(
                    "throttle_area_by_pin",
                    "how much of the passage is open when this pin just passes the gap of the throttle")
            .takes(BARREL_BORE, PIN)
            .where(PIN, AT_MOST, "the bore", x -> x[0], "it would be thicker than the fully open throttle")
            .source(CIRCLES)
            .assuming("barrel and passage have the same bore, and the pin passes in the middle of the gap")
            .example("9 mm", "0.8 mm")
            .gives("mm²", "circle_overlap(bore, bore, bore − pin)", x -> Lens.area(x[0] / 2, x[0] / 2, x[0] - x[1]));

    /** The share of the full passage that a pin tells to be open. */
    public static final Mechanism SHARE_BY_PIN = Mechanism.called(
                    "throttle_share_by_pin", "the share of the passage that is open when this pin just passes the gap")
            .takes(BARREL_BORE, PIN)
            .where(PIN, AT_MOST, "the bore", x -> x[0], "it would be thicker than the fully open throttle")
            .source(CIRCLES)
            .assuming("barrel and passage have the same bore, and the pin passes in the middle of the gap")
            .example("9 mm", "0.8 mm")
            .gives(
                    "%",
                    "throttle_area_by_pin / (π/4·bore²)", x -> Lens.area(x[0] / 2, x[0] / 2, x[0] - x[1]) / full(x[0]));

    /** How much of the throttle is open at an angle of the barrel. */
    public static final Mechanism AREA_BY_ANGLE = Mechanism.called(
                    "throttle_area_by_angle",
                    "how much of the passage is open when the barrel is turned by an angle from fully open")
            .takes(
                    BARREL_BORE,
                    BARREL,
                    Input.of(
                            "closing",
                            "how far the barrel is turned from fully open",
                            "0 deg",
                            "90 deg",
                            "a barrel is shut before it has turned so far"))
            .where(BARREL, AT_LEAST, "the bore", x -> x[0], "the hole would not fit into it")
            .source(CIRCLES)
            .assuming("seen along the passage; that the turned hole looks a little narrower is left out")
            .example("9 mm", "13 mm", "30 deg")
            .gives(
                    "mm²",
                    "circle_overlap(bore, bore, barrel/2·sin a)",
                    x -> Lens.area(x[0] / 2, x[0] / 2, x[1] / 2 * Math.sin(x[2])));

    /** The pin that tells a wanted opening. */
    public static final Mechanism PIN_FOR_AREA = Mechanism.called(
                    "pin_for_area", "the thickest pin that passes when so much of the passage is open")
            .takes(BARREL_BORE, AREA)
            .where(AREA, AT_MOST, "the whole passage", x -> full(x[0]), "the throttle would be more than open")
            .source(CIRCLES + ", turned round by halving")
            .assuming("barrel and passage have the same bore")
            .example("9 mm", "2.78 mm²")
            .gives("mm", "throttle_area_by_pin, turned round", x -> x[1] < 0 ? Double.NaN : Lens.width(x[0] / 2, x[1]));

    /** By how much to turn the stop screw for another idle opening. */
    public static final Mechanism STOP_SCREW_TURNS = Mechanism.called(
                    "stop_screw_turns",
                    "how far to turn the throttle's stop screw so that another pin just passes; above zero opens")
            .takes(
                    PIN.called("pin_now", "the thickest pin that passes now"),
                    PIN.called("pin_wanted", "the thickest pin that shall pass"),
                    PITCH.called(
                            "opening_per_turn",
                            "by how much a turn of the screw opens the gap, found once by two positions"))
            .source("measured at two positions of the screw; common practice")
            .assuming("the gap opens evenly")
            .example("1.2 mm", "0.9 mm", "0.35 mm per turn")
            .gives("turn", "(pin_wanted − pin_now)/opening_per_turn", x -> (x[1] - x[0]) / x[2]);

    /** How many turns a depth is. */
    public static final Mechanism DATUM_TURNS = Mechanism.called(
                    "datum_turns", "how many turns of the needle a depth is")
            .takes(DEPTH, PITCH)
            .source(SCREW)
            .example("1.5 mm", "0.5 mm per turn")
            .gives("turn", "depth/pitch", x -> x[0] / x[1]);

    /** By how many turns the datum of another throttle arm is off. */
    public static final Mechanism DATUM_SHIFT = Mechanism.called(
                    "datum_shift",
                    "by how many turns a needle is set wrong when the face of another throttle arm was taken than is meant")
            .takes(ARM, ARM.called("arm_meant", "how thick the throttle arm is that the instructions speak of"), PITCH)
            .source(SCREW)
            .assuming("both arms lie on the same face")
            .example("3 mm", "1.5 mm", "0.5 mm per turn")
            .gives("turn", "(arm_fitted − arm_meant)/pitch", x -> (x[0] - x[1]) / x[2]);

    /** How far depth and turns of a needle contradict each other. */
    public static final Mechanism NEEDLE_DISAGREEMENT = Mechanism.called(
                    "needle_disagreement",
                    "how far the depth of a needle and its turns contradict each other; near zero when the face and the pitch are the right ones")
            .takes(
                    DEPTH.called(
                            "depth_seated", "how deep it stands, from the same face, when gently screwed to its seat"),
                    DEPTH,
                    TURNS,
                    PITCH)
            .source(SCREW)
            .example("1.5 mm", "0.25 mm", "2 turns", "0.5 mm per turn")
            .gives("mm", "depth_seated − depth − needle·pitch", x -> x[0] - x[1] - x[2] * x[3]);

    private static final Input SEAT =
            Input.of("seat", "the diameter of the jet that the needle closes", "0.1 mm", "10 mm", ENGINE);
    private static final Input TAPER = Input.of(
            "taper",
            "the angle between the two sides of the needle's point",
            "0.5 deg",
            "120 deg",
            "no needle is so slender or so blunt");
    private static final Input OUT = Input.of(
            "needle_lift",
            "how far the needle stands out of its seat",
            "0 mm",
            "20 mm",
            "a needle further out has left its jet");

    /** What a needle leaves free of its jet. */
    public static final Mechanism NEEDLE_AREA = Mechanism.called(
                    "needle_area",
                    "the area that a needle leaves free of its jet: the least ring between cone and edge")
            .takes(SEAT, TAPER, OUT)
            .where(OUT, AT_MOST, "where the point leaves the jet", x -> x[0] / Math.sin(x[1]), "the jet would be free")
            .source("geometry of a cone and a sharp edge, as for a conical valve on its seat")
            .assuming("the cone touches the jet's edge when shut, and its point is sharp")
            .example("1.2 mm", "10 deg", "1 mm")
            .gives("mm²", "π·h·sin a·(seat − h·sin a·cos a), a = taper/2", x -> ring(x[0], x[1] / 2, x[2]));

    /** The turns that pass a different flow. */
    public static final Mechanism TURNS_FOR_FLOW = Mechanism.called(
                    "turns_for_flow", "how far out the needle passes so many times the flow")
            .takes(
                    TURNS,
                    Input.of(
                            "flow_ratio",
                            "the flow wanted, over the flow now",
                            "0.2",
                            "5",
                            "so far from its place no needle flows evenly"))
            .source("proportion; common practice")
            .assuming(LINEAR_NEEDLE)
            .example("2 turns", "1.21")
            .gives("turn", "needle·flow_ratio", x -> x[0] * x[1]);

    /** By how much a needle left alone is richer in other air. */
    public static final Mechanism MIXTURE_SHIFT = Mechanism.called(
                    "mixture_shift",
                    "by how much the mixture is richer in other air when nobody touches the needle; below zero when leaner")
            .takes(THEN, NOW)
            .source(FLOW)
            .assuming("the engine draws the same volume of air, and the suction at the jet goes with its density")
            .example("1.2 kg/m³", "1.08 kg/m³")
            .gives("%", "√(density_then/density_now) − 1", x -> Math.sqrt(x[0] / x[1]) - 1);

    /** Where the needle belongs in other air. */
    public static final Mechanism TURNS_FOR_WEATHER = Mechanism.called(
                    "turns_for_weather", "how far out the needle gives the same mixture in other air")
            .takes(TURNS, THEN, NOW)
            .source(FLOW)
            .assuming(
                    LINEAR_NEEDLE,
                    "the engine draws the same volume of air, and the suction at the jet goes with its density")
            .example("2 turns", "1.2 kg/m³", "1.08 kg/m³")
            .gives("turn", "needle·√(density_now/density_then)", x -> x[0] * Math.sqrt(x[2] / x[1]));

    static final List<Mechanism> ALL = List.of(
            CIRCLE_OVERLAP,
            AREA_BY_PIN,
            SHARE_BY_PIN,
            AREA_BY_ANGLE,
            PIN_FOR_AREA,
            STOP_SCREW_TURNS,
            DATUM_TURNS,
            DATUM_SHIFT,
            NEEDLE_DISAGREEMENT,
            NEEDLE_AREA,
            TURNS_FOR_FLOW,
            MIXTURE_SHIFT,
            TURNS_FOR_WEATHER);

    private Carburettor() {}

    private static double full(double bore) {
        return Math.PI / 4 * bore * bore;
    }

    private static double ring(double seat, double half, double out) {
        return Math.PI * out * Math.sin(half) * (seat - out * Math.sin(half) * Math.cos(half));
    }
}
