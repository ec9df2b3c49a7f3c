package io.github.leafproof.inspection.quantity;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The units in which a reader likes to see results: the metric ones, or inches and their kin. */
public enum UnitSystem {
    METRIC,
    INCH;

    private static final double SHORT = 0.05 * 0.0254;
    private static final double TURN = 2 * Math.PI;
    private static final double TEN_MINUTES = 600;
    private static final double TEN_HOURS = 36_000;
    private static final double TWO_DAYS = 172_800;
    private static final double WEARING = 1e-6;

    private static final Set<String> INCHES = Set.of(
            "in", "thou", "µin", "ft", "yd", "mi", "mph", "gal", "pint", "floz", "impgal", "impfloz", "lb", "oz", "gr",
            "°F", "Δ°F", "lbf", "ozf", "psi", "inHg", "inH2O", "Btu", "hp");

    private static final Set<String> OF_BOTH =
            Set.of("s", "ms", "min", "h", "d", "rad", "turn", "deg", "arcmin", "rpm", "%", "ppm");

    private record Pair(String metric, String inch) {}

    private static final Map<Dimension, Pair> USUAL = new HashMap<>();

    static {
        usual(Dimension.RATIO, "", "");
        usual(Dimension.LENGTH, "mm", "in");
        usual(Dimension.AREA, "mm²", "in²");
        usual(Dimension.VOLUME, "mL", "floz");
        usual(Dimension.MASS, "g", "oz");
        usual(Dimension.TIME, "s", "s");
        usual(Dimension.TEMPERATURE, "°C", "°F");
        usual(Dimension.TEMPERATURE_DIFFERENCE, "K", "Δ°F");
        usual(Dimension.THERMAL_EXPANSION, "per K", "per °F");
        usual(Dimension.ANGLE, "deg", "deg");
        usual(Dimension.LENGTH_PER_TURN, "mm per turn", "thou per turn");
        usual(Dimension.ROTATIONAL_SPEED, "rpm", "rpm");
        usual(Dimension.SPEED, "m/s", "ft/s");
        usual(Dimension.FORCE, "N", "lbf");
        usual(Dimension.TORQUE, "N·m", "in·lbf");
        usual(Dimension.PRESSURE, "kPa", "psi");
        usual(Dimension.POWER, "W", "hp");
        usual(Dimension.DENSITY, "kg/m³", "lb/ft³");
        usual(Dimension.VOLUME_FLOW, "mL/min", "floz/min");
        usual(Dimension.MASS_FLOW, "g/min", "oz/min");
        usual(Dimension.SPECIFIC_ENERGY, "kJ/kg", "Btu/lb");
    }

    private static void usual(Dimension dimension, String metric, String inch) {
        USUAL.put(dimension, new Pair(metric, inch));
    }

    /** Whether a reader who likes this system takes an amount in that unit as it stands; times and turns are of both. */
    public boolean isAtHome(Unit unit) {
        return unit.names().allMatch(name -> OF_BOTH.contains(name) || INCHES.contains(name) == (this == INCH));
    }

    /**
     * The unit to show amounts of a dimension in.
     *
     * <p>Short lengths read best in thou, an angle of a turn or more in turns, a time of ten minutes or more in minutes,
     * of ten hours or more in hours and of two days or more in days. What moves by less than a micrometre in a second wears,
     * and is shown for each hour. A dimension without a usual unit is shown in the base units of the SI.
     *
     * @param typicalBaseValue the size of what is to be shown, in coherent SI units
     */
    public Unit unitFor(Dimension dimension, double typicalBaseValue) {
        double size = Math.abs(typicalBaseValue);
        if (this == INCH && dimension.equals(Dimension.LENGTH) && size < SHORT) {
            return Unit.parse("thou");
        }
        if (dimension.equals(Dimension.ANGLE) && size >= TURN) {
            return Unit.parse("turn");
        }
        if (dimension.equals(Dimension.TIME) && size >= TEN_MINUTES) {
            return Unit.parse(size < TEN_HOURS ? "min" : size < TWO_DAYS ? "h" : "d");
        }
        if (dimension.equals(Dimension.SPEED) && size > 0 && size < WEARING) {
            return Unit.parse(this == METRIC ? "mm/h" : "thou/h");
        }
        Pair usual = USUAL.get(dimension);
        return usual == null ? Unit.coherent(dimension) : Unit.parse(this == METRIC ? usual.metric() : usual.inch());
    }
}
