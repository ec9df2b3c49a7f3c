package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Inputs.BORE;
import static io.github.leafproof.inspection.mechanism.Inputs.DISPLACEMENT;
import static io.github.leafproof.inspection.mechanism.Inputs.PRESSURE;
import static io.github.leafproof.inspection.mechanism.Inputs.RATIO;
import static io.github.leafproof.inspection.mechanism.Inputs.ROD;
import static io.github.leafproof.inspection.mechanism.Inputs.STROKE;

import java.util.List;

/** What the cylinder holds: its volume, how much it is squeezed, and how much oil may be put into it. */
public final class Cylinder {
    private static final String DEFINITION = "definition";

    private static final Input CHAMBER = Input.of(
            "chamber",
            "the volume left above the piston at its top, as a burette fills it",
            "0.001 mL",
            "10000 mL",
            "no chamber of such an engine holds so much or so little");
    private static final Input PRINTED =
            DISPLACEMENT.called("printed_displacement", "the displacement that is printed on the engine or its papers");
    private static final Input CLOSING = Input.of(
            "inlet_closing",
            "how long after bottom dead centre the inlet valve closes",
            "0 deg",
            "150 deg",
            "an inlet valve that closes earlier or later leaves no compression stroke");
    private static final Input THICKNESS = Input.of(
            "gasket",
            "by how much the gasket is thicker than before; below zero for thinner",
            "-10 mm",
            "10 mm",
            "no head gasket is so thick");
    private static final Input SHARE = Input.of(
            "share",
            "the share of the chamber that may hold oil",
            "0 %",
            "100 %",
            "liquid does not yield: more than the chamber breaks the rod");
    private static final Input EXPONENT = Input.of(
            "exponent",
            "the exponent of compression: 1 without any heating, 1.4 without any heat lost; common practice 1.2 at cranking speed",
            "1",
            "1.4",
            "a cold cylinder gains no heat while it compresses");
    private static final Input GAS_PRESSURE = Input.of(
            "gas_pressure",
            "the pressure in the cylinder above that of the air around",
            "0 bar",
            "300 bar",
            "no head holds more");

    /** The volume that the piston sweeps. */
    public static final Mechanism DISPLACEMENT_OF = Mechanism.called(
                    "displacement_of", "the volume that the piston sweeps")
            .takes(BORE, STROKE)
            .source(DEFINITION)
            .example("27.7 mm", "24.8 mm")
            .gives("mL", "π/4·bore²·stroke", x -> Math.PI / 4 * x[0] * x[0] * x[1]);

    /** By how much a displacement differs from the printed one. */
    public static final Mechanism DISPLACEMENT_DIFFERENCE = Mechanism.called(
                    "displacement_difference",
                    "by how much the displacement differs from the printed one, as a share of that; below zero when the engine is smaller")
            .takes(DISPLACEMENT, PRINTED)
            .source(DEFINITION)
            .example("6.42 mL", "7 mL")
            .gives("%", "displacement/printed_displacement − 1", x -> x[0] / x[1] - 1);

    /** The compression ratio. */
    public static final Mechanism COMPRESSION_RATIO = Mechanism.called(
                    "compression_ratio_of", "the compression ratio, by volumes")
            .takes(DISPLACEMENT, CHAMBER)
            .source(DEFINITION)
            .example("14.95 mL", "1.87 mL")
            .gives("", "(displacement + chamber) / chamber", x -> (x[0] + x[1]) / x[1]);

    /** The volume left above the piston at its top. */
    public static final Mechanism CHAMBER_OF = Mechanism.called(
                    "chamber_of", "the volume left above the piston at its top")
            .takes(DISPLACEMENT, RATIO)
            .source("the definition of the ratio, turned round")
            .example("14.95 mL", "9")
            .gives("mL", "displacement / (ratio − 1)", x -> x[0] / (x[1] - 1));

    /** The ratio that a thicker or thinner gasket leaves. */
    public static final Mechanism RATIO_WITH_GASKET = Mechanism.called(
                    "ratio_with_gasket", "the compression ratio that a thicker or thinner gasket leaves")
            .takes(STROKE, RATIO, THICKNESS)
            .where(
                    THICKNESS,
                    ABOVE,
                    "minus the height of the chamber",
                    x -> -x[0] / (x[1] - 1),
                    "no chamber would be left")
            .source("the definition of the ratio; the bore falls out")
            .assuming("the gasket's hole is as wide as the bore")
            .example("27.5 mm", "9", "0.2 mm")
            .gives("", "1 + stroke / (stroke/(ratio − 1) + gasket)", x -> 1 + x[0] / (x[0] / (x[1] - 1) + x[2]));

    /** The part of the stroke that is left to compress once the inlet valve has closed. */
    public static final Mechanism TRAPPED_STROKE = Mechanism.called(
                    "trapped_stroke", "the part of the stroke that is left to compress once the inlet valve has closed")
            .takes(CLOSING, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[1] / 2, "the crank could not turn")
            .source("plane geometry of crank, rod and piston")
            .assuming(
                    "the cylinder's axis crosses the crank's axis",
                    "the valve seals from the angle at which it is said to close")
            .example("55 deg", "24.8 mm", "42 mm")
            .gives("", "piston_travel(180° − closing) / stroke", x -> trapped(x[0], x[1], x[2]));

    /** The compression ratio from the closing of the inlet valve. */
    public static final Mechanism EFFECTIVE_RATIO = Mechanism.called(
                    "effective_ratio", "the compression ratio that counts: from the closing of the inlet valve")
            .takes(RATIO, CLOSING, STROKE, ROD)
            .where(ROD, ABOVE, "half the stroke", x -> x[2] / 2, "the crank could not turn")
            .source("definition; plane geometry of crank, rod and piston")
            .assuming(
                    "the cylinder's axis crosses the crank's axis",
                    "the valve seals from the angle at which it is said to close")
            .example("9", "55 deg", "24.8 mm", "42 mm")
            .gives("", "1 + trapped_stroke·(ratio − 1)", x -> 1 + trapped(x[1], x[2], x[3]) * (x[0] - 1));

    /** How much oil the cylinder may be given. */
    public static final Mechanism OIL_DOSE = Mechanism.called(
                    "oil_dose", "how much oil may be put into the cylinder at most, so that it cannot lock")
            .takes(CHAMBER, SHARE)
            .source("liquid does not yield; the share is the user's, 30 % is common practice")
            .assuming("the cylinder was empty, the plug is out, and the crank is turned slowly by hand")
            .example("1.87 mL", "30 %")
            .gives("mL", "share × chamber", x -> x[0] * x[1]);

    /** The pressure that a gauge shows at cranking speed. */
    public static final Mechanism CRANKING_PRESSURE = Mechanism.called(
                    "cranking_pressure",
                    "the pressure that a gauge in the plug hole shows at cranking speed, above that of the air around")
            .takes(
                    RATIO.called("effective_ratio", "the compression ratio from the closing of the inlet valve"),
                    PRESSURE,
                    EXPONENT)
            .source("polytropic compression")
            .assuming(
                    "nothing leaks, and the cylinder fills with air of the pressure around", "the gauge adds no volume")
            .example("7.7", "101.325 kPa", "1.2")
            .gives("bar", "p·ratio^n − p", x -> x[1] * (Math.pow(x[0], x[2]) - 1));

    /** The force of the gas on the piston. */
    public static final Mechanism GAS_FORCE = Mechanism.called(
                    "gas_force", "the force of the gas on the piston, and on the head")
            .takes(GAS_PRESSURE, BORE)
            .source("definition of pressure")
            .assuming("the pressure reaches the whole bore")
            .example("55 bar", "27.7 mm")
            .gives("kN", "pressure·π/4·bore²", x -> x[0] * Math.PI / 4 * x[1] * x[1]);

    static final List<Mechanism> ALL = List.of(
            DISPLACEMENT_OF,
            DISPLACEMENT_DIFFERENCE,
            COMPRESSION_RATIO,
            CHAMBER_OF,
            RATIO_WITH_GASKET,
            TRAPPED_STROKE,
            EFFECTIVE_RATIO,
            OIL_DOSE,
            CRANKING_PRESSURE,
            GAS_FORCE);

    private Cylinder() {}

    private static double trapped(double closing, double stroke, double rod) {
        return CrankSlider.travel(Math.PI - closing, stroke / 2, rod) / stroke;
    }
}
