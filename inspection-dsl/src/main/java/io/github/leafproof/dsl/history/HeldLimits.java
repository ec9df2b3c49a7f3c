package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The limits that the checks of a procedure hold directly against a value. */
final class HeldLimits {

    /**
     * One of them.
     *
     * @param words as reports write it
     * @param upper whether it is the most, or the least, that is allowed
     */
    record Limit(Estimate value, String words, boolean upper) {

        /** How far inside of it a value lies. */
        Estimate distanceOf(Estimate value) {
            return upper ? this.value.minus(value) : value.minus(this.value);
        }
    }

    private HeldLimits() {}

    /** The limits for the engine of this judgement. Of a check that tolerates more, the wider one counts beyond the aimed-for. */
    static List<Limit> of(Judgement judgement, int slot, Estimate now) {
        List<Limit> limits = new ArrayList<>();
        for (Node.Check check : judgement.graph().checks()) {
            parts(check.requirement())
                    .filter(held -> held.subject() instanceof Slot subject && subject.number() == slot)
                    .forEach(held -> limits.addAll(of(judgement, check, held, now)));
        }
        return limits;
    }

    private static Stream<LimitsHeld> parts(Formula condition) {
        if (condition instanceof LimitsHeld held) {
            return Stream.of(held);
        }
        // What one of several may keep is no limit that each has to.
        return condition instanceof Joined joined && joined.and()
                ? joined.parts().stream().flatMap(HeldLimits::parts)
                : Stream.of();
    }

    private static List<Limit> of(Judgement judgement, Node.Check check, LimitsHeld held, Estimate now) {
        LimitsHeld.Window window = LimitsHeld.Window.of(held, judgement.frame(check));
        return Stream.of(
                        limit(judgement, check, held.upper(), window.upper(), window.toleratedUpper(), true, now),
                        limit(judgement, check, held.lower(), window.lower(), window.toleratedLower(), false, now))
                .flatMap(List::stream)
                .toList();
    }

    private static List<Limit> limit(
            Judgement judgement,
            Node.Check check,
            @Nullable Formula formula,
            @Nullable Estimate aimed,
            @Nullable Estimate tolerated,
            boolean upper,
            Estimate now) {
        if (formula == null || aimed == null || tolerated == null) {
            return List.of();
        }
        Limit limit = new Limit(aimed, Shown.limit(formula, judgement.frame(check)), upper);
        boolean beyond = limit.distanceOf(now).value() <= 0 && tolerated.value() != aimed.value();
        return List.of(
                beyond
                        ? new Limit(
                                tolerated,
                                Shown.measured(Value.Amount.of(tolerated), judgement.units()) + ", which is tolerated",
                                upper)
                        : limit);
    }
}
