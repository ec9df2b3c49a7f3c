package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import org.jspecify.annotations.Nullable;

/**
 * How surely a value lies between two limits, when the limits may be uncertain themselves (a limit computed from a
 * measured length, say). With exact limits, the usual case, these are the core's own rules.
 */
final class ConformityWithin {

    private ConformityWithin() {}

    /**
     * A reading against limits: JCGM 106 clause 7. An uncertain limit is taken on the reading's side of the comparison:
     * their difference, in which shared errors cancel, is judged against zero.
     */
    static Conformity ofReading(Estimate reading, @Nullable Estimate lower, @Nullable Estimate upper, boolean strict) {
        if (isExact(lower) && isExact(upper)) {
            return strict && reading.isExact()
                    ? strictly(reading, lower, upper)
                    : Conformity.ofReading(reading, LimitsHeld.exactly(lower, upper));
        }
        Conformity above = lower == null
                ? Conformity.certain(true)
                : Conformity.ofReading(reading.minus(lower), Limits.atLeast(0));
        Conformity under =
                upper == null ? Conformity.certain(true) : Conformity.ofReading(reading.minus(upper), Limits.atMost(0));
        double high = Math.min(above.high(), under.high());
        // A sum of probabilities can miss its bound by the last bit.
        double low = Math.min(high, Math.max(0, above.low() + under.low() - 1));
        return new Conformity(low, high, above.below(), under.above());
    }

    /**
     * A gap against limits. Where a limit is uncertain, conforming must be shown against the limits drawn in by as much
     * as the confidence asks for, and failing against the limits let out by as much.
     */
    static Conformity ofGap(
            GapEvidence evidence, @Nullable Estimate lower, @Nullable Estimate upper, DecisionRule rule) {
        if (isExact(lower) && isExact(upper)) {
            return evidence.conformity(LimitsHeld.exactly(lower, upper));
        }
        double z = rule.z();
        Conformity wide = evidence.conformity(LimitsHeld.exactly(shifted(lower, -z), shifted(upper, z)));
        Estimate innerLower = guarded(lower, true, rule);
        Estimate innerUpper = guarded(upper, false, rule);
        boolean closed = innerLower != null && innerUpper != null && innerLower.value() > innerUpper.value();
        double low = closed
                ? 0
                : evidence.conformity(LimitsHeld.exactly(innerLower, innerUpper))
                        .low();
        return new Conformity(Math.min(low, wide.high()), wide.high(), wide.below(), wide.above());
    }

    /** What a gap is held against in the place of a limit: itself where it is exact, else drawn in by its uncertainty. */
    static @Nullable Estimate guarded(@Nullable Estimate limit, boolean lower, DecisionRule rule) {
        return isExact(limit) ? limit : shifted(limit, lower ? rule.z() : -rule.z());
    }

    private static boolean isExact(@Nullable Estimate limit) {
        return limit == null || limit.isExact();
    }

    private static @Nullable Estimate shifted(@Nullable Estimate limit, double z) {
        return limit == null
                ? null
                : Estimate.exact(limit.value() + z * limit.standardUncertainty(), limit.dimension());
    }

    /** An exact value that is at a limit, to the last bits of a calculation, lies beyond a strict one. */
    private static Conformity strictly(Estimate value, @Nullable Estimate lower, @Nullable Estimate upper) {
        boolean low = lower != null && keeps(value, LimitsHeld.exactly(null, lower));
        boolean high = upper != null && keeps(value, LimitsHeld.exactly(upper, null));
        double conforms = low || high ? 0 : 1;
        return new Conformity(conforms, conforms, low ? 1 : 0, high ? 1 : 0);
    }

    private static boolean keeps(Estimate value, Limits limits) {
        return Conformity.ofReading(value, limits).low() == 1;
    }
}
