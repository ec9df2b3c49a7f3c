package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;
import static io.github.leafproof.inspection.mechanism.Inputs.PRESSURE;
import static io.github.leafproof.inspection.mechanism.Inputs.TEMPERATURE;
import static io.github.leafproof.inspection.mechanism.Inputs.TIME;

import java.util.List;

/** How well a cylinder holds its air. */
public final class Tightness {
    private static final String NOZZLE =
            "flow of a perfect gas through an orifice without losses (isentropic nozzle equation), choked where it has to be";
    private static final String GAS = "air as a perfect gas with an adiabatic exponent of 1.4";
    private static final String HELD = "the propeller is locked, for the air turns it";

    private static final Input SUPPLY = Input.of(
            "supply_pressure",
            "the pressure before the tester's orifice, above that of the air around",
            "1 kPa",
            "1000 kPa",
            "no leak-down test is made with less or more");
    private static final Input HELD_PRESSURE = Input.of(
            "held_pressure",
            "the pressure that the cylinder holds, above that of the air around",
            "0 kPa",
            "1000 kPa",
            "no leak-down test is made with more");
    private static final Input ORIFICE = Input.of(
            "orifice",
            "the diameter of the orifice",
            "0.01 mm",
            "20 mm",
            "no such leak or orifice is so narrow or so wide");
    private static final Input VOLUME = Input.of(
            "volume",
            "the volume that is shut in",
            "0.01 mL",
            "100 L",
            "no part of such an engine holds so little or so much");
    private static final Input ABSOLUTE = Input.of(
            "pressure_before",
            "the pressure before, counted from vacuum (absolute)",
            "0 kPa",
            "5000 kPa",
            "no such engine holds more");
    private static final Input AFTER =
            ABSOLUTE.called("pressure_after", "the pressure after, counted from vacuum (absolute)");
    private static final Input DISCHARGE = Input.of(
            "discharge",
            "how much of the ideal flow passes: 1 for a rounded nozzle, about 0.6 for a sharp edge (common practice)",
            "0.1",
            "1",
            "no opening passes more than the ideal");
    private static final Input UPSTREAM =
            ABSOLUTE.called("upstream_pressure", "the pressure before the orifice, counted from vacuum (absolute)");
    private static final Input DOWNSTREAM =
            ABSOLUTE.called("downstream_pressure", "the pressure behind it, counted from vacuum (absolute)");

    /** The leak-down percentage. */
    public static final Mechanism LEAK_DOWN = Mechanism.called(
                    "leak_down",
                    "how much of the supply's pressure the cylinder loses through its leaks, as a leak-down tester shows it")
            .takes(SUPPLY, HELD_PRESSURE)
            .where(HELD_PRESSURE, AT_MOST, "the supply", x -> x[0], "the cylinder would hold more than it was given")
            .source("definition; common practice")
            .assuming(HELD, "figures compare only between testers with the same orifice")
            .example("550 kPa", "480 kPa")
            .gives("%", "(supply_pressure − held_pressure)/supply_pressure", x -> (x[0] - x[1]) / x[0]);

    /** The one hole that would leak as much. */
    public static final Mechanism LEAK_ORIFICE = Mechanism.called(
                    "leak_orifice", "the diameter of the one hole that would leak as much, whatever tester was used")
            .takes(ORIFICE.called("orifice", "the diameter of the tester's orifice"), SUPPLY, HELD_PRESSURE, PRESSURE)
            .where(HELD_PRESSURE, BELOW, "the supply", x -> x[1], "nothing would leak")
            .source(NOZZLE)
            .assuming(GAS, HELD, "tester's orifice and leak are of the same shape and temperature")
            .example("1 mm", "550 kPa", "480 kPa", "101.3 kPa")
            .gives(
                    "mm",
                    "the diameter at which both pass the same flow",
                    x -> x[0] * Math.sqrt(Orifice.fluxRatio(x[1] + x[3], x[2] + x[3], x[3])));

    /** The flow through an orifice. */
    public static final Mechanism ORIFICE_FLOW = Mechanism.called("orifice_flow", "how much air passes an orifice")
            .takes(ORIFICE, DISCHARGE, UPSTREAM, DOWNSTREAM, TEMPERATURE)
            .where(DOWNSTREAM, AT_MOST, "the pressure upstream", x -> x[2], "the air would flow the other way")
            .source(NOZZLE)
            .assuming(GAS)
            .example("1 mm", "0.6", "650 kPa", "101.3 kPa", "20 °C")
            .gives(
                    "g/min",
                    "Cd·A·p·ψ/√(R·T), ψ² = 2γ/(γ − 1)·(π^(2/γ) − π^((γ+1)/γ)), π = downstream/upstream, no less than 0.5283",
                    x -> x[1] * Orifice.flow(x[0], x[2], x[3], x[4]));

    /** The leak by a falling pressure. */
    public static final Mechanism DECAY_LEAK = Mechanism.called(
                    "decay_leak", "how much a shut volume leaks, by the pressure that it loses")
            .takes(VOLUME, ABSOLUTE, AFTER, TIME)
            .where(AFTER, AT_MOST, "the pressure before", x -> x[1], "the volume would have gained")
            .source("definition of throughput, Q = V·Δp/t")
            .assuming("the temperature does not drift: decay_by_drift tells what a drift would feign")
            .example("5 L", "1000 mbar", "900 mbar", "30 s")
            .gives("mbar·L/s", "volume·(pressure_before − pressure_after)/time", x -> x[0] * (x[1] - x[2]) / x[3]);

    /** What a change of temperature feigns. */
    public static final Mechanism DECAY_BY_DRIFT = Mechanism.called(
                    "decay_by_drift", "the pressure that a tight volume loses by growing colder, and that is no leak")
            .takes(
                    ABSOLUTE,
                    TEMPERATURE,
                    Input.of("drift", "by how much it grew colder", "-100 K", "100 K", "so far it is another test"))
            .source("perfect gas in a volume that does not give (Gay-Lussac's law)")
            .example("1 bar", "20 °C", "1 K")
            .gives("Pa", "pressure_before·drift/temperature", x -> x[0] * x[2] / x[1]);

    /** How long a cylinder holds. */
    public static final Mechanism HOLD_TIME = Mechanism.called(
                    "hold_time",
                    "how long a compressed cylinder takes to fall from one pressure to another through this hole")
            .takes(VOLUME, ABSOLUTE, AFTER, PRESSURE, ORIFICE, DISCHARGE, TEMPERATURE)
            .where(AFTER, AT_MOST, "the pressure before", x -> x[1], "it would rise")
            .where(AFTER, ABOVE, "the pressure around", x -> x[3], "it would take for ever")
            .source(NOZZLE + "; summed over the fall")
            .assuming(GAS, "the volume stays what it is, and as warm")
            .example("1.9 mL", "800 kPa", "200 kPa", "101.3 kPa", "0.05 mm", "0.6", "20 °C")
            .gives(
                    "s",
                    "∫ V/(R·T·flow(p)) dp from pressure_after to pressure_before",
                    x -> Orifice.emptying(x[0], x[1], x[2], x[3], x[4], x[6]) / x[5]);

    static final List<Mechanism> ALL =
            List.of(LEAK_DOWN, LEAK_ORIFICE, ORIFICE_FLOW, DECAY_LEAK, DECAY_BY_DRIFT, HOLD_TIME);

    private Tightness() {}
}
