package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Limits as a sentence, for those who have a figure read to them. */
final class LimitWords {

    private LimitWords() {}

    static String of(LimitsHeld.Window limits, UnitSystem units) {
        String aimed = between(limits.lower(), limits.upper(), units);
        boolean wider =
                differ(limits.lower(), limits.toleratedLower()) || differ(limits.upper(), limits.toleratedUpper());
        String tolerated =
                wider ? "; tolerated " + between(limits.toleratedLower(), limits.toleratedUpper(), units) : "";
        return "Limits: " + aimed + tolerated + ".";
    }

    private static String between(@Nullable Estimate lower, @Nullable Estimate upper, UnitSystem units) {
        if (lower != null && upper != null) {
            return words(lower, units) + " to " + words(upper, units);
        }
        return lower == null
                ? "at most " + words(Objects.requireNonNull(upper), units)
                : "at least " + words(lower, units);
    }

    private static boolean differ(@Nullable Estimate limit, @Nullable Estimate wider) {
        return limit != null && wider != null && limit.value() != wider.value();
    }

    private static String words(Estimate limit, UnitSystem units) {
        return Shown.measured(Value.Amount.of(limit), units);
    }
}
