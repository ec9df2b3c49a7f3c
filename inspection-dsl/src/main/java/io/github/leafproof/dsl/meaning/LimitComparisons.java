package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.InUnit;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.LimitsHeld.Wording;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Relation;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Numbers, quantities and gaps against limits. */
final class LimitComparisons {

    private final Problems problems;
    private final Expressions expressions;

    LimitComparisons(Problems problems, Expressions expressions) {
        this.problems = problems;
        this.expressions = expressions;
    }

    @Nullable
    Formula compared(Expression.Compared compared, Typed left, Env env) {
        Formula limit = limit(compared.right(), env, left, compared.left());
        List<Formula> tolerated = compared.tolerated() == null
                ? List.of()
                : limits(List.of(compared.tolerated()), env, left, compared.left());
        if (limit == null || tolerated == null) {
            return null;
        }
        Relation relation = compared.relation();
        boolean upwards = relation == Relation.AT_MOST || relation == Relation.LESS;
        if (compared.tolerated() != null
                && (upwards
                        ? constant(tolerated.get(0)) <= constant(limit)
                        : constant(tolerated.get(0)) >= constant(limit))) {
            inside(compared.tolerated(), compared.right());
        }
        return switch (relation) {
            case IS, IS_NOT -> equal(compared, left, limit);
            case AT_LEAST, MORE -> sited(held(left, limit, null, tolerated, relation), compared);
            case AT_MOST, LESS -> sited(held(left, null, limit, tolerated, relation), compared);
        };
    }

    private LimitsHeld sited(LimitsHeld held, Expression written) {
        expressions.sites().compared.put(held, written.span());
        return held;
    }

    private static LimitsHeld held(
            Typed left, @Nullable Formula lower, @Nullable Formula upper, List<Formula> tolerated, Relation relation) {
        List<Formula> named = new ArrayList<>();
        named.add(lower != null ? lower : Objects.requireNonNull(upper));
        named.addAll(tolerated);
        boolean strict = relation == Relation.LESS || relation == Relation.MORE;
        String words = strict ? (relation == Relation.LESS ? "less than" : "more than") : relation.words();
        return new LimitsHeld(
                left.formula(),
                lower,
                upper,
                tolerated,
                strict,
                new Wording(words + " %s" + tolerateWords(tolerated), named));
    }

    private static String tolerateWords(List<Formula> tolerated) {
        return switch (tolerated.size()) {
            case 0 -> "";
            case 1 -> ", tolerated to %s";
            default -> ", tolerated to %s and %s";
        };
    }

    /** Only what is counted or stated can be equal; a measured value never is, to the last digit. */
    private @Nullable Formula equal(Expression.Compared compared, Typed left, Formula limit) {
        if (!(left.type() instanceof Type.Count) && !left.type().equals(Type.number())) {
            problems.add(
                    TypeDiagnostics.measuredEqual(compared.span(), left.type().words(), tolerance(compared.right())));
            return null;
        }
        SameNumber same = new SameNumber(left.formula(), limit, compared.relation() == Relation.IS);
        expressions.sites().sames.add(new Sites.Same(compared.span(), same));
        return same;
    }

    /** Who writes {@code is 5 mm ± 0.1 mm} means a tolerance. */
    private static @Nullable String tolerance(Expression limit) {
        if (!(limit instanceof Expression.Uncertain known) || known.stated() != Expression.Stated.LIMITS) {
            return null;
        }
        Span value = known.value().span();
        Span by = known.uncertainty().span();
        return "within " + by.source().of(by) + " of " + value.source().of(value);
    }

    @Nullable
    Formula between(Expression.Between between, Typed value, Env env) {
        if (!value.isNumeric()) {
            expressions.isNoNumber(between.value(), value.type());
            return null;
        }
        Formula low = limit(between.low(), env, value, between.value());
        Formula high = limit(between.high(), env, value, between.value());
        List<Formula> tolerated = limits(between.tolerated(), env, value, between.value());
        if (low == null || high == null || tolerated == null) {
            return null;
        }
        if (constant(low) > constant(high)) {
            problems.add(StructureDiagnostics.limitsUpsideDown(
                    between.low().span(), low.words(), between.high().span(), high.words(), ""));
        }
        for (int i = 0; i < tolerated.size(); i++) {
            double margin = constant(tolerated.get(i));
            if (margin >= constant(low) && margin <= constant(high)) {
                inside(between.tolerated().get(i), margin < constant(high) ? between.low() : between.high());
            }
        }
        List<Formula> named = new ArrayList<>(List.of(low, high));
        named.addAll(tolerated);
        LimitsHeld held = new LimitsHeld(
                value.formula(),
                low,
                high,
                tolerated,
                false,
                new Wording("between %s and %s" + tolerateWords(tolerated), named));
        expressions
                .sites()
                .limits
                .add(new Sites.Limits(held, between.low().span(), between.high().span()));
        return sited(held, between);
    }

    @Nullable
    Formula within(Expression.Within within, Env env) {
        Typed value = expressions.numeric(within.value(), env);
        if (value == null) {
            expressions.besides(within.tolerance(), env);
            expressions.besides(within.middle(), env);
            return null;
        }
        Formula middle = limit(within.middle(), env, value, within.value());
        Formula tolerance = tolerance(within.tolerance(), env, value, within.value());
        List<Formula> tolerated = new ArrayList<>();
        Formula wider = null;
        if (within.tolerated() != null) {
            wider = tolerance(within.tolerated(), env, value, within.value());
            if (wider == null) {
                return null;
            }
        }
        if (middle == null || tolerance == null) {
            return null;
        }
        if (constant(tolerance) < 0) {
            problems.add(
                    StructureDiagnostics.negativeTolerance(within.tolerance().span(), ""));
        } else if (wider != null && constant(wider) <= constant(tolerance)) {
            inside(Objects.requireNonNull(within.tolerated()), within.tolerance());
        }
        List<Formula> named = new ArrayList<>(List.of(tolerance, middle));
        if (wider != null) {
            tolerated.add(apart(middle, wider, -1));
            tolerated.add(apart(middle, wider, 1));
            named.add(wider);
        }
        LimitsHeld held = new LimitsHeld(
                value.formula(),
                apart(middle, tolerance, -1),
                apart(middle, tolerance, 1),
                tolerated,
                false,
                new Wording("within %s of %s" + (wider == null ? "" : ", tolerated to %s"), named));
        Span span = within.tolerance().span();
        expressions.sites().limits.add(new Sites.Limits(held, span, span));
        return sited(held, within);
    }

    private static Formula apart(Formula middle, Formula by, int sign) {
        return new Computed(
                Operation.InARow.of(sign < 0 ? Operation.Sign.MINUS : Operation.Sign.PLUS),
                List.of(middle, by),
                middle.words() + (sign < 0 ? " - " : " + ") + by.words());
    }

    private @Nullable List<Formula> limits(List<Expression> list, Env env, Typed subject, Expression subjectWritten) {
        List<Formula> limits = new ArrayList<>();
        for (Expression each : list) {
            Formula limit = limit(each, env, subject, subjectWritten);
            if (limit != null) {
                limits.add(limit);
            }
        }
        return limits.size() == list.size() ? limits : null;
    }

    private @Nullable Formula limit(Expression written, Env env, Typed subject, Expression subjectWritten) {
        Dimension wanted = subject.type().inArithmetic().orElse(null);
        return wanted == null
                ? null
                : limit(written, env, wanted, subjectWritten, subject.type().words());
    }

    private @Nullable Formula tolerance(Expression written, Env env, Typed subject, Expression subjectWritten) {
        Dimension wanted = subject.type().inArithmetic().orElseThrow().difference();
        return limit(written, env, wanted, subjectWritten, new Type.Measure(wanted).words());
    }

    private @Nullable Formula limit(
            Expression written, Env env, Dimension wanted, Expression subjectWritten, String subjectWords) {
        Typed limit = expressions.numeric(written, env, new Type.Measure(wanted));
        if (limit == null) {
            return null;
        }
        Dimension given = limit.type().inArithmetic().orElseThrow();
        if (!given.equals(wanted)) {
            problems.add(TypeDiagnostics.unlikeComparison(
                    subjectWritten.span(),
                    subjectWords,
                    written.span(),
                    limit.type().words(),
                    UnitSystem.METRIC.unitFor(wanted, 0).symbol()));
            return null;
        }
        return limit.formula();
    }

    private void inside(Expression tolerated, Expression limit) {
        problems.add(StructureDiagnostics.toleratedInside(tolerated.span(), limit.span()));
    }

    /** The number of what is written out; NaN, which compares with nothing, where it depends on the engine. */
    private static double constant(Formula formula) {
        if (!isWrittenOut(formula)) {
            return Double.NaN;
        }
        Value value = formula.value(Frame.of(new Value[0], DecisionRule.simpleAcceptance(), UnitSystem.METRIC));
        return value instanceof Value.Amount amount ? amount.estimate().value() : Double.NaN;
    }

    private static boolean isWrittenOut(Formula formula) {
        boolean known = formula instanceof Constant || formula instanceof Computed || formula instanceof InUnit;
        return known && formula.parts().stream().allMatch(LimitComparisons::isWrittenOut);
    }
}
