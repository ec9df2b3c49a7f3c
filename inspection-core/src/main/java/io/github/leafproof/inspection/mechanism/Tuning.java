package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_LEAST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Inputs.FLOW;
import static io.github.leafproof.inspection.mechanism.Inputs.RUN_TIME;
import static io.github.leafproof.inspection.mechanism.Inputs.SPEED;
import static io.github.leafproof.inspection.mechanism.Inputs.TIME;

import java.util.ArrayList;
import java.util.List;

/** Running in and tuning: the peak of the needle, what a tacho or an infra-red gun really tells, what is due when. */
public final class Tuning {
    private static final String PARABOLA = "the parabola through three points";
    private static final String NEAR_THE_PEAK = "near its peak the speed goes with the needle as a parabola does";
    private static final String LAMP =
            "two blades pass as often as a lamp on the mains flickers: twice in each of its periods";
    private static final String FIRING = "one exhaust stroke in two turns of a four-stroke";
    private static final String GREY = "Stefan and Boltzmann's law for a grey body in a room; whole spectrum";
    private static final String SMALL_IN_LARGE = "the room is as warm all round, and the gun sees the metal alone";

    private static final Input FIRST_TURNS = Input.of(
            "first_needle",
            "the needle of the leanest point, turns from its seat",
            "0 turns",
            "12 turns",
            "a needle further out has left its thread");
    private static final Input MIDDLE_TURNS = FIRST_TURNS.called("middle_needle", "the needle of the middle point");
    private static final Input LAST_TURNS = FIRST_TURNS.called("last_needle", "the needle of the richest point");
    private static final Input FIRST_SPEED = SPEED.called("first_speed", "the speed at the leanest point");
    private static final Input MIDDLE_SPEED = SPEED.called("middle_speed", "the speed at the middle point");
    private static final Input LAST_SPEED = SPEED.called("last_speed", "the speed at the richest point");
    private static final Input DROP = SPEED.called("drop", "how much slower than at its peak the engine shall turn");

    /** Where the needle gives the highest speed. */
    public static final Mechanism PEAK_TURNS = points(
                    Mechanism.called("peak_turns", "how far out the needle gives the highest speed, by three points"))
            .example("1.75 turns", "9420 rpm", "2 turns", "9560 rpm", "2.25 turns", "9380 rpm")
            .gives("turn", "vertex of the parabola", x -> Parabola.through(x, 0).vertex());

    /** The highest speed. */
    public static final Mechanism PEAK_SPEED = points(
                    Mechanism.called("peak_speed", "the highest speed that the needle gives, by three points"))
            .example("1.75 turns", "9420 rpm", "2 turns", "9560 rpm", "2.25 turns", "9380 rpm")
            .gives(
                    "rpm",
                    "height of the parabola's vertex",
                    x -> Parabola.through(x, 0).peak());

    /** Where the needle belongs for flight. */
    public static final Mechanism FLIGHT_TURNS = points(
                    Mechanism.called(
                            "flight_turns",
                            "how far out the needle, on the rich side, gives so much less than the highest speed"),
                    DROP)
            .example("300 rpm", "1.75 turns", "9420 rpm", "2 turns", "9560 rpm", "2.25 turns", "9380 rpm")
            .gives(
                    "turn",
                    "vertex + √(drop/|a|), a = curvature",
                    x -> Parabola.through(x, 1).richSide(x[0]));

    private static final Input MAINS = Input.of(
            "mains",
            "the frequency of the mains, such as 50 per s",
            "10 per s",
            "500 per s",
            "no mains alternates so slowly or so fast");
    private static final Input BLADES = Input.of(
            "blade_setting", "how many blades the tacho is set to", "1", "12", "no propeller has fewer or more");

    /** What a tacho shows when it sees a lamp. */
    public static final Mechanism LAMP_READING = Mechanism.called(
                    "lamp_reading",
                    "what an optical tacho shows when it sees a lamp on the mains instead of the propeller")
            .takes(MAINS, BLADES)
            .source(LAMP)
            .example("50 per s", "2")
            .gives("rpm", "2·mains/blade_setting", x -> 2 * x[0] / x[1] * 2 * Math.PI);

    /** The speed behind a wrong setting of the tacho. */
    public static final Mechanism TRUE_SPEED = Mechanism.called(
                    "true_speed", "the speed, when the tacho was set to another number of blades")
            .takes(
                    SPEED.called("reading", "what the tacho shows"),
                    BLADES,
                    BLADES.called("blade_count", "how many blades the propeller has"))
            .source("an optical tacho counts blades")
            .example("14250 rpm", "2", "3")
            .gives("rpm", "reading·blade_setting/blade_count", x -> x[0] * x[1] / x[2]);

    /** The note of the exhaust. */
    public static final Mechanism EXHAUST_NOTE = Mechanism.called(
                    "exhaust_note", "the note of the exhaust, in beats per second: one for two turns")
            .takes(SPEED)
            .source(FIRING)
            .assuming("one cylinder")
            .example("9500 rpm")
            .gives("per s", "speed/2", x -> x[0] / (4 * Math.PI));

    /** The speed by the note of the exhaust. */
    public static final Mechanism SPEED_OF_NOTE = Mechanism.called(
                    "speed_of_note", "the speed, by the note of the exhaust")
            .takes(Input.of(
                    "note",
                    "the note of the exhaust, in beats per second",
                    "1 per s",
                    "1000 per s",
                    "no ear or engine goes lower or higher"))
            .source(FIRING)
            .assuming("one cylinder, and the note heard is the lowest")
            .example("79.2 per s")
            .gives("rpm", "2·note", x -> x[0] * 4 * Math.PI);

    private static final Input READING = Input.of(
            "reading", "what the infra-red gun shows", "-40 °C", "500 °C", "no gun for a shop shows less or more");
    private static final Input ROOM =
            Input.of("room", "how warm the room is", "-40 °C", "60 °C", "no shop is colder or warmer");
    private static final Input EMISSIVITY_SET = Input.of(
            "emissivity_set",
            "the emissivity that the gun is set to: 0.95 where nothing can be set (common practice)",
            "0.1",
            "1",
            "no gun is set so");
    private static final Input EMISSIVITY = Input.of(
            "emissivity",
            "how well the metal radiates: bright aluminium 0.1 to 0.2, matt black 0.95 (common practice)",
            "0.02",
            "1",
            "no surface radiates less or more");
    private static final Input PATCH =
            READING.called("patch_reading", "what the gun shows on a matt-black patch beside it");

    /** How warm bright metal is. */
    public static final Mechanism TRUE_TEMPERATURE = Mechanism.called(
                    "true_temperature", "how warm metal is that an infra-red gun set for another surface reads wrong")
            .takes(READING, ROOM, EMISSIVITY_SET, EMISSIVITY)
            .source(GREY)
            .assuming(SMALL_IN_LARGE, "a real gun sees a part of the spectrum only")
            .example("62 °C", "20 °C", "0.95", "0.3")
            .gives(
                    "°C",
                    "⁴√(room⁴ + set/emissivity·(reading⁴ − room⁴)), absolute",
                    x -> Math.pow(fourth(x[1]) + x[2] / x[3] * (fourth(x[0]) - fourth(x[1])), 0.25));

    /** How well metal radiates, by a black patch. */
    public static final Mechanism EMISSIVITY_BY_PATCH = Mechanism.called(
                    "emissivity_by_patch", "how well bare metal radiates, by a matt-black patch beside it")
            .takes(
                    READING,
                    PATCH,
                    ROOM,
                    EMISSIVITY.called("patch_emissivity", "how well the patch radiates: 0.95 (common practice)"))
            .where(PATCH, ABOVE, "the room", x -> x[2], "cold metal tells nothing")
            .source(GREY)
            .assuming(SMALL_IN_LARGE, "patch and metal are equally warm, and the gun's setting stays what it is")
            .example("62 °C", "120 °C", "20 °C", "0.95")
            .gives(
                    "",
                    "patch_emissivity·(bare⁴ − room⁴)/(patch⁴ − room⁴), absolute",
                    x -> x[3] * (fourth(x[0]) - fourth(x[2])) / (fourth(x[1]) - fourth(x[2])));

    private static final Input LASH =
            Input.of("lash_before", "the lash at the check before", "0 mm", "5 mm", "a wider gap is no lash");
    private static final Input LASH_NOW = LASH.called("lash_now", "the lash now");
    private static final Input LIMIT = LASH.called("limit", "the widest lash allowed");
    private static final Input MARGIN =
            LASH.called("margin", "what is kept aside for the uncertainty of the next check");

    /** How fast lash widens. */
    public static final Mechanism WEAR_RATE = Mechanism.called(
                    "wear_rate",
                    "how fast lash widens, by two cold checks; it should fall as the engine beds in, and a rising one is a finding")
            .takes(LASH, LASH_NOW, TIME.called("running_time", "how long the engine ran between them"))
            .source("difference over time")
            .assuming("both were taken cold, and nobody turned the adjuster between them")
            .example("0.06 mm", "0.075 mm", "0.7 h")
            .gives("mm/h", "(lash_now − lash_before)/running_time", x -> (x[1] - x[0]) / x[2]);

    /** When the next check is due. */
    public static final Mechanism NEXT_CHECK = Mechanism.called(
                    "next_check", "how long the engine may run until lash has to be checked again")
            .takes(
                    LASH_NOW,
                    LIMIT,
                    MARGIN,
                    Input.of(
                            "rate",
                            "how fast lash widens",
                            "0.0001 mm/h",
                            "1 mm/h",
                            "a lash that closes or stands is not due by widening, and none widens faster"))
            .where(LASH_NOW, AT_MOST, "the limit less the margin", x -> x[1] - x[2], "the check is due now")
            .source("proportion; common practice")
            .assuming("lash widens as fast as before")
            .example("0.075 mm", "0.1 mm", "0.003 mm", "0.0214 mm/h")
            .gives("h", "(limit − margin − lash_now)/rate", x -> (x[1] - x[2] - x[0]) / x[3]);

    private static final Input RUNS =
            Input.of("number_of_runs", "how many runs", "1", "1000", "no plan has fewer or more");

    /** How long a plan of runs takes by the clock. */
    public static final Mechanism PLAN_TIME = Mechanism.called(
                    "plan_time", "how long a plan of runs takes by the clock, cooling after each")
            .takes(RUNS, RUN_TIME, TIME.called("cooling", "how long it cools after each"))
            .source("sum; common practice")
            .example("13", "3 min", "20 min")
            .gives("h", "number_of_runs·(run_time + cooling)", x -> x[0] * (x[1] + x[2]));

    /** How much fuel a plan of runs takes. */
    public static final Mechanism PLAN_FUEL = Mechanism.called("plan_fuel", "how much fuel a plan of runs takes")
            .takes(RUNS, RUN_TIME, FLOW)
            .source("sum; common practice")
            .example("13", "3 min", "20 mL/min")
            .gives("mL", "number_of_runs·run_time·flow", x -> x[0] * x[1] * x[2]);

    static final List<Mechanism> ALL = List.of(
            PEAK_TURNS,
            PEAK_SPEED,
            FLIGHT_TURNS,
            LAMP_READING,
            TRUE_SPEED,
            EXHAUST_NOTE,
            SPEED_OF_NOTE,
            TRUE_TEMPERATURE,
            EMISSIVITY_BY_PATCH,
            WEAR_RATE,
            NEXT_CHECK,
            PLAN_TIME,
            PLAN_FUEL);

    private Tuning() {}

    /** Three points of needle and speed, after whatever else is taken, and what they must be to have a peak between them. */
    private static Mechanism.Draft points(Mechanism.Draft draft, Input... before) {
        int at = before.length;
        List<Input> all = new ArrayList<>(List.of(before));
        all.addAll(List.of(FIRST_TURNS, FIRST_SPEED, MIDDLE_TURNS, MIDDLE_SPEED, LAST_TURNS, LAST_SPEED));
        return draft.takes(all.toArray(Input[]::new))
                .where(MIDDLE_TURNS, ABOVE, "the leanest point", x -> x[at], "the points would not be in order")
                .where(LAST_TURNS, ABOVE, "the middle point", x -> x[at + 2], "the points would not be in order")
                .where(
                        MIDDLE_SPEED,
                        ABOVE,
                        "the straight line between the others",
                        x -> Parabola.through(x, at).chord(),
                        "there would be no peak")
                .where(
                        FIRST_TURNS,
                        AT_MOST,
                        "the peak",
                        x -> Parabola.through(x, at).vertex(),
                        "the peak would lie outside what was measured")
                .where(
                        LAST_TURNS,
                        AT_LEAST,
                        "the peak",
                        x -> Parabola.through(x, at).vertex(),
                        "the peak would lie outside what was measured")
                .source(PARABOLA)
                .assuming(NEAR_THE_PEAK, "the engine is warm, and has settled at each point");
    }

    private static double fourth(double kelvin) {
        return kelvin * kelvin * kelvin * kelvin;
    }
}
