package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Bound.Side.ABOVE;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_LEAST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.AT_MOST;
import static io.github.leafproof.inspection.mechanism.Bound.Side.BELOW;
import static io.github.leafproof.inspection.mechanism.Inputs.FLOW;
import static io.github.leafproof.inspection.mechanism.Inputs.FUEL_DENSITY;
import static io.github.leafproof.inspection.mechanism.Inputs.RUN_TIME;

import java.util.List;

/** Fuel: blending, what it weighs, how much air it wants, how long it lasts. */
public final class FuelMix {
    private static final double METHANOL = 791;
    private static final double NITRO = 1137.5;
    private static final double AIR_PER_METHANOL = air(1, 4, 1, 0);
    private static final double AIR_PER_NITRO = air(1, 3, 2, 1);

    private static final String BALANCE = "balance of volumes";
    private static final String ADDITIVE = "volumes add up when mixed; methanol mixtures shrink a little";
    private static final String OXYGEN = "balance of oxygen, for dry air with 20.95 % oxygen and 28.9647 g/mol";
    private static final String PURE =
            "methanol of 791 kg/m³ and nitromethane of 1137.5 kg/m³ (20 °C); the oil does not burn";
    private static final String WHOLE = "a share goes from nothing to the whole";

    private static final Input OIL = Input.of("oil", "the share of oil, by volume", "0 %", "100 %", WHOLE);
    private static final Input NITRO_SHARE = OIL.called("nitro", "the share of nitromethane, by volume");
    private static final Input NITRO_THEN = NITRO_SHARE.called("nitro_then", "its share of nitromethane");
    private static final Input NITRO_NOW = NITRO_SHARE.called("nitro_now", "its share of nitromethane");
    private static final Input OIL_NOW = OIL.called("oil_now", "the share of oil of the other fuel");
    private static final Input OIL_WANTED =
            Input.of("oil_wanted", "the share of oil wanted, by volume", "0 %", "99 %", "pure oil is no fuel");
    private static final Input VOLUME =
            Input.of("volume", "how much fuel there is", "0 mL", "1000 L", "nobody blends more");
    private static final Input SOME =
            Input.of("some", "how much fuel there is", "0.1 mL", "1000 L", "nobody blends less or more");
    private static final Input SHARE = OIL.called("share", "the share of the part in question, by volume");
    private static final Input FIRST = OIL.called("stronger_share", "the share in the stronger fuel");
    private static final Input SECOND = OIL.called("weaker_share", "the share in the weaker fuel");
    private static final Input WANTED = OIL.called("share_wanted", "the share wanted");
    private static final Input ATOMS =
            Input.of("carbon", "atoms of carbon in a molecule", "0", "60", "no liquid fuel has larger molecules");

    /** How much oil to add. */
    public static final Mechanism OIL_TO_ADD = Mechanism.called(
                    "oil_to_add", "how much oil to add so that a fuel has the share of oil wanted")
            .takes(OIL, OIL_WANTED, VOLUME)
            .where(OIL_WANTED, AT_LEAST, "the share it has", x -> x[0], "oil would have to be taken out")
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("18 %", "22 %", "3785 mL")
            .gives("mL", "volume·(oil_wanted − oil)/(1 − oil_wanted)", x -> x[2] * (x[1] - x[0]) / (1 - x[1]));

    /** What is left of a share after adding something else. */
    public static final Mechanism SHARE_AFTER_ADDING = Mechanism.called(
                    "share_after_adding", "what is left of a share after something without it was added")
            .takes(
                    SHARE,
                    SOME.called("volume", "how much fuel there was"),
                    VOLUME.called("added_volume", "how much was added"))
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("15 %", "3785 mL", "194 mL")
            .gives("%", "share·volume/(volume + added_volume)", x -> x[0] * x[1] / (x[1] + x[2]));

    /** The share in a blend of two fuels. */
    public static final Mechanism BLEND_SHARE = Mechanism.called(
                    "blend_share", "the share of oil, or of nitromethane, in a blend of two fuels")
            .takes(
                    OIL.called("first_share", "the share in the first fuel"),
                    SOME.called("first_volume", "how much of the first fuel"),
                    OIL.called("second_share", "the share in the second fuel"),
                    VOLUME.called("second_volume", "how much of the second fuel"))
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("5 %", "1 L", "20 %", "2 L")
            .gives("%", "(a·A + b·B)/(A + B)", x -> (x[0] * x[1] + x[2] * x[3]) / (x[1] + x[3]));

    /** How much of the stronger of two fuels a blend needs. */
    public static final Mechanism BLEND_PART = Mechanism.called(
                    "blend_part",
                    "how much of a blend must be the stronger of two fuels, so that it has the share wanted")
            .takes(FIRST, SECOND, WANTED)
            .where(FIRST, ABOVE, "the share in the weaker", x -> x[1], "no blend would change it")
            .where(WANTED, AT_MOST, "the share in the stronger", x -> x[0], "no blend of the two has so much")
            .where(WANTED, AT_LEAST, "the share in the weaker", x -> x[1], "no blend of the two has so little")
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("20 %", "5 %", "15 %")
            .gives(
                    "%",
                    "(share_wanted − weaker_share)/(stronger_share − weaker_share)",
                    x -> (x[2] - x[1]) / (x[0] - x[1]));

    /** A share by volume as one by mass. */
    public static final Mechanism MASS_SHARE = Mechanism.called("mass_share", "a share by mass, from a share by volume")
            .takes(
                    SHARE,
                    FUEL_DENSITY.called("density", "the density of the part in question"),
                    FUEL_DENSITY.called("rest_density", "the density of the rest"))
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("20 %", "961 kg/m³", "830 kg/m³")
            .gives("%", "v·ρ/(v·ρ + (1 − v)·ρ_rest)", x -> x[0] * x[1] / (x[0] * x[1] + (1 - x[0]) * x[2]));

    /** A share by mass as one by volume. */
    public static final Mechanism VOLUME_SHARE = Mechanism.called(
                    "volume_share", "a share by volume, from a share by mass")
            .takes(
                    OIL.called("mass_share", "the share of the part in question, by mass"),
                    FUEL_DENSITY.called("density", "the density of the part in question"),
                    FUEL_DENSITY.called("rest_density", "the density of the rest"))
            .source(BALANCE)
            .assuming(ADDITIVE)
            .example("22.5 %", "961 kg/m³", "830 kg/m³")
            .gives("%", "(w/ρ)/(w/ρ + (1 − w)/ρ_rest)", x -> x[0] * x[2] / (x[0] * x[2] + (1 - x[0]) * x[1]));

    /** What the fuel weighs. */
    public static final Mechanism BLEND_DENSITY = Mechanism.called(
                    "blend_density", "the density of a fuel of methanol, oil and nitromethane")
            .takes(OIL, NITRO_SHARE, FUEL_DENSITY.called("oil_density", "the density of the oil"))
            .where(NITRO_SHARE, AT_MOST, "what the oil leaves", x -> 1 - x[0], "there would be more than the whole")
            .source(BALANCE)
            .assuming(ADDITIVE, PURE)
            .example("18 %", "10 %", "961 kg/m³")
            .gives(
                    "kg/m³",
                    "oil·ρ_oil + nitro·1137.5 + rest·791",
                    x -> x[0] * x[2] + x[1] * NITRO + (1 - x[0] - x[1]) * METHANOL);

    /** The air that a substance wants. */
    public static final Mechanism STOICHIOMETRIC_AIR = Mechanism.called(
                    "stoichiometric_air",
                    "how many times its own mass of air a substance wants, from the atoms of its molecule")
            .takes(
                    ATOMS,
                    ATOMS.called("hydrogen", "atoms of hydrogen"),
                    ATOMS.called("oxygen", "atoms of oxygen"),
                    ATOMS.called("nitrogen", "atoms of nitrogen"))
            .where(ATOMS, ABOVE, "what its own oxygen burns", x -> x[2] / 2 - x[1] / 4, "it would want no air at all")
            .source(OXYGEN)
            .assuming("it burns to carbon dioxide, water and nitrogen")
            .example("1", "4", "1", "0")
            .gives("", "(C + H/4 − O/2)·28.9647/0.2095 / molar mass", x -> air(x[0], x[1], x[2], x[3]));

    /** The air that a volume of fuel wants. */
    public static final Mechanism AIR_DEMAND = Mechanism.called(
                    "air_demand", "the mass of air that a volume of fuel wants")
            .takes(OIL, NITRO_SHARE)
            .where(NITRO_SHARE, AT_MOST, "what the oil leaves", x -> 1 - x[0], "there would be more than the whole")
            .source(OXYGEN)
            .assuming(ADDITIVE, PURE)
            .example("18 %", "10 %")
            .gives("g/mL", "methanol·791·6.472 + nitro·1137.5·1.699", x -> demand(x[0], x[1]));

    /** How much more of another fuel the engine wants. */
    public static final Mechanism FUEL_FLOW_RATIO = Mechanism.called(
                    "fuel_flow_ratio", "how many times the volume of another fuel the same air wants")
            .takes(OIL.called("oil_then", "the share of oil of the fuel so far"), NITRO_THEN, OIL_NOW, NITRO_NOW)
            .where(NITRO_THEN, AT_MOST, "what the oil leaves", x -> 1 - x[0], "there would be more than the whole")
            .where(OIL_NOW, BELOW, "the whole", x -> 1, "pure oil burns nothing")
            .where(NITRO_NOW, AT_MOST, "what the oil leaves", x -> 1 - x[2], "there would be more than the whole")
            .source(OXYGEN)
            .assuming(ADDITIVE, PURE, "both burn as rich")
            .example("15 %", "5 %", "20 %", "20 %")
            .gives("", "air_demand then / air_demand now", x -> demand(x[0], x[1]) / demand(x[2], x[3]));

    /** How long a tank lasts. */
    public static final Mechanism TANK_TIME = Mechanism.called("tank_time", "how long a tank lasts")
            .takes(VOLUME, FLOW)
            .source("definition of flow")
            .assuming("the flow stays what it is, and the tank is emptied")
            .example("300 mL", "27 mL/min")
            .gives("min", "volume/flow", x -> x[0] / x[1]);

    /** How much fuel a run takes. */
    public static final Mechanism FUEL_NEEDED = Mechanism.called("fuel_needed", "how much fuel a run takes")
            .takes(RUN_TIME, FLOW)
            .source("definition of flow")
            .assuming("the flow stays what it is")
            .example("3 min", "27 mL/min")
            .gives("mL", "time·flow", x -> x[0] * x[1]);

    static final List<Mechanism> ALL = List.of(
            OIL_TO_ADD,
            SHARE_AFTER_ADDING,
            BLEND_SHARE,
            BLEND_PART,
            MASS_SHARE,
            VOLUME_SHARE,
            BLEND_DENSITY,
            STOICHIOMETRIC_AIR,
            AIR_DEMAND,
            FUEL_FLOW_RATIO,
            TANK_TIME,
            FUEL_NEEDED);

    private FuelMix() {}

    private static double air(double carbon, double hydrogen, double oxygen, double nitrogen) {
        double oxygenWanted = carbon + hydrogen / 4 - oxygen / 2;
        double molarMass = 12.011 * carbon + 1.008 * hydrogen + 15.999 * oxygen + 14.007 * nitrogen;
        return oxygenWanted / 0.2095 * 28.9647 / molarMass;
    }

    private static double demand(double oil, double nitro) {
        return (1 - oil - nitro) * METHANOL * AIR_PER_METHANOL + nitro * NITRO * AIR_PER_NITRO;
    }
}
