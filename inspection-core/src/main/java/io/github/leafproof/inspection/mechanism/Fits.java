package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Inputs.BORE;
import static io.github.leafproof.inspection.mechanism.Inputs.EXPANSION;
import static io.github.leafproof.inspection.mechanism.Inputs.PART;
import static io.github.leafproof.inspection.mechanism.Inputs.STROKE;
import static io.github.leafproof.inspection.mechanism.Inputs.WARMING;

import java.util.List;

/** Fits: how much play parts have, cold and hot, and threads that only look alike. */
public final class Fits {
    private static final String LINEAR = "linear expansion; coefficients are the user's, from a handbook";
    private static final String EVEN = "each part is as warm throughout as its temperature says";
    private static final String HELIX = "a screw advances by its pitch in a turn";

    private static final double MICROMETRE = 1e-6;
    private static final double ROUNDING = 1e-12;
    private static final int FINEST = 5;
    /** IT5 to IT8 in micrometres, for sizes up to and with each of the next row. */
    private static final int[][] GRADES = {
        {4, 6, 10, 14}, {5, 8, 12, 18}, {6, 9, 15, 22}, {8, 11, 18, 27}, {9, 13, 21, 33}, {11, 16, 25, 39}
    };

    private static final double[] UP_TO = {0.003, 0.006, 0.010, 0.018, 0.030, 0.050};

    private static final Input GRADE =
            Input.of("grade", "the number of the grade", "5", "8", "the table is held for IT5 to IT8 here");
    private static final Input GAP =
            Input.of("gap", "the gap of the piston ring in its bore", "0 mm", "10 mm", "a wider gap is a broken ring");
    private static final Input CLEARANCE = Input.of(
            "clearance",
            "the clearance when cold; below zero for a tight fit",
            "-5 mm",
            "5 mm",
            "no parts that belong together have so much");
    private static final Input COARSER = Input.of(
            "coarser_pitch",
            "the pitch of the coarser thread",
            "0.1 mm per turn",
            "10 mm per turn",
            "no screw of an engine is so fine or so coarse");
    private static final Input FINER = COARSER.called("finer_pitch", "the pitch of the finer thread");

    /** The width of an ISO tolerance grade. */
    public static final Mechanism TOLERANCE_GRADE = Mechanism.called(
                    "tolerance_grade",
                    "the width of an ISO tolerance for a size, such as 0.021 mm for 25 mm in grade IT7")
            .takes(
                    Input.of("size", "the nominal size", "0.001 mm", "50 mm", "the table is held up to 50 mm here"),
                    GRADE)
            .where(GRADE, Bound.Side.AT_MOST, "a whole number", x -> Math.floor(x[1]), "there would be no such grade")
            .source("ISO 286-1 table of standard tolerances (from four public copies that agree)")
            .example("25 mm", "7")
            .gives("mm", "table", x -> grade(x[0], x[1]));

    /** The play of the big end. */
    public static final Mechanism BIG_END_PLAY = Mechanism.called(
                    "big_end_play", "the play of the big end, by rocking the crank at half stroke with the piston held")
            .takes(
                    Input.of(
                            "rocking_angle",
                            "how far the crank can be rocked",
                            "0 deg",
                            "20 deg",
                            "a big end so worn is loose to the eye"),
                    STROKE)
            .source("arc of the crank's throw")
            .assuming("the crank stands at 90°, the piston is held, and the small end has no play")
            .example("0.3 deg", "24.8 mm")
            .gives("mm", "rocking_angle·stroke/2", x -> x[0] * x[1] / 2);

    /** The ring's gap when hot. */
    public static final Mechanism RING_GAP_HOT = Mechanism.called(
                    "ring_gap_hot",
                    "what is left of a piston ring's gap when hot; below zero it butts and scores the bore")
            .takes(
                    GAP,
                    BORE,
                    EXPANSION.called("ring_expansion", "by how much the ring's metal grows"),
                    WARMING.called("ring_warming", "how much warmer the ring is"),
                    EXPANSION.called("cylinder_expansion", "by how much the cylinder's metal grows"),
                    WARMING.called("cylinder_warming", "how much warmer the cylinder is"))
            .source(LINEAR)
            .assuming(EVEN, "the ring is squeezed to the bore all round")
            .example("0.1 mm", "27.7 mm", "0.0000114 per K", "180 K", "0.0000236 per K", "120 K")
            .gives(
                    "mm",
                    "gap − π·bore·(ring growth − cylinder growth)",
                    x -> x[0] - Math.PI * x[1] * (x[2] * x[3] - x[4] * x[5]));

    /** The wear of a bore, by the gap of its ring. */
    public static final Mechanism BORE_WEAR = Mechanism.called(
                    "bore_wear", "how much wider a bore is in one place than in another, by the ring's gap in both")
            .takes(
                    GAP.called("worn_gap", "the ring's gap where the bore is worn"),
                    GAP.called("unworn_gap", "the ring's gap where it is not"))
            .source("the way round a circle")
            .assuming("the bore is round in both places, and the ring lies square")
            .example("0.16 mm", "0.1 mm")
            .gives("mm", "(worn_gap − unworn_gap)/π", x -> (x[0] - x[1]) / Math.PI);

    /** The clearance of two parts when hot. */
    public static final Mechanism HOT_CLEARANCE = Mechanism.called(
                    "hot_clearance", "what a clearance becomes when hot: a piston in its bore, or a shaft's end float")
            .takes(
                    CLEARANCE,
                    PART,
                    EXPANSION.called("outer_expansion", "by how much the outer part's metal grows"),
                    WARMING.called("outer_warming", "how much warmer the outer part is"),
                    EXPANSION.called("inner_expansion", "by how much the inner part's metal grows"),
                    WARMING.called("inner_warming", "how much warmer the inner part is"))
            .source(LINEAR)
            .assuming(EVEN)
            .example("0.05 mm", "27.7 mm", "0.0000236 per K", "120 K", "0.0000194 per K", "180 K")
            .gives(
                    "mm",
                    "clearance + length·(outer growth − inner growth)",
                    x -> x[0] + x[1] * (x[2] * x[3] - x[4] * x[5]));

    /** How far two threads get out of step. */
    public static final Mechanism THREAD_MISFIT = Mechanism.called(
                    "thread_misfit", "how far two threads that look alike get out of step with each turn")
            .takes(COARSER, FINER)
            .where(
                    COARSER,
                    ABOVE,
                    "the finer pitch",
                    x -> x[1],
                    "the threads would be in step, or named the wrong way round")
            .source(HELIX)
            .example("1 mm per turn", "0.9071 mm per turn")
            .gives("mm per turn", "coarser_pitch − finer_pitch", x -> x[0] - x[1]);

    /** How far the wrong nut goes on. */
    public static final Mechanism TURNS_TO_JAM = Mechanism.called(
                    "turns_to_jam", "roughly how many turns a nut of the wrong thread goes on until it binds")
            .takes(COARSER, FINER)
            .where(
                    COARSER,
                    ABOVE,
                    "the finer pitch",
                    x -> x[1],
                    "the threads would be in step, or named the wrong way round")
            .source(HELIX + "; common practice")
            .assuming("it binds when the threads are half a pitch out of step, and the diameters let it on at all")
            .example("1.25 mm per turn", "1.0583 mm per turn")
            .gives(
                    "turn",
                    "coarser_pitch/(2·(coarser_pitch − finer_pitch)) turns",
                    x -> x[0] / (2 * (x[0] - x[1])) * 2 * Math.PI);

    static final List<Mechanism> ALL =
            List.of(TOLERANCE_GRADE, BIG_END_PLAY, RING_GAP_HOT, BORE_WEAR, HOT_CLEARANCE, THREAD_MISFIT, TURNS_TO_JAM);

    private Fits() {}

    private static double grade(double size, double number) {
        for (int step = 0; step < UP_TO.length; step++) {
            if (size <= UP_TO[step] * (1 + ROUNDING)) {
                return GRADES[step][(int) Math.rint(number) - FINEST] * MICROMETRE;
            }
        }
        return Double.NaN;
    }
}
