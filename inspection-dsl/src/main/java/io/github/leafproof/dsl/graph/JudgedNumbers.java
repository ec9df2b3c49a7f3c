package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;

/**
 * The numbers that a condition holds against limits, and the limits that are computed: of the arms of a choice only those
 * that count for this engine, and through conditions that have a name of their own.
 */
final class JudgedNumbers {

    /** No condition of a bench has as many parts; whatever has is not looked at further. */
    private static final int MOST_STEPS = 10_000;

    private final Frame frame;
    private final IntFunction<Optional<Node.Derived>> derived;
    private final List<Formula> numbers = new ArrayList<>();
    private final Deque<Formula> conditions = new ArrayDeque<>();
    private final Set<Integer> named = new HashSet<>();
    private final long mostSteps;
    private long steps;

    private JudgedNumbers(Frame frame, IntFunction<Optional<Node.Derived>> derived, long mostSteps) {
        this.frame = frame;
        this.derived = derived;
        this.mostSteps = mostSteps;
    }

    /**
     * Looks for the numbers of a condition.
     *
     * @param derived the derived value in a slot, if there is one
     * @param left how many steps there is still time for
     */
    static JudgedNumbers of(Formula condition, Frame frame, IntFunction<Optional<Node.Derived>> derived, long left) {
        JudgedNumbers judged = new JudgedNumbers(frame, derived, Math.min(left, MOST_STEPS));
        judged.conditions.add(condition);
        while (!judged.conditions.isEmpty() && judged.steps <= judged.mostSteps) {
            judged.walk(judged.conditions.remove(), UnaryOperator.identity());
        }
        return judged;
    }

    /** The numbers, or empty where the condition has too many parts to tell. */
    Optional<List<Formula>> numbers() {
        return steps > mostSteps ? Optional.empty() : Optional.of(numbers);
    }

    /** How many parts of conditions were looked at. */
    long steps() {
        return steps;
    }

    /** What stands in the body of a function only has a value inside an application of it: {@code whole} makes that. */
    private void walk(Formula condition, UnaryOperator<Formula> whole) {
        if (++steps > mostSteps) {
            return;
        }
        if (condition instanceof LimitsHeld held) {
            held.parts().forEach(number -> add(number, whole));
        } else if (condition instanceof Joined || condition instanceof Not) {
            condition.parts().forEach(part -> walk(part, whole));
        } else if (condition instanceof IfElse either) {
            walk(either.condition(), whole);
            arm(either, whole).ifPresent(arm -> walk(arm, whole));
        } else if (condition instanceof Chosen chosen) {
            if (whole.apply(chosen.subject()).value(frame) instanceof Value.Pick pick) {
                walk(chosen.arms().get(pick.option()), whole);
            }
        } else if (condition instanceof Applied applied) {
            applied.arguments().forEach(argument -> walk(argument, whole));
            walk(applied.body(), inside -> whole.apply(applied.instead(inside)));
        } else if (condition instanceof Slot slot && named.add(slot.number())) {
            derived.apply(slot.number()).ifPresent(value -> conditions.add(value.formula()));
        }
    }

    private Optional<Formula> arm(IfElse either, UnaryOperator<Formula> whole) {
        Value found = whole.apply(either.condition()).value(frame);
        if (!(found instanceof Value.Judged judged)) {
            return Optional.empty();
        }
        boolean fails = judged.outcome() == Outcome.FAILS;
        return judged.holds() || fails ? Optional.of(fails ? either.otherwise() : either.then()) : Optional.empty();
    }

    private void add(Formula number, UnaryOperator<Formula> whole) {
        if (!(number instanceof Constant)) {
            numbers.add(whole.apply(number));
        }
    }
}
