package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How a value comes about for one engine, step by step: what it is made of first, each step with its formula and its
 * value, and for limits how surely they are kept. Of a choice only the arm that counts is followed. Names that stand for a
 * slot are not gone into: each is a step of its own, elsewhere.
 */
public final class Calculation {

    /** Nobody reads further. */
    private static final int MOST_STEPS = 200;

    private final List<Step> steps = new ArrayList<>();
    private final Set<Step> told = new HashSet<>();
    private boolean cutShort;

    private Calculation() {}

    /**
     * One step.
     *
     * @param depth how many functions it stands in
     * @param words the formula, as a reader would write it
     * @param value what it comes to
     * @param details how surely a limit is kept, or by which formula and on which assumptions the trade calculates, a line
     *     each; empty for everything else
     */
    public record Step(int depth, String words, String value, List<String> details) {
        public Step {
            details = List.copyOf(details);
        }
    }

    /** The steps to the value of a formula, itself the last. There are none where it is a name or a number. */
    public static List<Step> of(Formula formula, Frame frame) {
        Calculation calculation = new Calculation();
        calculation.walk(formula, frame, 0);
        if (calculation.cutShort) {
            calculation.steps.add(new Step(0, "and further steps, which are too many to show", "", List.of()));
            calculation.add(formula, frame, 0);
        }
        return List.copyOf(calculation.steps);
    }

    private void walk(Formula formula, Frame frame, int depth) {
        if (steps.size() >= MOST_STEPS) {
            cutShort = true;
            return;
        }
        if (formula instanceof Slot || formula instanceof Constant || formula instanceof Argument) {
            return;
        }
        if (formula instanceof Applied applied) {
            applied(applied, frame, depth);
        } else if (formula instanceof IfElse either) {
            walk(either.condition(), frame, depth);
            walkArm(either, frame, depth);
        } else if (formula instanceof Chosen chosen) {
            walk(chosen.subject(), frame, depth);
            Formula arm = chosen.arm(frame);
            if (arm != chosen) {
                walk(arm, frame, depth);
            }
        } else {
            formula.parts().forEach(part -> walk(part, frame, depth));
        }
        if (!cutShort) {
            add(formula, frame, depth);
        }
    }

    private void walkArm(IfElse either, Frame frame, int depth) {
        if (either.condition().value(frame) instanceof Value.Judged judged) {
            if (judged.holds()) {
                walk(either.then(), frame, depth);
            } else if (judged.outcome() == Outcome.FAILS) {
                walk(either.otherwise(), frame, depth);
            }
        }
    }

    private void applied(Applied applied, Frame frame, int depth) {
        applied.arguments().forEach(argument -> walk(argument, frame, depth));
        Frame inside = applied.inside(frame);
        List<Argument> named = new ArrayList<>();
        arguments(applied.body(), named);
        for (Argument argument : named) {
            add(argument, inside, depth + 1);
        }
        walk(applied.body(), inside, depth + 1);
    }

    /** The parameters that a body uses, each once. */
    private static void arguments(Formula body, List<Argument> found) {
        if (body instanceof Argument argument && !found.contains(argument)) {
            found.add(argument);
        }
        // What another function is given belongs here; what is in that function has parameters of its own.
        List<Formula> parts = body instanceof Applied applied ? applied.arguments() : body.parts();
        parts.forEach(part -> arguments(part, found));
    }

    private void add(Formula formula, Frame frame, int depth) {
        Value value = formula.value(frame);
        Step step = new Step(depth, formula.words(), words(value, frame), details(formula, frame));
        if (told.add(step)) {
            steps.add(step);
        }
    }

    private static List<String> details(Formula formula, Frame frame) {
        if (formula instanceof LimitsHeld held) {
            return SureOfLimits.words(held, frame);
        }
        return formula instanceof Computed computed && computed.rule() instanceof Reckoning reckoning
                ? reckoning.basis()
                : List.of();
    }

    private static String words(Value value, Frame frame) {
        return value instanceof Value.Missing missing
                ? "not known: " + missing.words()
                : Shown.measured(value, frame.units());
    }
}
