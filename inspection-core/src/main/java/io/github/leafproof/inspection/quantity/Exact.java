package io.github.leafproof.inspection.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Objects;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * An exact number: a fraction times a whole power of π.
 *
 * <p>The factors between units are exact by definition (25.4 mm to the inch), and a turn is 2π radians, so fractions with
 * a power of π hold all of them. A conversion there and back therefore gives the number it began with.
 *
 * <p>Nearly every number of a bench fits into a fraction of two longs, and is computed with as one. Where that overflows, a
 * fraction of any length takes over; a number that fits is never held as one, so that there is one form to compare.
 */
final class Exact {
    static final Exact ZERO = new Exact(0, 1, 0);
    static final Exact ONE = new Exact(1, 1, 0);

    private static final BigInteger TWO = BigInteger.TWO;
    private static final BigInteger FIVE = BigInteger.valueOf(5);
    private static final int LONGEST_PLAIN_NUMBER = 24;
    private static final int LONGEST_PLAIN_FRACTION = 40;
    /** Whole numbers up to here are doubles, to the last bit. */
    private static final long WHOLE_DOUBLES = 1L << 53;

    private static final long[] TENS = new long[19];

    static {
        TENS[0] = 1;
        for (int power = 1; power < TENS.length; power++) {
            TENS[power] = 10 * TENS[power - 1];
        }
    }

    /** Not in lowest terms: whoever needs these reduces, and the many who only compute on do not pay for it. */
    private final long over;

    /** Above zero. */
    private final long under;

    private final @Nullable BigFraction large;
    private final int pi;

    private Exact(long over, long under, int pi) {
        this.over = over;
        this.under = under;
        this.large = null;
        this.pi = over == 0 ? 0 : pi;
    }

    private Exact(BigFraction large, int pi) {
        this.over = 0;
        this.under = 1;
        this.large = large;
        this.pi = pi;
    }

    private static Exact of(BigFraction ratio, int pi) {
        if (ratio.getDenominator().signum() < 0) {
            return of(
                    BigFraction.of(
                            ratio.getNumerator().negate(),
                            ratio.getDenominator().negate()),
                    pi);
        }
        boolean fits = ratio.getNumerator().bitLength() < Long.SIZE
                && ratio.getDenominator().bitLength() < Long.SIZE;
        return fits
                ? new Exact(
                        ratio.getNumerator().longValue(), ratio.getDenominator().longValue(), pi)
                : new Exact(ratio, pi);
    }

    static Exact of(BigDecimal decimal) {
        BigInteger digits = decimal.unscaledValue();
        if (decimal.scale() >= 0 && decimal.scale() < TENS.length && digits.bitLength() < Long.SIZE) {
            return decimal(digits.longValue(), decimal.scale());
        }
        BigInteger power = BigInteger.TEN.pow(Math.abs(decimal.scale()));
        return of(decimal.scale() >= 0 ? BigFraction.of(digits, power) : BigFraction.of(digits.multiply(power)), 0);
    }

    /** Digits with the decimal point so many places from their end, 0 to 18. */
    static Exact decimal(long digits, int places) {
        return new Exact(digits, TENS[places], 0);
    }

    static Exact of(BigInteger numerator, BigInteger denominator) {
        return of(BigFraction.of(numerator, denominator), 0);
    }

    /** The same fraction, times this power of π. */
    Exact timesPi(int power) {
        return large == null ? new Exact(over, under, pi + power) : new Exact(large, pi + power);
    }

    Exact times(Exact other) {
        if (fits(other) && fits(over, other.over) && fits(under, other.under)) {
            return new Exact(over * other.over, under * other.under, pi + other.pi);
        }
        return of(ratio().multiply(other.ratio()), pi + other.pi);
    }

    Exact over(Exact other) {
        if (fits(other) && other.over > 0 && fits(over, other.under) && fits(under, other.over)) {
            return new Exact(over * other.under, under * other.over, pi - other.pi);
        }
        return of(ratio().divide(other.ratio()), pi - other.pi);
    }

    Exact power(int exponent) {
        return of(ratio().pow(exponent), pi * exponent);
    }

    /** The sum of two fractions; only temperature scales add, and they have no π in them. */
    Exact plus(Exact other) {
        if (fits(other) && fits(over, other.under) && fits(other.over, under) && fits(under, other.under)) {
            long one = over * other.under;
            long two = other.over * under;
            long sum = one + two;
            if (((one ^ sum) & (two ^ sum)) >= 0) {
                return new Exact(sum, under * other.under, 0);
            }
        }
        return of(ratio().add(other.ratio()), 0);
    }

    Exact minus(Exact other) {
        return plus(other.negated());
    }

    Exact negated() {
        return large == null && over != Long.MIN_VALUE ? new Exact(-over, under, pi) : of(ratio().negate(), pi);
    }

    private boolean fits(Exact other) {
        return large == null && other.large == null;
    }

    /** Whether a product is a long. */
    private static boolean fits(long a, long b) {
        return Math.multiplyHigh(a, b) == (a * b) >> (Long.SIZE - 1);
    }

    boolean isZero() {
        return large == null && over == 0;
    }

    boolean isNegative() {
        return large == null ? over < 0 : large.signum() < 0;
    }

    double toDouble() {
        double ratio = Math.abs(over) <= WHOLE_DOUBLES && under <= WHOLE_DOUBLES && large == null
                // One division of two doubles is rounded once, as the fraction is.
                ? (double) over / under
                : ratio().doubleValue();
        return pi == 0 ? ratio : ratio * Math.pow(Math.PI, pi);
    }

    /** In lowest terms. */
    private BigFraction ratio() {
        return large == null ? BigFraction.of(BigInteger.valueOf(over), BigInteger.valueOf(under)) : large;
    }

    @Override
    public boolean equals(Object object) {
        if (!(object instanceof Exact other) || pi != other.pi) {
            return false;
        }
        if (large != null || other.large != null) {
            return Objects.equals(large, other.large);
        }
        // Cross products of 128 bits each.
        return over * other.under == other.over * under
                && Math.multiplyHigh(over, other.under) == Math.multiplyHigh(other.over, under);
    }

    @Override
    public int hashCode() {
        return 31 * ratio().hashCode() + pi;
    }

    @Override
    public String toString() {
        return text();
    }

    /** Text that gives the same number when read again: a decimal where one exists, else a fraction. */
    String text() {
        String number = terminates() ? decimal() : fraction();
        return pi == 0 ? number : number + "·π^" + pi;
    }

    private boolean terminates() {
        BigInteger rest = without(TWO, ratio().getDenominator());
        return without(FIVE, rest).equals(BigInteger.ONE);
    }

    private String decimal() {
        BigFraction ratio = ratio();
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
        BigFraction ratio = ratio();
        String plain = ratio.getNumerator() + "/" + ratio.getDenominator();
        return plain.length() <= LONGEST_PLAIN_FRACTION ? plain : fractionAndPowerOfTen();
    }

    private String fractionAndPowerOfTen() {
        BigFraction ratio = ratio();
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
