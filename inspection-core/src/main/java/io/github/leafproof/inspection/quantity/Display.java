package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How values are shown to people: no digit that the uncertainty does not bear, none lost that it does.
 *
 * <p>A value is rounded to the place of the second significant digit of its standard uncertainty. An exact value is shown
 * as its shortest decimal of at most six significant digits, and those before the dot in any case: enough for whatever is
 * read at a bench, and few enough to be read aloud.
 */
public final class Display {
    private static final int UNCERTAIN_DIGITS = 2;
    private static final int EXACT_DIGITS = 6;
    private static final int DIGITS_OF_A_DOUBLE = 16;
    private static final int MOST_PADDING_ZEROS = 15;

    private Display() {}

    /** The value alone: {@code 0.0500 mm}. */
    public static String of(Estimate estimate, UnitSystem system) {
        return of(estimate.value(), estimate.dimension(), estimate.standardUncertainty(), unit(estimate, system));
    }

    /**
     * A value in a chosen unit.
     *
     * @param base the value in coherent SI units
     * @param dimension what it is an amount of
     * @param u its standard uncertainty in coherent SI units; zero for an exact value
     * @param unit the unit to show it in, of the same dimension
     */
    public static String of(double base, Dimension dimension, double u, Unit unit) {
        if (!unit.dimension().equals(dimension)) {
            throw new IllegalArgumentException(dimension.phrase() + " cannot be shown in " + unit);
        }
        double number = unit.fromBase(base);
        String digits = u == 0 ? shortest(number) : rounded(number, place(unit.differenceFromBase(u), number));
        return amount(digits, unit);
    }

    /** The value and how well it is known: {@code 0.1100 mm (u 0.0010 mm)}. An exact value stands alone. */
    public static String withUncertainty(Estimate estimate, UnitSystem system) {
        String value = of(estimate, system);
        if (estimate.isExact()) {
            return value;
        }
        Unit unit = unit(estimate, system).difference();
        double u = unit.differenceFromBase(estimate.standardUncertainty());
        return value + " (u " + amount(rounded(u, place(u, u)), unit) + ")";
    }

    private static Unit unit(Estimate estimate, UnitSystem system) {
        return system.unitFor(estimate.dimension(), estimate.value());
    }

    /** A number with so many digits after the decimal dot; never an exponent for numbers of ordinary size. */
    public static String number(double value, int digits) {
        return rounded(value, -digits);
    }

    /**
     * A probability in per cent, never rounded towards certainty: {@code 97 %}, {@code 99.5 %}, {@code > 99.9 %},
     * {@code < 0.1 %}. Only 1 itself is {@code 100 %}; 94.96 % is shown as 94 %, for 95 % has not been reached.
     */
    public static String percent(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability lies from 0 to 1, not at " + probability);
        }
        if (probability == 0 || probability == 1) {
            return probability == 0 ? "0 %" : "100 %";
        }
        if (probability > 0.999 || probability < 0.001) {
            return probability > 0.5 ? "> 99.9 %" : "< 0.1 %";
        }
        boolean nearCertain = probability > 0.99 || probability < 0.01;
        RoundingMode cautious = probability < 0.5 ? RoundingMode.CEILING : RoundingMode.FLOOR;
        BigDecimal shown = BigDecimal.valueOf(probability).movePointRight(2).setScale(nearCertain ? 1 : 0, cautious);
        return plain(shown.stripTrailingZeros()) + " %";
    }

    /** The shortest decimal of at most six significant digits, and those before the dot in any case. */
    static String shortest(double value) {
        int before = exponent(BigDecimal.valueOf(value)) + 1;
        int digits = Math.min(Math.max(EXACT_DIGITS, before), DIGITS_OF_A_DOUBLE - 1);
        return plain(significantly(value, digits).stripTrailingZeros());
    }

    /** So many significant digits, trailing zeros left out. */
    static String significant(double value, int digits) {
        return plain(significantly(value, digits).stripTrailingZeros());
    }

    /** Figures and the unit that follows them: {@code 1.96 turns}, but {@code 1 turn}; a plain number stands alone. */
    public static String amount(String digits, Unit unit) {
        String symbol = unit.after(digits);
        return symbol.isEmpty() ? digits : digits + " " + symbol;
    }

    // The exponent of ten at which a value stops meaning anything: that of the second digit of u, after u is rounded,
    // but
    // no further down than a double goes.
    private static int place(double u, double value) {
        BigDecimal two = significantly(Math.abs(u), UNCERTAIN_DIGITS);
        return Math.max(
                exponent(two) - UNCERTAIN_DIGITS + 1, exponent(BigDecimal.valueOf(value)) - DIGITS_OF_A_DOUBLE + 1);
    }

    private static int exponent(BigDecimal number) {
        return number.precision() - number.scale() - 1;
    }

    private static String rounded(double value, int place) {
        BigDecimal exact = BigDecimal.valueOf(value);
        BigDecimal shown = exact.setScale(-place, RoundingMode.HALF_EVEN);
        return plain(place > 0 ? shown.setScale(0) : shown);
    }

    private static BigDecimal significantly(double value, int digits) {
        return BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
    }

    // Written out, unless that would take more padding zeros than anybody counts. Zero has no sign.
    private static String plain(BigDecimal number) {
        if (number.signum() == 0) {
            int places = Math.max(0, Math.min(number.scale(), MOST_PADDING_ZEROS));
            return BigDecimal.ZERO.setScale(places).toPlainString();
        }
        String text = number.toPlainString();
        return text.length() <= number.precision() + MOST_PADDING_ZEROS ? text : number.toString();
    }
}
