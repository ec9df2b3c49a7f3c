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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private record Held(Node.Check check, LimitsHeld limits) {}

    private final Judgement judgement;
    private final Map<Integer, List<Held>> bySlot = new HashMap<>();

    private HeldLimits(Judgement judgement) {
        this.judgement = judgement;
    }

    /** All of them, for the engine of this judgement. */
    static HeldLimits of(Judgement judgement) {
        HeldLimits all = new HeldLimits(judgement);
        for (Node.Check check : judgement.graph().checks()) {
            parts(check.requirement()).forEach(held -> {
                if (held.subject() instanceof Slot subject) {
                    all.bySlot
                            .computeIfAbsent(subject.number(), slot -> new ArrayList<>())
                            .add(new Held(check, held));
                }
            });
        }
        return all;
    }

    /** Those of one value. Where a check tolerates more, the wider limit counts beyond the one aimed for. */
    List<Limit> of(int slot, Estimate now) {
        return bySlot.getOrDefault(slot, List.of()).stream()
                .flatMap(held -> of(held.check(), held.limits(), now))
                .toList();
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

    private Stream<Limit> of(Node.Check check, LimitsHeld held, Estimate now) {
        LimitsHeld.Window window = LimitsHeld.Window.of(held, judgement.frame(check));
        return Stream.concat(
                limit(check, held.upper(), window.upper(), window.toleratedUpper(), true, now),
                limit(check, held.lower(), window.lower(), window.toleratedLower(), false, now));
    }

    private Stream<Limit> limit(
            Node.Check check,
            @Nullable Formula formula,
            @Nullable Estimate aimed,
            @Nullable Estimate tolerated,
            boolean upper,
            Estimate now) {
        if (formula == null || aimed == null || tolerated == null) {
            return Stream.of();
        }
        Limit limit = new Limit(aimed, Shown.limit(formula, judgement.frame(check)), upper);
        boolean beyond = limit.distanceOf(now).value() <= 0 && tolerated.value() != aimed.value();
        String wider = Shown.measured(Value.Amount.of(tolerated), judgement.units()) + ", which is tolerated";
        return Stream.of(beyond ? new Limit(tolerated, wider, upper) : limit);
    }
}
