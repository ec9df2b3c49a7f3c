package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact number: a fraction times a whole power of π.
 *
 * <p>The factors between units are exact by definition (25.4 mm to the inch), and a turn is 2π radians, so fractions with
 * a power of π hold all of them. A conversion there and back therefore gives the number it began with.
 */
record Exact(BigFraction ratio, int pi) {
    static final Exact ZERO = new Exact(BigFraction.ZERO, 0);
    static final Exact ONE = new Exact(BigFraction.ONE, 0);

    private static final BigInteger TWO = BigInteger.TWO;
    private static final BigInteger FIVE = BigInteger.valueOf(5);
    private static final int LONGEST_PLAIN_NUMBER = 24;
    private static final int LONGEST_PLAIN_FRACTION = 40;

    Exact {
        pi = ratio.signum() == 0 ? 0 : pi;
    }

    static Exact of(BigDecimal decimal) {
        BigInteger digits = decimal.unscaledValue();
        BigInteger power = BigInteger.TEN.pow(Math.abs(decimal.scale()));
        return new Exact(
                decimal.scale() >= 0 ? BigFraction.of(digits, power) : BigFraction.of(digits.multiply(power)), 0);
    }

    static Exact of(BigInteger numerator, BigInteger denominator) {
        return new Exact(BigFraction.of(numerator, denominator), 0);
    }

    Exact times(Exact other) {
        return new Exact(ratio.multiply(other.ratio), pi + other.pi);
    }

    Exact over(Exact other) {
        return new Exact(ratio.divide(other.ratio), pi - other.pi);
    }

    Exact power(int exponent) {
        return new Exact(ratio.pow(exponent), pi * exponent);
    }

    /** The sum of two fractions; only temperature scales add, and they have no π in them. */
    Exact plus(Exact other) {
        return new Exact(ratio.add(other.ratio), 0);
    }

    Exact minus(Exact other) {
        return new Exact(ratio.subtract(other.ratio), 0);
    }

    boolean isZero() {
        return ratio.signum() == 0;
    }

    boolean isNegative() {
        return ratio.signum() < 0;
    }

    double toDouble() {
        return ratio.doubleValue() * Math.pow(Math.PI, pi);
    }

    /** Text that gives the same number when read again: a decimal where one exists, else a fraction. */
    String text() {
        String number = terminates() ? decimal() : fraction();
        return pi == 0 ? number : number + "·π^" + pi;
    }

    private boolean terminates() {
        BigInteger rest = without(TWO, ratio.getDenominator());
        return without(FIVE, rest).equals(BigInteger.ONE);
    }

    private String decimal() {
        BigInteger denominator = ratio.getDenominator();
        int places = Math.max(count(TWO, denominator), count(FIVE, denominator));
        BigInteger digits =
                ratio.getNumerator().multiply(BigInteger.TEN.pow(places)).divide(denominator);
        BigDecimal decimal = new BigDecimal(digits, places).stripTrailingZeros();
        String plain = decimal.toPlainString();
        return plain.length() <= LONGEST_PLAIN_NUMBER ? plain : scientific(decimal);
    }

    private static String scientific(BigDecimal decimal) {
        int exponent = decimal.precision() - decimal.scale() - 1;
        BigDecimal mantissa = decimal.movePointLeft(exponent);
        return mantissa.toPlainString() + "e" + exponent;
    }

    private String fraction() {
        String plain = ratio.getNumerator() + "/" + ratio.getDenominator();
        return plain.length() <= LONGEST_PLAIN_FRACTION ? plain : fractionAndPowerOfTen();
    }

    private String fractionAndPowerOfTen() {
        BigInteger denominator = ratio.getDenominator();
        int places = Math.max(count(TWO, denominator), count(FIVE, denominator));
        BigFraction whole = ratio.multiply(BigInteger.TEN.pow(places));
        BigDecimal numerator = new BigDecimal(whole.getNumerator()).stripTrailingZeros();
        int exponent = -numerator.scale() - places;
        return numerator.unscaledValue() + "/" + whole.getDenominator() + "·10^" + exponent;
    }

    private static BigInteger without(BigInteger prime, BigInteger number) {
        return number.divide(prime.pow(count(prime, number)));
    }

    private static int count(BigInteger prime, BigInteger number) {
        int count = 0;
        for (BigInteger rest = number; rest.mod(prime).signum() == 0; rest = rest.divide(prime)) {
            count++;
        }
        return count;
    }
}
