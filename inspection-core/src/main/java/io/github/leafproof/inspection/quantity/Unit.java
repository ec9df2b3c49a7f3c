package io.github.leafproof.inspection.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What an amount is counted in: {@code mm}, {@code in·lbf}, {@code mm per turn}.
 *
 * <p>A unit is a product of powers of units with names of their own, so that every product and quotient a shop may need
 * can be written without a table entry. Its factor to coherent SI units (m, kg, s, K, rad) is exact. The temperature
 * scales {@code °C} and {@code °F} also have a zero point; inside a product or quotient, as in {@code per °F}, they count
 * as intervals.
 */
public final class Unit {
    /** The unit of a plain number, written as nothing at all. */
    public static final Unit ONE = new Unit(Map.of());

    private static final List<String> COHERENT = List.of("m", "kg", "s", "K", "rad");

    private final Map<Atom, Integer> powers;
    private final String symbol;
    private final Dimension dimension;
    private final Exact factor;
    private final Exact shift;
    private final double factorAsDouble;
    private final double shiftInBase;

    private Unit(Map<Atom, Integer> powers) {
        this.powers = powers;
        this.symbol = UnitText.write(powers);
        this.factor = powers.entrySet().stream()
                .map(term -> term.getKey().factor().power(term.getValue()))
                .reduce(Exact.ONE, Exact::times);
        Optional<Atom> alone = alone(powers);
        this.shift = alone.map(Atom::shift).orElse(Exact.ZERO);
        this.dimension = alone.map(Atom::dimension).orElseGet(() -> productOf(powers));
        this.factorAsDouble = factor.toDouble();
        this.shiftInBase = shift.times(factor).toDouble();
    }

    private static Optional<Atom> alone(Map<Atom, Integer> powers) {
        return powers.size() == 1
                ? powers.entrySet().stream()
                        .filter(term -> term.getValue() == 1)
                        .map(Map.Entry::getKey)
                        .findFirst()
                : Optional.empty();
    }

    private static Dimension productOf(Map<Atom, Integer> powers) {
        return powers.entrySet().stream()
                .map(term -> term.getKey().dimension().power(term.getValue()))
                .reduce(Dimension.RATIO, Dimension::times);
    }

    static Unit of(Atom atom) {
        return new Unit(Map.of(atom, 1));
    }

    /**
     * Reads a unit: {@code mm}, {@code in·lbf}, {@code mm per turn}, {@code kg/m3}, {@code mm²}, {@code degC},
     * {@code %}; nothing at all is the unit of a plain number. Products are written with {@code ·}, {@code *} or a blank,
     * quotients with {@code /} or {@code per}.
     *
     * @throws QuantityException for a unit that is not known, naming the nearest one that is
     */
    public static Unit parse(String text) {
        // Most have a name of their own; a product, a quotient or a power is never in the table.
        return UnitTable.find(text.strip()).orElseGet(() -> UnitText.read(text, UnitTable::find));
    }

    /**
     * As {@link #parse(String)}, where it is known what the unit counts.
     *
     * @throws QuantityException for a unit that is not known, naming the nearest one that is, else the units of this
     *     dimension
     */
    public static Unit parse(String text, Dimension wanted) {
        try {
            return parse(text);
        } catch (QuantityException unknown) {
            throw unknown.remedy().equals(UnitTable.EXAMPLES)
                    ? new QuantityException(unknown.problem(), UnitTable.unitsOf(wanted))
                    : unknown;
        }
    }

    /** What a spelling that is no unit most likely stands for, as a unit is written; empty for a unit, and for a riddle. */
    public static Optional<String> meant(String spelling) {
        return UnitTable.meant(spelling);
    }

    /** The unit with this symbol or other name, when the table has it; no products, quotients or powers. */
    public static Optional<Unit> find(String symbol) {
        return UnitTable.find(symbol);
    }

    /** The unit of this dimension made of m, kg, s, K and rad alone; °C for an absolute temperature. */
    public static Unit coherent(Dimension dimension) {
        if (dimension.isAbsolute()) {
            return parse("°C");
        }
        int[] exponents = dimension.powers();
        Unit unit = ONE;
        for (int base = 0; base < exponents.length; base++) {
            unit = unit.times(parse(COHERENT.get(base)).power(exponents[base]));
        }
        return unit;
    }

    /** The unit as it is written; {@link #parse} reads it back. */
    public String symbol() {
        return symbol;
    }

    /** The units with names of their own that it is made of. */
    Stream<String> names() {
        return powers.keySet().stream().map(Atom::symbol);
    }

    /** What the unit counts. */
    public Dimension dimension() {
        return dimension;
    }

    /** A number of this unit in coherent SI units; kelvins above absolute zero for a temperature. */
    public double toBase(double number) {
        return number * factorAsDouble + shiftInBase;
    }

    /** An amount in coherent SI units as a number of this unit. */
    public double fromBase(double base) {
        return base / factorAsDouble - shift.toDouble();
    }

    /** An uncertainty or difference in coherent SI units as a number of this unit, its zero point left aside. */
    public double differenceFromBase(double base) {
        return base / factorAsDouble;
    }

    /** The unit of differences on this scale: K for °C, Δ°F for °F, itself for every other unit. */
    public Unit difference() {
        return dimension.isAbsolute() ? UnitTable.intervalOf(this) : this;
    }

    /** The product of two units. */
    public Unit times(Unit other) {
        return combined(other, 1);
    }

    /** The quotient of two units. */
    public Unit dividedBy(Unit other) {
        return combined(other, -1);
    }

    /** A power of this unit; zero gives the unit of a plain number. */
    public Unit power(int exponent) {
        return ONE.combined(this, exponent);
    }

    private Unit combined(Unit other, int exponent) {
        Map<Atom, Integer> together = new LinkedHashMap<>(powers);
        other.powers.forEach((atom, power) -> together.merge(atom, power * exponent, Integer::sum));
        together.values().removeIf(power -> power == 0);
        return new Unit(together);
    }

    Exact factor() {
        return factor;
    }

    Exact shift() {
        return shift;
    }

    /** The unit as it follows a number: three turns, but one turn. */
    String after(String number) {
        boolean several = symbol.equals("turn") && !number.equals("1");
        return several ? "turns" : symbol;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Unit that && symbol.equals(that.symbol);
    }

    @Override
    public int hashCode() {
        return symbol.hashCode();
    }

    @Override
    public String toString() {
        return symbol;
    }
}
