package io.github.leafproof.dsl.coverage;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How many of the things that can be said were shown.
 *
 * @param shown how many were
 * @param asked how many there are
 */
public record Share(int shown, int asked) {

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    /** In per cent, with one decimal; rounded down, so that nothing short of all counts as 100. Where there is nothing, all is shown. */
    public BigDecimal percent() {
        return asked == 0
                ? ALL
                : ALL.multiply(BigDecimal.valueOf(shown))
                        .divide(BigDecimal.valueOf(asked), 1, RoundingMode.FLOOR)
                        .stripTrailingZeros()
                        .max(BigDecimal.ZERO);
    }

    /** As people write it: {@code 81.3 %}. */
    public String words() {
        return percent().toPlainString() + " %";
    }

    /** Whether so many per cent are shown; compared without any rounding. */
    public boolean isAtLeast(BigDecimal wanted) {
        return ALL.multiply(BigDecimal.valueOf(asked == 0 ? 1 : shown))
                        .compareTo(wanted.multiply(BigDecimal.valueOf(asked == 0 ? 1 : asked)))
                >= 0;
    }
}
