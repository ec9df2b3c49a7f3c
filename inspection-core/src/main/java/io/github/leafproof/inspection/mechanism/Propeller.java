package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;
import static io.github.leafproof.inspection.mechanism.Inputs.AIR_DENSITY;
import static io.github.leafproof.inspection.mechanism.Inputs.DISPLACEMENT;
import static io.github.leafproof.inspection.mechanism.Inputs.SPEED;
import static io.github.leafproof.inspection.mechanism.Inputs.TEMPERATURE;

import java.util.List;

/** The propeller: what it loads the engine with, how fast its tips go, and what holds it on. */
public final class Propeller {
    private static final double TURN = 2 * Math.PI;
    private static final String LOAD = "load as diameter⁴ × pitch × speed³; common practice";
    private static final String ALIKE = "both propellers are of the same kind: blades, shape and number";
    private static final String COEFFICIENTS = "definition of the propeller's coefficients";
    private static final String FRICTION = "Coulomb friction";
    private static final String SHORT_TORQUE =
            "short form of the tightening torque, factor × force × diameter; common practice";

    private static final Input DIAMETER =
            Input.of("diameter", "the propeller's diameter", "1 in", "200 in", "no propeller is so small or so large");
    private static final Input PITCH =
            Input.of("pitch", "the propeller's pitch", "0.5 in", "200 in", "no propeller is so flat or so steep");
    private static final Input TO_DIAMETER = DIAMETER.called("to_diameter", "the other propeller's diameter");
    private static final Input TO_PITCH = PITCH.called("to_pitch", "the other propeller's pitch");
    private static final Input COEFFICIENT = Input.of(
            "power_coefficient",
            "the propeller's power coefficient, from a measurement",
            "0.001",
            "1",
            "no propeller has such a coefficient");
    private static final Input POWER =
            Input.of("power", "the power at the shaft", "0 W", "100000 W", "no engine of this kind gives more");
    private static final Input TURNING = Input.of(
            "speed",
            "the crank's speed",
            "1 rpm",
            "100000 rpm",
            "an engine that stands gives no power, and none turns faster");
    private static final Input FORCE = Input.of(
            "clamp",
            "the force with which the nut clamps the hub",
            "0 N",
            "200000 N",
            "no shaft of such an engine holds more");
    private static final Input THREAD = Input.of(
            "thread_diameter", "the diameter of the thread", "1 mm", "30 mm", "no propeller shaft has such a thread");
    private static final Input NUT_FACTOR = Input.of(
            "nut_factor",
            "the torque factor: about 0.2 for dry steel (common practice)",
            "0.05",
            "0.6",
            "no thread runs so easily or so hard");
    private static final Input TORQUE =
            Input.of("torque", "the torque", "0 N·m", "1000 N·m", "no engine of this kind gives or needs more");
    private static final Input OUTER = Input.of(
            "outer_diameter",
            "the outer diameter of the hub's clamped face",
            "2 mm",
            "300 mm",
            "no hub is so small or so large");
    private static final Input INNER =
            Input.of("inner_diameter", "the diameter of the hole in it", "0.5 mm", "100 mm", "no hub has such a hole");

    /** The load of another propeller. */
    public static final Mechanism LOAD_RATIO = Mechanism.called(
                    "propeller_load_ratio", "the load of another propeller at the same speed, over that of this one")
            .takes(DIAMETER, PITCH, TO_DIAMETER, TO_PITCH)
            .source(LOAD)
            .assuming(ALIKE)
            .example("14 in", "6 in", "15 in", "6 in")
            .gives("", "(D₂/D₁)⁴·P₂/P₁", x -> load(x[0], x[1], x[2], x[3]));

    /** The speed with another propeller. */
    public static final Mechanism SPEED_ON_OTHER = Mechanism.called(
                    "speed_on_propeller", "how fast the engine will turn another propeller")
            .takes(SPEED, DIAMETER, PITCH, TO_DIAMETER, TO_PITCH)
            .source(LOAD)
            .assuming(ALIKE, "the engine gives the same power at both speeds")
            .example("9500 rpm", "14 in", "6 in", "15 in", "6 in")
            .gives("rpm", "speed / ∛propeller_load_ratio", x -> x[0] / Math.cbrt(load(x[1], x[2], x[3], x[4])));

    /** The power a propeller takes. */
    public static final Mechanism PROPELLER_POWER = Mechanism.called(
                    "propeller_power", "the power that a propeller takes at this speed")
            .takes(COEFFICIENT, AIR_DENSITY, SPEED, DIAMETER)
            .source(COEFFICIENTS)
            .assuming("the model stands still, and the coefficient was measured standing still")
            .example("0.08", "1.2 kg/m³", "9500 rpm", "14 in")
            .gives("W", "CP·ρ·n³·D⁵", x -> x[0] * x[1] * Math.pow(x[2] / TURN, 3) * Math.pow(x[3], 5));

    /** The thrust a propeller gives. */
    public static final Mechanism PROPELLER_THRUST = Mechanism.called(
                    "propeller_thrust", "the thrust that a propeller gives at this speed")
            .takes(
                    COEFFICIENT.called("thrust_coefficient", "the propeller's thrust coefficient, from a measurement"),
                    AIR_DENSITY,
                    SPEED,
                    DIAMETER)
            .source(COEFFICIENTS)
            .assuming("the model stands still, and the coefficient was measured standing still")
            .example("0.11", "1.2 kg/m³", "9500 rpm", "14 in")
            .gives("N", "CT·ρ·n²·D⁴", x -> x[0] * x[1] * Math.pow(x[2] / TURN, 2) * Math.pow(x[3], 4));

    /** The torque at the shaft. */
    public static final Mechanism SHAFT_TORQUE = Mechanism.called("shaft_torque", "the mean torque at the shaft")
            .takes(POWER, TURNING)
            .source("definition of power")
            .example("1150 W", "9500 rpm")
            .gives("N·m", "power/ω", x -> x[0] / x[1]);

    /** The power at another speed. */
    public static final Mechanism POWER_AT_SPEED = Mechanism.called(
                    "power_at_speed", "the power that the same propeller takes at another speed")
            .takes(POWER, TURNING, SPEED.called("other_speed", "the other speed"))
            .source("cube law")
            .assuming(
                    "the coefficient does not change with speed; measured ones fall by some 12 % from a sixth of full speed to half")
            .example("1150 W", "9500 rpm", "9000 rpm")
            .gives("W", "power·(other/speed)³", x -> x[0] * Math.pow(x[2] / x[1], 3));

    /** The power of each millilitre. */
    public static final Mechanism SPECIFIC_POWER = Mechanism.called(
                    "specific_power",
                    "the power that each millilitre of displacement gives; 0.103 hp per mL is an owners' rule (common practice)")
            .takes(POWER, DISPLACEMENT)
            .source("definition")
            .example("1150 W", "14.95 mL")
            .gives("W/mL", "power/displacement", x -> x[0] / x[1]);

    /** How fast the tips go. */
    public static final Mechanism TIP_SPEED = Mechanism.called("tip_speed", "how fast the propeller's tips go")
            .takes(DIAMETER, SPEED)
            .source("the way round a circle")
            .assuming("the model stands still")
            .example("14 in", "9500 rpm")
            .gives("m/s", "π·diameter·n", x -> x[0] / 2 * x[1]);

    /** The tips' speed over that of sound. */
    public static final Mechanism TIP_MACH = Mechanism.called("tip_mach", "the speed of the tips, over that of sound")
            .takes(DIAMETER, SPEED, TEMPERATURE)
            .source("definition; speed_of_sound")
            .assuming("the model stands still, and the air is dry")
            .example("14 in", "9500 rpm", "20 °C")
            .gives("", "tip_speed/speed_of_sound", x -> x[0] / 2 * x[1] / Math.sqrt(1.4 * Air.GAS_CONSTANT * x[2]));

    /** The highest speed a supplier allows. */
    public static final Mechanism HIGHEST_SPEED = Mechanism.called(
                    "highest_propeller_speed", "the highest speed that a propeller's supplier allows for this diameter")
            .takes(
                    Input.of(
                            "rating",
                            "the supplier's product of speed and diameter, such as 165 000 rpm·in",
                            "1000 rpm·in",
                            "1000000 rpm·in",
                            "no supplier states so little or so much"),
                    DIAMETER)
            .source("the supplier's rating; common practice")
            .example("165000 rpm·in", "14 in")
            .gives("rpm", "rating/diameter", x -> x[0] / x[1]);

    /** The clamping force a hub needs. */
    public static final Mechanism HUB_CLAMP = Mechanism.called(
                    "hub_clamp", "the force that must clamp the hub so that friction alone carries a torque")
            .takes(
                    TORQUE,
                    Input.of(
                            "friction",
                            "the coefficient of friction between hub and drive washer: about 0.4 on serrations (common practice)",
                            "0.02",
                            "2",
                            "no pair of faces is so slippery or so rough"),
                    Input.of(
                            "hub_radius",
                            "the mean radius of the clamped face",
                            "1 mm",
                            "150 mm",
                            "no hub is so small or so large"))
            .source(FRICTION)
            .assuming("serrations that bite are not counted, nor the friction under the nut")
            .example("14 N·m", "0.4", "9 mm")
            .gives("kN", "torque/(friction·hub_radius)", x -> x[0] / (x[1] * x[2]));

    /** The torque that the nut needs. */
    public static final Mechanism NUT_TORQUE = Mechanism.called(
                    "nut_torque", "the torque at the nut that clamps with a force")
            .takes(NUT_FACTOR, FORCE, THREAD)
            .source(SHORT_TORQUE)
            .assuming("real threads scatter by a third and more")
            .example("0.2", "3900 N", "8 mm")
            .gives("N·m", "nut_factor·clamp·thread_diameter", x -> x[0] * x[1] * x[2]);

    /** The force with which a nut clamps. */
    public static final Mechanism CLAMP_OF_NUT = Mechanism.called(
                    "clamp_of_nut", "the force with which a screw or nut clamps that was tightened with a torque")
            .takes(TORQUE, NUT_FACTOR, THREAD)
            .source(SHORT_TORQUE)
            .assuming("real threads scatter by a third and more")
            .example("6.2 N·m", "0.2", "8 mm")
            .gives("kN", "torque/(nut_factor·thread_diameter)", x -> x[0] / (x[1] * x[2]));

    /** The pressure in the hub. */
    public static final Mechanism HUB_PRESSURE = Mechanism.called(
                    "hub_pressure",
                    "the pressure between the hub's faces; wood crushes from some 8 MPa across the grain (from memory)")
            .takes(FORCE, OUTER, INNER)
            .where(INNER, BELOW, "the outer diameter", x -> x[1], "no face would be left")
            .source("definition of pressure")
            .assuming("the whole ring carries evenly")
            .example("3900 N", "24 mm", "8 mm")
            .gives(
                    "MPa",
                    "clamp/(π/4·(outer_diameter² − inner_diameter²))",
                    x -> x[0] / (Math.PI / 4 * (x[1] - x[2]) * (x[1] + x[2])));

    /** How far apart the tips track. */
    public static final Mechanism TIP_TRACK = Mechanism.called(
                    "tip_track", "how far apart the tips pass, from a shaft that is bent")
            .takes(
                    Input.of(
                            "bend",
                            "how far the shaft runs out over that length",
                            "0 mm",
                            "5 mm",
                            "a shaft bent further is seen by eye"),
                    Input.of(
                            "bent_length",
                            "the length over which it does",
                            "1 mm",
                            "200 mm",
                            "no propeller shaft is so short or so long"),
                    DIAMETER)
            .source("geometry of similar triangles")
            .assuming("the hub's faces are square to the shaft, and the blades are alike")
            .example("0.1 mm", "30 mm", "356 mm")
            .gives("mm", "bend/bent_length·diameter", x -> x[0] / x[1] * x[2]);

    static final List<Mechanism> ALL = List.of(
            LOAD_RATIO,
            SPEED_ON_OTHER,
            PROPELLER_POWER,
            PROPELLER_THRUST,
            SHAFT_TORQUE,
            POWER_AT_SPEED,
            SPECIFIC_POWER,
            TIP_SPEED,
            TIP_MACH,
            HIGHEST_SPEED,
            HUB_CLAMP,
            NUT_TORQUE,
            CLAMP_OF_NUT,
            HUB_PRESSURE,
            TIP_TRACK);

    private Propeller() {}

    private static double load(double d, double p, double toD, double toP) {
        return Math.pow(toD / d, 4) * toP / p;
    }
}
