package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Range;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a comparison with limits can come out as. It passes only with a confidence of a half or more, so that the value
 * then reads within the limits; and it fails to one side only where it reads beyond the limit of that side.
 */
final class Held {

    /** More than the last bits of a calculation, which judging lets pass, and far less than anybody measures. */
    private static final double SLACK = 4e-12;

    private final LimitsHeld held;
    private final Possible subject;
    private final @Nullable Range lower;
    private final @Nullable Range upper;
    private final List<Range> tolerated = new ArrayList<>();
    private boolean exactLimits = true;

    Held(Possibilities possibilities, LimitsHeld held) {
        this.held = held;
        this.subject = possibilities.of(held.subject());
        this.lower = held.lower() == null ? null : limit(possibilities, held.lower());
        this.upper = held.upper() == null ? null : limit(possibilities, held.upper());
        for (Formula each : held.tolerated()) {
            tolerated.add(limit(possibilities, each));
        }
    }

    private Range limit(Possibilities possibilities, Formula limit) {
        Possible.Numbers numbers = possibilities.of(limit).number();
        exactLimits &= numbers.exact();
        return numbers.range();
    }

    /** Whether the lower limit lies above the upper one, whatever happens: then nothing is judged. */
    boolean isUpsideDown() {
        return lower != null && upper != null && isSurelyBelow(upper.high(), lower.low());
    }

    Set<Fate> fates() {
        Set<Fate> fates = EnumSet.noneOf(Fate.class);
        if (isUpsideDown()) {
            return fates;
        }
        boolean felt = !(subject instanceof Possible.Numbers);
        boolean exact = subject instanceof Possible.Numbers numbers && numbers.exact() && exactLimits;
        Range value = subject.number().range();
        if (!(exact && held.strict() && isAtLimit(value)) && isWithin(value, leastLow(lower), mostHigh(upper))) {
            fates.add(Fate.PASSES);
        }
        if (!tolerated.isEmpty() && isWithin(value, toleratedLow(), toleratedHigh())) {
            fates.add(Fate.TOLERATED);
        }
        boolean low = lower != null && (isBeyond(value.low(), lower.high()) || held.strict());
        boolean high = upper != null && (isBeyond(upper.low(), value.high()) || held.strict());
        boolean either = !exact && lower != null && upper != null;
        if (low || (felt && lower != null)) {
            fates.add(Fate.LOW);
        }
        if (high || (felt && upper != null)) {
            fates.add(Fate.HIGH);
        }
        if (low || high || felt || either) {
            fates.add(Fate.FAILS);
        }
        if (!exact) {
            fates.add(Fate.OPEN);
        }
        if (felt) {
            fates.add(Fate.CONTRADICTED);
        }
        return fates;
    }

    /** The numbers among which the value lies where it is let pass, tolerated or not. */
    Range whereHeld() {
        return new Range(Math.min(toleratedLow(), toleratedHigh()), Math.max(toleratedLow(), toleratedHigh()));
    }

    /** From where on the value lies where it is too high; only for a limit on that one side. */
    @Nullable
    Range whereFailed() {
        if (upper != null && lower == null) {
            return new Range(upper.low() - slack(upper.low()), Double.POSITIVE_INFINITY);
        }
        return lower != null && upper == null
                ? new Range(Double.NEGATIVE_INFINITY, lower.high() + slack(lower.high()))
                : null;
    }

    private double toleratedLow() {
        double low = leastLow(lower);
        for (Range margin : tolerated) {
            low = Math.min(low, margin.low());
        }
        return low - slack(low);
    }

    private double toleratedHigh() {
        double high = mostHigh(upper);
        for (Range margin : tolerated) {
            high = Math.max(high, margin.high());
        }
        return high + slack(high);
    }

    private static double leastLow(@Nullable Range limit) {
        return limit == null ? Double.NEGATIVE_INFINITY : limit.low();
    }

    private static double mostHigh(@Nullable Range limit) {
        return limit == null ? Double.POSITIVE_INFINITY : limit.high();
    }

    private static boolean isWithin(Range value, double low, double high) {
        return !isSurelyBelow(value.high(), low) && !isSurelyBelow(high, value.low());
    }

    /** Whether no number lies beyond a strict limit by more than the last bits. */
    private boolean isAtLimit(Range value) {
        double low = leastLow(lower);
        double high = mostHigh(upper);
        return value.low() >= high - slack(high) || value.high() <= low + slack(low);
    }

    /** Whether one number is less than the other by more than the last bits. */
    private static boolean isBeyond(double number, double limit) {
        return number + 2 * slack(number) < limit;
    }

    static double slack(double number) {
        return Double.isInfinite(number) ? 0 : SLACK * Math.abs(number);
    }

    private static boolean isSurelyBelow(double number, double limit) {
        return number + slack(number) < limit - slack(limit);
    }

    /** Whether two ranges nearly touch. */
    static boolean isNear(Range one, Range two) {
        return isWithin(one, two.low(), two.high());
    }
}
