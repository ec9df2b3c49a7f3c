package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;

/**
 * A number and a unit, exactly as somebody wrote them: {@code 0.05 mm}, {@code 4.5 in·lbf}, {@code 9 200 rpm}.
 *
 * <p>The number is exact. Converting to another unit and back returns the same number, and {@link #toString()} gives text
 * that {@link #parse} reads back as an equal quantity. Two quantities are equal when number and unit are;
 * {@link #sameAmountAs} asks whether they are as much, whatever the unit.
 */
public final class Quantity {
    private static final int LONGEST = 200;
    private static final double LARGEST = 1e100;
    private static final double SMALLEST = 1e-100;

    private final Exact number;
    private final Unit unit;
    private final double base;

    private Quantity(Exact number, Unit unit) {
        this.number = number;
        this.unit = unit;
        this.base = amount().toDouble();
    }

    /** The same amount as another, whose size is known. */
    private Quantity(Exact number, Unit unit, double base) {
        this.number = number;
        this.unit = unit;
        this.base = base;
    }

    /**
     * A number given as decimal text, so that none of its digits is lost on the way.
     *
     * @throws QuantityException for text that is no number, or beyond what can be measured
     */
    public static Quantity of(String decimal, Unit unit) {
        NumberText head = NumberText.read(bounded(decimal));
        if (!head.rest().isBlank()) {
            throw new QuantityException(
                    "\"" + decimal.strip() + "\" is not a bare number", "give the number alone, such as 0.05");
        }
        return checked(head.value(), unit);
    }

    /** A whole number of a unit. */
    public static Quantity of(long number, Unit unit) {
        return checked(Exact.of(BigDecimal.valueOf(number)), unit);
    }

    /**
     * A number of a unit, taken as the shortest decimal that stands for it: 0.1 is one tenth.
     *
     * @throws QuantityException for NaN, infinities, and numbers beyond what can be measured
     */
    public static Quantity of(double number, Unit unit) {
        if (!Double.isFinite(number)) {
            throw new QuantityException(number + " is not an amount anybody can measure", "give a finite number");
        }
        return checked(Exact.of(BigDecimal.valueOf(number)), unit);
    }

    /**
     * Reads what people write: {@code 0.05 mm}, {@code 2 thou}, {@code 1/4 in}, {@code 9 200 rpm}, {@code -3 K},
     * {@code 0.45 mm per turn}, {@code 95 %}, {@code 1.5e-3 m}. A number alone is a ratio.
     *
     * @throws QuantityException for anything else, saying what is wrong and what to write
     */
    public static Quantity parse(String text) {
        NumberText head = NumberText.read(bounded(text));
        return checked(head.value(), Unit.parse(head.rest()));
    }

    private static String bounded(String text) {
        if (text.length() > LONGEST) {
            throw new QuantityException(
                    "a quantity of " + text.length() + " characters is too long to be one",
                    "write a number and a unit, such as 0.05 mm");
        }
        return text.strip();
    }

    private static Quantity checked(Exact number, Unit unit) {
        double size = Math.abs(number.toDouble());
        if (!number.isZero() && !(size >= SMALLEST && size < LARGEST)) {
            throw new QuantityException(
                    number.text() + " is beyond what can be measured", "numbers go from 1e-100 to just below 1e100");
        }
        Quantity quantity = new Quantity(number, unit);
        if (!Double.isFinite(quantity.base)) {
            throw new QuantityException(quantity + " is beyond what can be measured", "use a smaller number or unit");
        }
        if (unit.dimension().isAbsolute() && quantity.amount().isNegative()) {
            throw new QuantityException(
                    quantity + " is colder than absolute zero",
                    "temperatures go from -273.15 °C up; write a difference in K or Δ°F");
        }
        return quantity;
    }

    private Exact amount() {
        Exact shifted = unit.shift().isZero() ? number : number.plus(unit.shift());
        return shifted.times(unit.factor());
    }

    /** What the number counts. */
    public Unit unit() {
        return unit;
    }

    /** The unit's dimension. */
    public Dimension dimension() {
        return unit.dimension();
    }

    /** The number, in its own unit. */
    public double value() {
        return number.toDouble();
    }

    /** The amount in coherent SI units (m, kg, s, K, rad); kelvins above absolute zero for a temperature. */
    public double base() {
        return base;
    }

    /**
     * The same amount in another unit, exactly.
     *
     * @throws QuantityException when the other unit counts something else
     */
    public Quantity in(Unit other) {
        if (!dimension().equals(other.dimension())) {
            throw new QuantityException(
                    this + " is " + dimension().phrase() + " and cannot be given in " + named(other) + ", a unit of "
                            + other.dimension(),
                    "choose a unit of " + dimension());
        }
        Exact shifted = amount().over(other.factor());
        return new Quantity(other.shift().isZero() ? shifted : shifted.minus(other.shift()), other, base);
    }

    private static String named(Unit unit) {
        return unit.equals(Unit.ONE) ? "plain numbers" : unit.symbol();
    }

    /** The same number as a difference: {@code 1 °C} becomes {@code 1 K}; anything but a temperature stays as it is. */
    public Quantity asDifference() {
        return new Quantity(number, unit.difference());
    }

    /** True when both are as much of the same thing, whatever their units: 25.4 mm and 1 in. */
    public boolean sameAmountAs(Quantity other) {
        return dimension().equals(other.dimension()) && amount().equals(other.amount());
    }

    /** The number as text, exact: a decimal where one exists, else a fraction. */
    public String number() {
        return number.text();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity that && number.equals(that.number) && unit.equals(that.unit);
    }

    @Override
    public int hashCode() {
        return 31 * number.hashCode() + unit.hashCode();
    }

    /** Number and unit, as {@link #parse} reads them. */
    @Override
    public String toString() {
        String digits = number();
        String symbol = unit.after(digits);
        return symbol.isEmpty() ? digits : digits + " " + symbol;
    }
}
