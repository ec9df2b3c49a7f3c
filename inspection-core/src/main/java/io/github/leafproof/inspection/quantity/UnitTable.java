package io.github.leafproof.inspection.quantity;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every unit that has a name of its own, one line each: symbol, what it is in units above it, other spellings.
 *
 * <p>The definitions are those of the standards, exact: the inch of 25.4 mm and the pound of 0.453 592 37 kg (agreement of
 * 1959), the standard acceleration of 9.806 65 m/s², the US gallon of 231 cubic inches, the Imperial gallon of 4.546 09 L,
 * and the conventional columns of mercury and water as NIST SP 811 (2008) Appendix B.8 gives them.
 */
final class UnitTable {
    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();
    private static final Map<String, String> SYMBOLS = new LinkedHashMap<>();

    static {
        base("m", Dimension.LENGTH, "metre", "metres");
        base("kg", Dimension.MASS);
        base("s", Dimension.TIME, "second", "seconds");
        base("K", Dimension.TEMPERATURE_DIFFERENCE, "Δ°C", "deltaC");
        base("rad", Dimension.ANGLE);

        unit("km", "1000 m");
        unit("cm", "0.01 m");
        unit("mm", "0.001 m", "millimetre", "millimetres");
        unit("µm", "0.001 mm", "μm", "um", "micron", "microns");
        unit("in", "25.4 mm", "inch", "inches");
        unit("thou", "0.001 in", "mil");
        unit("µin", "0.001 thou", "μin", "uin");
        unit("ft", "12 in", "foot", "feet");
        unit("yd", "3 ft", "yard", "yards");
        unit("mi", "1760 yd", "mile", "miles");

        unit("L", "0.001 m³", "l", "litre", "litres");
        unit("mL", "0.001 L", "ml");
        unit("µL", "0.001 mL", "μL", "uL");
        alias("cm³", "cc");
        unit("gal", "231 in³");
        unit("pint", "1/8 gal");
        unit("floz", "1/16 pint");
        unit("impgal", "4.54609 L");
        unit("impfloz", "1/160 impgal");

        unit("g", "0.001 kg", "gram", "grams");
        unit("mg", "0.001 g");
        unit("lb", "0.45359237 kg", "lbs");
        unit("oz", "1/16 lb");
        unit("gr", "1/7000 lb", "grain", "grains");

        unit("ms", "0.001 s");
        unit("min", "60 s");
        unit("h", "60 min");
        unit("d", "24 h", "day", "days");

        scale("°C", "1 K", "273.15", "degC");
        scale("°F", "5/9 K", "459.67", "degF");
        unit("Δ°F", "5/9 K", "deltaF");

        unit("turn", "2·π^1 rad", "turns", "rev");
        unit("deg", "1/360 turn", "°", "degree", "degrees");
        unit("arcmin", "1/60 deg");
        unit("rpm", "1 turn/min");

        unit("N", "1 kg·m/s²");
        unit("kN", "1000 N");
        unit("kgf", "9.80665 N", "kp");
        unit("lbf", "9.80665 lb·m/s²");
        unit("ozf", "1/16 lbf");

        unit("Pa", "1 N/m²");
        unit("hPa", "100 Pa");
        unit("kPa", "1000 Pa");
        unit("MPa", "1000 kPa");
        unit("bar", "100 kPa");
        unit("mbar", "0.001 bar");
        unit("psi", "1 lbf/in²");
        unit("atm", "101325 Pa");
        unit("at", "1 kgf/cm²");
        unit("torr", "1/760 atm", "Torr");
        unit("mmHg", "133.322387415 Pa");
        unit("inHg", "25.4 mmHg");
        unit("mmH2O", "9.80665 Pa", "mmH₂O");
        unit("inH2O", "25.4 mmH2O", "inH₂O");

        unit("J", "1 N·m");
        unit("kJ", "1000 J");
        unit("Btu", "1055.05585262 J");
        unit("W", "1 J/s");
        unit("kW", "1000 W");
        unit("hp", "550 ft·lbf/s");
        unit("PS", "75 kgf·m/s");
        unit("mph", "1 mi/h");

        unit("%", "0.01", "percent");
        unit("ppm", "0.000001");
    }

    // Spellings that mean two things at once, or mean something else than was meant: never read, only answered.
    private static final Map<String, String> TRAPS = Map.ofEntries(
            Map.entry("C", "°C for a temperature, K for a difference"),
            Map.entry("F", "°F for a temperature, Δ°F (or deltaF) for a difference"),
            Map.entry("\"", "in"),
            Map.entry("'", "ft for a length, arcmin for an angle"),
            Map.entry("in-lb", "in·lbf"),
            Map.entry("in-lbf", "in·lbf"),
            Map.entry("ft-lb", "ft·lbf"),
            Map.entry("ft-lbf", "ft·lbf"),
            Map.entry("oz-in", "ozf·in"),
            Map.entry("kg-cm", "kgf·cm"),
            Map.entry("sec", "s"),
            Map.entry("hr", "h"),
            Map.entry("hour", "h"),
            Map.entry("hours", "h"),
            Map.entry("minute", "min for time, arcmin for an angle"),
            Map.entry("minutes", "min for time, arcmin for an angle"),
            Map.entry("fl oz", "floz"),
            Map.entry("HP", "hp, or PS for metric horsepower"),
            Map.entry("Nm", "N·m"),
            Map.entry("Ncm", "N·cm"),
            Map.entry("kgcm", "kgf·cm"),
            Map.entry("inlb", "in·lbf"),
            Map.entry("inlbs", "in·lbf"),
            Map.entry("ftlb", "ft·lbf"),
            Map.entry("ftlbs", "ft·lbf"),
            Map.entry("ozin", "ozf·in"),
            Map.entry("C°", "°C"),
            Map.entry("F°", "°F"),
            Map.entry("Celsius", "°C for a temperature, K for a difference"),
            Map.entry("Fahrenheit", "°F for a temperature, Δ°F (or deltaF) for a difference"),
            Map.entry("Kelvin", "K"),
            Map.entry("kelvin", "K"));

    /** How units look, for who wrote something that is like none of them. */
    static final String EXAMPLES =
            "units are written as mm, °C, bar, rpm, g or N·m, and products and quotients of these as mm per turn";

    private UnitTable() {}

    private static void base(String symbol, Dimension dimension, String... others) {
        enter(Atom.base(symbol, dimension), others);
    }

    private static void unit(String symbol, String definition, String... others) {
        NumberText number = NumberText.read(definition);
        Unit in = UnitText.read(number.rest(), UnitTable::find);
        enter(new Atom(symbol, in.dimension(), number.value().times(in.factor()), Exact.ZERO), others);
    }

    private static void scale(String symbol, String degree, String shift, String... others) {
        NumberText number = NumberText.read(degree);
        Exact zero = NumberText.read(shift).value();
        enter(new Atom(symbol, Dimension.TEMPERATURE, number.value(), zero), others);
    }

    private static void alias(String unit, String... others) {
        names(UnitText.read(unit, UnitTable::find), others);
    }

    private static void enter(Atom atom, String... others) {
        Unit unit = Unit.of(atom);
        names(unit, atom.symbol());
        names(unit, others);
        SYMBOLS.put(atom.symbol(), atom.symbol());
    }

    private static void names(Unit unit, String... names) {
        for (String name : names) {
            if (UNITS.put(name, unit) != null) {
                throw new IllegalStateException("two units are called " + name);
            }
        }
    }

    static Optional<Unit> find(String name) {
        return Optional.ofNullable(UNITS.get(name));
    }

    static List<String> symbols() {
        return List.copyOf(SYMBOLS.keySet());
    }

    static Set<String> names() {
        return Collections.unmodifiableSet(UNITS.keySet());
    }

    static Unit intervalOf(Unit scale) {
        return find(scale.symbol().equals("°F") ? "Δ°F" : "K").orElseThrow();
    }

    /** What to write in place of a unit that is not known. */
    static String suggestion(String written) {
        return meant(written)
                .map(meant -> "write " + meant)
                .or(() -> Spelling.nearest(written, names())
                        .map(known -> "did you mean " + known + "?" + caseNote(known, written)))
                .orElse(EXAMPLES);
    }

    static Optional<String> meant(String written) {
        return Optional.ofNullable(TRAPS.get(written));
    }

    /** The units of a dimension in a sentence, those that people use first. */
    static String unitsOf(Dimension dimension) {
        Set<String> symbols = new LinkedHashSet<>();
        for (UnitSystem system : UnitSystem.values()) {
            symbols.add(system.unitFor(dimension, 1).symbol());
        }
        symbols().stream()
                .filter(symbol -> find(symbol).orElseThrow().dimension().equals(dimension))
                .forEach(symbols::add);
        symbols.remove("");
        return "units of " + dimension.words() + " are " + String.join(", ", symbols);
    }

    private static String caseNote(String known, String written) {
        return Spelling.differsOnlyInCase(known, written) ? " Capital letters count in units" : "";
    }
}
