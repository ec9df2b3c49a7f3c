package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Matches;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.formula.Standing;
import io.github.leafproof.inspection.quantity.Slate;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/** Conditions: what is compared, and how conditions are joined. */
final class Conditions {

    private final Translation translation;
    private final WithinLimits limits;

    Conditions(Translation translation, DecisionRule rule) {
        this.translation = translation;
        this.limits = new WithinLimits(translation, rule);
    }

    @Nullable
    Term of(Formula formula, List<Term> arguments) {
        if (formula instanceof LimitsHeld held) {
            return limits.of(held, arguments);
        }
        if (formula instanceof Matches matches) {
            return matches(matches, arguments);
        }
        if (formula instanceof Joined joined) {
            return joined(joined, arguments);
        }
        if (formula instanceof Not not) {
            return not(not, arguments);
        }
        return formula instanceof SameNumber same ? same(same, arguments) : null;
    }

    private @Nullable Term not(Not not, List<Term> arguments) {
        Term part = translation.of(not.part(), arguments);
        return part == null
                ? null
                : new Term(Shape.CONDITION, code -> {
                    code.load(part.written().to(code));
                    code.call(Truth.class, "not", int.class, int.class);
                    return code.state();
                });
    }

    /** What decides alone, decides whatever the other parts are: nobody looks at those behind it. */
    private @Nullable Term joined(Joined joined, List<Term> arguments) {
        List<Term> parts = translation.all(joined.parts(), arguments);
        if (parts == null) {
            return null;
        }
        int nothingYet = joined.and() ? Truth.NOTHING_YET_AND : Truth.NOTHING_YET_OR;
        int decisive = joined.and() ? Truth.FAILS : Truth.PASSES;
        return new Term(Shape.CONDITION, code -> {
            Local result = code.reserved(Shape.CONDITION);
            Label decided = new Label();
            code.push(nothingYet);
            Local soFar = code.state();
            for (Term part : parts) {
                code.load(part.written().to(code));
                code.instruction(Opcodes.DUP);
                code.storeState(result);
                code.push(decisive);
                code.jump(Opcodes.IF_ICMPEQ, decided);
                code.load(soFar);
                code.load(result);
                code.call(Truth.class, joined.and() ? "and" : "or", int.class, int.class, int.class);
                code.storeState(soFar);
            }
            code.load(soFar);
            code.push(nothingYet);
            code.push(decisive);
            code.call(Truth.class, "joined", int.class, int.class, int.class, int.class);
            code.storeState(result);
            code.place(decided);
            return result;
        });
    }

    private @Nullable Term matches(Matches matches, List<Term> arguments) {
        Term subject = translation.of(matches.subject(), arguments);
        Term other = translation.of(matches.other(), arguments);
        if (subject == null || other == null || !subject.shape().equals(other.shape())) {
            return null;
        }
        if (subject.shape().equals(Shape.THINGS)) {
            return unlessLacking(List.of(subject, other), (code, places) -> {
                code.figures();
                places.forEach(place -> code.loadValue(Shape.THINGS, place));
                code.callOn(Figures.class, "hasAll", int.class, int.class, int.class);
            });
        }
        if (!subject.shape().isExact()) {
            return null;
        }
        return unlessLacking(List.of(subject, other), (code, places) -> {
            places.forEach(place -> code.loadValue(Shape.EXACT, place));
            code.call(Truth.class, named(matches.holds()), int.class, double.class, double.class);
        });
    }

    private static String named(Standing standing) {
        return switch (standing) {
            case SAME -> "same";
            case OTHER -> "other";
            case AT_LEAST -> "atLeast";
            case AT_MOST -> "atMost";
            case LESS -> "less";
            case MORE -> "more";
            case HAS_ALL -> throw new IllegalArgumentException("an option has no items");
        };
    }

    private @Nullable Term same(SameNumber same, List<Term> arguments) {
        Term subject = translation.number(same.subject(), arguments);
        Term other = translation.number(same.other(), arguments);
        if (subject == null
                || other == null
                || !subject.shape().isNumber()
                || !other.shape().isNumber()) {
            return null;
        }
        if (subject.shape().isExact() && other.shape().isExact()) {
            return unlessLacking(List.of(subject, other), (code, places) -> {
                places.forEach(place -> code.loadValue(Shape.EXACT, place));
                code.push(same.same() ? 1 : 0);
                code.call(Exact.class, "same", int.class, double.class, double.class, boolean.class);
            });
        }
        return unlessLacking(List.of(subject, other), (code, places) -> {
            int one = OnSlate.line(code, subject.shape(), places.get(0));
            int two = OnSlate.line(code, other.shape(), places.get(1));
            OnSlate.slate(code);
            code.push(code.line());
            code.push(one);
            code.push(two);
            code.push(same.same() ? 1 : 0);
            Class<?> line = int.class;
            code.call(UncertainLimits.class, "same", int.class, Slate.class, line, line, line, boolean.class);
        });
    }

    /** Writes code that leaves a truth on the stack, given where values lie. */
    @FunctionalInterface
    interface Judging {
        void to(Code code, List<Local> places);
    }

    /** A condition on values that must all be there. */
    static Term unlessLacking(List<Term> values, Judging judging) {
        return new Term(Shape.CONDITION, code -> {
            List<Local> places =
                    values.stream().map(value -> value.written().to(code)).toList();
            Label end = new Label();
            if (code.loadLacks(places)) {
                Local result = code.state();
                code.load(result);
                code.jump(Opcodes.IFNE, end);
                judging.to(code, places);
                code.storeState(result);
                code.place(end);
                return result;
            }
            judging.to(code, places);
            return code.state();
        });
    }
}
