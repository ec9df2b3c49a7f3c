package io.github.leafproof.dsl.report;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Times of running as people write them down, in hours. */
final class Hours {

    static final Unit UNIT = Unit.parse("h");

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.DOWN);

    private Hours() {}

    /** A time until which something is sure: two digits, never rounded up. */
    static BigDecimal of(double seconds) {
        return new BigDecimal(UNIT.fromBase(seconds)).round(TWO_DIGITS).stripTrailingZeros();
    }

    static String words(BigDecimal hours) {
        return hours.toPlainString() + " h";
    }

    /** That long after another time. */
    static String after(Quantity before, BigDecimal hours) {
        BigDecimal begun = BigDecimal.valueOf(UNIT.fromBase(before.base()));
        return begun.add(hours)
                        .setScale(Math.max(hours.scale(), 0), RoundingMode.DOWN)
                        .toPlainString()
                + " h";
    }
}
