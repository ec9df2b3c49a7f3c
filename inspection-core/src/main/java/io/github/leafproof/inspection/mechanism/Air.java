package io.github.leafproof.inspection.mechanism;

import static io.github.leafproof.inspection.mechanism.Inputs.AIR_DENSITY;
import static io.github.leafproof.inspection.mechanism.Inputs.PRESSURE;
import static io.github.leafproof.inspection.mechanism.Inputs.TEMPERATURE;

import java.util.List;

/** The air around: what it weighs, here and at a height, and what a day makes of it. */
public final class Air {
    static final double GRAVITY = 9.80665;
    static final double CELSIUS_ZERO = 273.15;
    private static final double SEA_TEMPERATURE = 288.15;
    private static final double SEA_PRESSURE = 101_325;
    private static final double LAPSE = 0.0065;
    private static final double EARTH = 6_356_766;
    /** The specific gas constant of the standard's air: 8314.32 over 28.9644. */
    static final double GAS_CONSTANT = 8314.32 / 28.9644;

    private static final double EXPONENT = GRAVITY / (GAS_CONSTANT * LAPSE);
    private static final double SEA_DENSITY = SEA_PRESSURE / (GAS_CONSTANT * SEA_TEMPERATURE);

    private static final String STANDARD =
            "standard atmosphere, ISO 2533:1975 and ICAO, as in the US Standard Atmosphere 1976 (constants from a copy of the latter)";
    private static final String CIPM =
            "CIPM-2007 formula for the density of moist air (coefficients from two public transcriptions)";
    private static final String OF_A_STANDARD_DAY = "the day is the standard one, which no real day is";
    private static final String USUAL_AIR = "0.04 % carbon dioxide, as outdoors";
    private static final String FITTED =
            "the formula is fitted for 15 °C to 27 °C and 600 hPa to 1100 hPa; beyond, it is an extrapolation";

    private static final Input ALTITUDE = Input.of(
            "altitude",
            "the height above sea level, as on a map",
            "-1000 m",
            "11000 m",
            "only there does the standard atmosphere grow colder evenly with height");
    private static final Input AIR_TEMPERATURE = Input.of(
            "temperature",
            "how warm the air is",
            "-10 °C",
            "45 °C",
            "further from the 15 °C to 27 °C of its authors nobody answers for the formula");
    private static final Input HUMIDITY =
            Input.of("humidity", "the relative humidity", "0 %", "100 %", "air holds no more water than that");

    /** The temperature of the standard atmosphere. */
    public static final Mechanism STANDARD_TEMPERATURE = standard(
                    "standard_temperature", "how warm the standard atmosphere is at a height")
            .gives("°C", "15 °C − 6.5 K per km × h, h = geopotential height", x -> temperature(x[0]));

    /** The pressure of the standard atmosphere. */
    public static final Mechanism STANDARD_PRESSURE = standard(
                    "standard_pressure", "the pressure of the standard atmosphere at a height")
            .gives(
                    "hPa",
                    "1013.25 hPa × (T/288.15 K)^5.2559",
                    x -> SEA_PRESSURE * Math.pow(temperature(x[0]) / SEA_TEMPERATURE, EXPONENT));

    /** The density of the standard atmosphere. */
    public static final Mechanism STANDARD_DENSITY = standard(
                    "standard_density", "the density of the standard atmosphere at a height")
            .gives(
                    "kg/m³",
                    "1.225 kg/m³ × (T/288.15 K)^4.2559",
                    x -> SEA_DENSITY * Math.pow(temperature(x[0]) / SEA_TEMPERATURE, EXPONENT - 1));

    /** The height at which the standard atmosphere is as dense. */
    public static final Mechanism DENSITY_ALTITUDE = Mechanism.called(
                    "density_altitude",
                    "the height at which the standard atmosphere is as thin as this air: what the engine takes it for")
            .takes(AIR_DENSITY)
            .source(STANDARD)
            .example("1.15 kg/m³")
            .gives(
                    "m",
                    "standard_density, turned round",
                    x -> height(Math.pow(x[0] / SEA_DENSITY, 1 / (EXPONENT - 1))));

    /** The height at which the standard atmosphere has this pressure. */
    public static final Mechanism PRESSURE_ALTITUDE = Mechanism.called(
                    "pressure_altitude", "the height at which the standard atmosphere has this pressure")
            .takes(PRESSURE)
            .source(STANDARD)
            .example("954.6 hPa")
            .gives("m", "standard_pressure, turned round", x -> height(Math.pow(x[0] / SEA_PRESSURE, 1 / EXPONENT)));

    /** What a cubic metre of moist air weighs. */
    public static final Mechanism MOIST_AIR_DENSITY = moist(
                    "air_density_of", "what a cubic metre of the air around weighs")
            .gives(
                    "kg/m³",
                    "p·M/(Z·R·T)·(1 − x·(1 − Mv/M)), x = share of vapour, Z = compressibility",
                    x -> MoistAir.of(x[0], x[1], x[2]).density());

    /** How much of a cubic metre of moist air is dry air, which alone burns the fuel. */
    public static final Mechanism DRY_PART = moist(
                    "dry_air_density",
                    "how much of a cubic metre of the air is air without water vapour, which alone burns fuel")
            .gives(
                    "kg/m³",
                    "p·M/(Z·R·T)·(1 − x), x = share of vapour",
                    x -> MoistAir.of(x[0], x[1], x[2]).dryDensity());

    /** The pressure of water vapour in saturated air. */
    public static final Mechanism VAPOUR_PRESSURE = Mechanism.called(
                    "vapour_pressure", "the pressure of water vapour over water: what saturated air holds")
            .takes(AIR_TEMPERATURE)
            .source(CIPM)
            .example("20 °C")
            .gives("hPa", "exp(A·T² + B·T + C + D/T)", x -> MoistAir.saturation(x[0]));

    /** The speed of sound in dry air. */
    public static final Mechanism SPEED_OF_SOUND = Mechanism.called("speed_of_sound", "how fast sound goes in dry air")
            .takes(TEMPERATURE)
            .source(STANDARD)
            .assuming("dry air; moisture adds up to about 0.5 %")
            .example("20 °C")
            .gives("m/s", "√(1.4·R·T), R = 287.053 J/(kg·K)", x -> Math.sqrt(1.4 * GAS_CONSTANT * x[0]));

    static final List<Mechanism> ALL = List.of(
            STANDARD_TEMPERATURE,
            STANDARD_PRESSURE,
            STANDARD_DENSITY,
            DENSITY_ALTITUDE,
            PRESSURE_ALTITUDE,
            MOIST_AIR_DENSITY,
            DRY_PART,
            VAPOUR_PRESSURE,
            SPEED_OF_SOUND);

    private Air() {}

    private static Mechanism.Draft standard(String name, String meaning) {
        return Mechanism.called(name, meaning)
                .takes(ALTITUDE)
                .source(STANDARD)
                .assuming(OF_A_STANDARD_DAY)
                .example("500 m");
    }

    private static Mechanism.Draft moist(String name, String meaning) {
        return Mechanism.called(name, meaning)
                .takes(AIR_TEMPERATURE, PRESSURE, HUMIDITY)
                .source(CIPM)
                .assuming(USUAL_AIR, FITTED)
                .example("20 °C", "1013.25 hPa", "50 %");
    }

    private static double temperature(double altitude) {
        return SEA_TEMPERATURE - LAPSE * (EARTH * altitude / (EARTH + altitude));
    }

    private static double height(double shareOfTemperature) {
        double geopotential = SEA_TEMPERATURE * (1 - shareOfTemperature) / LAPSE;
        return EARTH * geopotential / (EARTH - geopotential);
    }
}
