package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Inputs.FUEL_DENSITY;
import static io.github.leafproof.inspection.mechanism.Inputs.TIME;

import java.util.List;

/** From tank to jet: leaks, priming, and what the tank's height does to the mixture. */
public final class FuelPath {
    private static final String COLUMN = "a column of liquid: density × gravity × height";
    private static final String ROOT = "flow goes as the square root of pressure; common practice";
    private static final String WALL = "the tube is as wide as its bore throughout, and does not give";

    private static final Input TUBE =
            Input.of("tube", "the bore of the tube", "0.2 mm", "30 mm", "no fuel tube is so narrow or so wide");
    private static final Input FALL =
            Input.of("fall", "by how much the column moved", "0 mm", "2000 mm", "no bench holds a longer tube");
    private static final Input HEAD = Input.of(
            "head",
            "the pressure that the tank's height adds at the jet; below zero for a tank below it",
            "-5000 Pa",
            "5000 Pa",
            "no tank stands half a metre off");
    private static final Input SUCTION = Input.of(
            "suction",
            "the pressure with which the engine draws at the jet; 75 to 100 mm of water was quoted",
            "50 Pa",
            "20000 Pa",
            "no jet of such an engine is drawn so little or so hard");
    private static final Input LENGTH = FALL.called("length", "how long the tube is");

    /** What a falling column leaks. */
    public static final Mechanism LEAK_RATE = Mechanism.called(
                    "leak_rate", "how much fuel leaks, by a column that falls in the tube")
            .takes(TUBE, FALL, TIME)
            .source("volume of a cylinder")
            .assuming(WALL, "the needle is shut, or the tank level with the jet: otherwise it is no leak but a siphon")
            .example("2.4 mm", "10 mm", "1 min")
            .gives("mL/min", "π/4·tube²·fall/time", x -> area(x[0]) * x[1] / x[2]);

    /** What a tube holds. */
    public static final Mechanism LINE_VOLUME = Mechanism.called("line_volume", "how much fuel a tube holds")
            .takes(TUBE, LENGTH)
            .source("volume of a cylinder")
            .assuming(WALL)
            .example("2.4 mm", "200 mm")
            .gives("mL", "π/4·tube²·length", x -> area(x[0]) * x[1]);

    /** How many intake strokes bring the fuel. */
    public static final Mechanism PRIME_STROKES = Mechanism.called(
                    "prime_strokes", "how many choked intake strokes bring the fuel to the carburettor")
            .takes(
                    Input.of("line_content", "what tube and filter hold", "0 mL", "100 mL", "no fuel line holds more"),
                    Input.of(
                            "draw",
                            "what one choked intake stroke draws, learnt from a sound engine",
                            "0.01 mL",
                            "50 mL",
                            "no such engine draws so little or so much"))
            .source("proportion; common practice")
            .assuming("the line was empty, and each stroke draws as much")
            .example("0.9 mL", "0.25 mL")
            .gives("", "line_content/draw", x -> x[0] / x[1]);

    /** How many intake strokes so many flips are. */
    public static final Mechanism INTAKE_STROKES = Mechanism.called(
                    "intake_strokes",
                    "how many intake strokes a number of flips are: a four-stroke draws once in two turns")
            .takes(
                    Input.of(
                            "number_of_flips",
                            "how often the propeller was flipped",
                            "0",
                            "1000",
                            "nobody flips so often"),
                    Input.of(
                            "angle_per_flip",
                            "how far each flip turned the crank",
                            "10 deg",
                            "1440 deg",
                            "no hand turns it less or further"))
            .source("one intake stroke in each two turns of a four-stroke")
            .example("8", "360 deg")
            .gives("", "number_of_flips·angle_per_flip/720°", x -> x[0] * x[1] / (4 * Math.PI));

    /** The pressure of a height of fuel. */
    public static final Mechanism FUEL_HEAD = Mechanism.called(
                    "fuel_head", "the pressure that a height of fuel adds; below zero for a tank below the jet")
            .takes(
                    FUEL_DENSITY,
                    Input.of(
                            "height",
                            "how far the fuel stands above the jet; below zero for below",
                            "-500 mm",
                            "500 mm",
                            "no tank stands further off"))
            .source(COLUMN)
            .example("860 kg/m³", "25 mm")
            .gives("mmH2O", "density·g·height", x -> x[0] * Air.GRAVITY * x[1]);

    /** What the tank's height does to the flow. */
    public static final Mechanism FLOW_WITH_HEAD = Mechanism.called(
                    "flow_with_head", "the flow with this head, over the flow of a tank level with the jet")
            .takes(HEAD, SUCTION)
            .where(HEAD, ABOVE, "minus the suction", x -> -x[1], "no fuel would come at all")
            .source(ROOT)
            .assuming("the needle is not touched, and the suction stays what it is")
            .example("211 Pa", "883 Pa")
            .gives("", "√(1 + head/suction)", x -> Math.sqrt(1 + x[0] / x[1]));

    /** What a nose-up attitude takes from the suction. */
    public static final Mechanism NOSE_UP_HEAD = Mechanism.called(
                    "nose_up_head",
                    "what the engine must lift when the nose points up: to be met by silencer pressure, or to be taken off the suction")
            .takes(
                    FUEL_DENSITY,
                    Input.of(
                            "distance",
                            "from the fuel in the tank forward to the jet",
                            "0 mm",
                            "1000 mm",
                            "no model carries its tank further back"),
                    Input.of("nose_up", "how far the nose points up", "-90 deg", "90 deg", "straight up is 90°"))
            .source(COLUMN)
            .example("860 kg/m³", "100 mm", "90 deg")
            .gives("mmH2O", "density·g·distance·sin a", x -> x[0] * Air.GRAVITY * x[1] * Math.sin(x[2]));

    private static final Input DEPTH = Input.of(
            "tank_depth",
            "how deep the tank is, from full to empty",
            "1 mm",
            "500 mm",
            "no tank of a model is so flat or so deep");

    /** How much the mixture changes from full to empty. */
    public static final Mechanism TANK_SWING = Mechanism.called(
                    "tank_swing",
                    "by how much the flow falls from a full tank to an empty one whose middle is level with the jet, as a share of the flow at the middle")
            .takes(FUEL_DENSITY, DEPTH, SUCTION)
            .where(
                    DEPTH,
                    Bound.Side.BELOW,
                    "twice the height that the suction lifts",
                    x -> 2 * x[2] / (x[0] * Air.GRAVITY),
                    "no fuel would come at the end")
            .source(ROOT)
            .assuming("the tank feels no pressure from the silencer")
            .example("860 kg/m³", "50 mm", "883 Pa")
            .gives(
                    "%",
                    "√(1 + h/suction) − √(1 − h/suction), h = density·g·depth/2",
                    x -> swing(x[0] * Air.GRAVITY * x[1] / 2 / x[2]));

    static final List<Mechanism> ALL = List.of(
            LEAK_RATE, LINE_VOLUME, PRIME_STROKES, INTAKE_STROKES, FUEL_HEAD, FLOW_WITH_HEAD, NOSE_UP_HEAD, TANK_SWING);

    private FuelPath() {}

    private static double area(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    private static double swing(double head) {
        return Math.sqrt(1 + head) - Math.sqrt(1 - head);
    }
}
