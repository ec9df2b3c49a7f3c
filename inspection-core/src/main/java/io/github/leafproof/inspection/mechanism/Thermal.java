package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;
import static io.github.leafproof.inspection.mechanism.Inputs.EXPANSION;
import static io.github.leafproof.inspection.mechanism.Inputs.PART;
import static io.github.leafproof.inspection.mechanism.Inputs.TIME;
import static io.github.leafproof.inspection.mechanism.Inputs.WARMING;

import java.util.List;

/** Heat: what it does to lash, and how long to wait until it is gone. */
public final class Thermal {
    private static final String LINEAR = "linear expansion; coefficients are the user's, from a handbook";
    private static final String EVEN = "each part is as warm throughout as its temperature says";
    private static final String NEWTON = "Newton's law of cooling; common practice";
    private static final String STILL = "still air that itself stays as warm as it is";

    private static final Input EXCESS = Input.of(
            "excess",
            "how much warmer the metal is than the shop",
            "0.01 K",
            "500 K",
            "metal as cold as the shop has nothing to lose, and none gets hotter");
    private static final Input ALLOWED = EXCESS.called("allowed_excess", "how much warmer it may still be");
    private static final Input LATER = EXCESS.called("later_excess", "how much warmer it was after that time");
    private static final Input CONSTANT = TIME.called(
            "time_constant",
            "the time in which the excess falls to 37 % of itself; 8 to 15 minutes in still air is common practice, cooling_constant finds it");

    /** By how much a part grows when it is warmed. */
    public static final Mechanism GROWTH = Mechanism.called(
                    "thermal_growth", "by how much a part grows when it is warmed")
            .takes(EXPANSION, PART, WARMING)
            .source(LINEAR)
            .assuming(EVEN)
            .example("0.0000236 per K", "20 mm", "100 K")
            .gives("mm", "expansion·length·warming", x -> x[0] * x[1] * x[2]);

    /** By how much lash opens because cylinder and push rod grow differently. */
    public static final Mechanism PUSH_ROD_LASH_CHANGE = Mechanism.called(
                    "push_rod_lash_change",
                    "by how much lash opens at the valve because cylinder and push rod are warmer than when cold; to be taken off a warm reading")
            .takes(
                    Input.of(
                            "rocker_ratio",
                            "the rocker's arm at the valve, over that at the push rod",
                            "0.5",
                            "3",
                            "no rocker is so uneven"),
                    EXPANSION.called("cylinder_expansion", "by how much the cylinder's metal grows"),
                    PART.called("cylinder_height", "from the cam's axis to the rocker's"),
                    WARMING.called("cylinder_warming", "how much warmer the cylinder is"),
                    EXPANSION.called("rod_expansion", "by how much the push rod's metal grows"),
                    PART.called("rod_length", "how long the push rod is"),
                    WARMING.called("rod_warming", "how much warmer the push rod is"))
            .source(LINEAR)
            .assuming(EVEN, "valve and head are counted by valve_lash_change")
            .example("1", "0.000023 per K", "60 mm", "80 K", "0.000012 per K", "60 mm", "50 K")
            .gives(
                    "mm",
                    "ratio·(cylinder growth − push rod growth)",
                    x -> x[0] * (x[1] * x[2] * x[3] - x[4] * x[5] * x[6]));

    /** By how much lash opens because head and valve grow differently. */
    public static final Mechanism VALVE_LASH_CHANGE = Mechanism.called(
                    "valve_lash_change",
                    "by how much lash opens because head and valve are warmer than when cold; below zero when it closes")
            .takes(
                    EXPANSION.called("head_expansion", "by how much the head's metal grows"),
                    PART.called("head_height", "from the valve's seat to the rocker's axis"),
                    WARMING.called("head_warming", "how much warmer the head is"),
                    EXPANSION.called("valve_expansion", "by how much the valve's metal grows"),
                    PART.called("valve_length", "from the valve's seat to its tip"),
                    WARMING.called("valve_warming", "how much warmer the valve is"))
            .source(LINEAR)
            .assuming(EVEN, "cylinder and push rod are counted by push_rod_lash_change")
            .example("0.000023 per K", "25 mm", "120 K", "0.000016 per K", "25 mm", "250 K")
            .gives("mm", "head growth − valve growth", x -> x[0] * x[1] * x[2] - x[3] * x[4] * x[5]);

    /** How long to wait until the metal is cold. */
    public static final Mechanism COOLING_TIME = Mechanism.called(
                    "cooling_time", "how long to wait until the metal is cold enough to measure")
            .takes(EXCESS, ALLOWED, CONSTANT)
            .where(ALLOWED, AT_MOST, "the excess", x -> x[0], "there would be nothing to wait for")
            .source(NEWTON)
            .assuming(STILL)
            .example("90 K", "5 K", "10 min")
            .gives("min", "time_constant·ln(excess/allowed_excess)", x -> x[2] * Math.log(x[0] / x[1]));

    /** The time constant that an engine shows. */
    public static final Mechanism COOLING_CONSTANT = Mechanism.called(
                    "cooling_constant",
                    "the time constant of an engine, from how much warmer it was than the shop, and how much later")
            .takes(EXCESS, LATER, TIME)
            .where(LATER, BELOW, "the excess before", x -> x[0], "it would not have cooled")
            .source(NEWTON + ", turned round")
            .assuming(STILL)
            .example("90 K", "33 K", "10 min")
            .gives("min", "time/ln(excess/later_excess)", x -> x[2] / Math.log(x[0] / x[1]));

    /** How much warmer than the shop the metal still is. */
    public static final Mechanism EXCESS_LEFT = Mechanism.called(
                    "excess_left", "how much warmer than the shop the metal still is after a time")
            .takes(EXCESS, TIME, CONSTANT)
            .source(NEWTON)
            .assuming(STILL)
            .example("90 K", "30 min", "10 min")
            .gives("K", "excess·exp(−time/time_constant)", x -> x[0] * Math.exp(-x[1] / x[2]));

    static final List<Mechanism> ALL =
            List.of(GROWTH, PUSH_ROD_LASH_CHANGE, VALVE_LASH_CHANGE, COOLING_TIME, COOLING_CONSTANT, EXCESS_LEFT);

    private Thermal() {}
}
