package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Matches;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Standing;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Relation;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Conditions: what is compared with what, and how conditions are joined. */
final class Comparisons {

    private final Problems problems;
    private final Expressions expressions;
    private final LimitComparisons limits;

    Comparisons(Problems problems, Expressions expressions) {
        this.problems = problems;
        this.expressions = expressions;
        this.limits = new LimitComparisons(problems, expressions);
    }

    @Nullable
    Typed value(Expression expression, Env env) {
        Formula formula = condition(expression, env);
        return formula == null ? null : new Typed(formula, new Type.YesNo());
    }

    private @Nullable Formula condition(Expression expression, Env env) {
        if (expression instanceof Expression.Not not) {
            Formula operand = expressions.condition(not.operand(), env);
            return operand == null ? null : new Not(operand);
        }
        if (expression instanceof Expression.Joined joined) {
            return joined(joined, env);
        }
        if (expression instanceof Expression.Between between) {
            return between(between, env);
        }
        if (expression instanceof Expression.Within within) {
            return limits.within(within, env);
        }
        if (expression instanceof Expression.InTime inTime) {
            return expressions.dates().inTime(inTime, env);
        }
        if (expression instanceof Expression.OneOf oneOf) {
            return oneOf(oneOf, env);
        }
        if (expression instanceof Expression.HasAllOf hasAllOf) {
            return hasAllOf(hasAllOf, env);
        }
        return compared((Expression.Compared) expression, env);
    }

    private @Nullable Formula joined(Expression.Joined joined, Env env) {
        // A row of the same word is taken without descending into it: it may be a thousand long.
        Deque<Expression> row = new ArrayDeque<>();
        Expression first = joined;
        while (first instanceof Expression.Joined same && same.and() == joined.and()) {
            row.push(same.right());
            first = same.left();
        }
        row.push(first);
        List<Formula> parts = new ArrayList<>();
        boolean sound = true;
        for (Expression each : row) {
            Formula side = expressions.condition(each, env);
            sound &= side != null;
            if (side instanceof Joined same && same.and() == joined.and()) {
                parts.addAll(same.parts());
            } else if (side != null) {
                parts.add(side);
            }
        }
        return sound ? new Joined(joined.and(), parts) : null;
    }

    private @Nullable Formula between(Expression.Between between, Env env) {
        Typed value = expressions.value(between.value(), env, null);
        if (value != null && value.type() instanceof Type.Choice choice) {
            Typed low = option(between.low(), choice, env);
            Typed high = option(between.high(), choice, env);
            if (low == null || high == null || !isGraded(choice, between.value())) {
                return null;
            }
            return new Joined(
                    true,
                    List.of(
                            end(value, "at least", low, Standing.AT_LEAST, between.low()),
                            end(value, "at most", high, Standing.AT_MOST, between.high())));
        }
        if (value == null) {
            expressions.besides(between.low(), env);
            expressions.besides(between.high(), env);
            return null;
        }
        return value.type() instanceof Type.Date
                ? expressions.dates().between(between, value, env)
                : limits.between(between, value, env);
    }

    /** One end of a range of grades, which is a condition of its own. */
    private Formula end(Typed value, String words, Typed limit, Standing holds, Expression written) {
        Formula end = new Matches(value.formula(), limit.formula(), words, holds, Comparisons::silent);
        expressions.sites().conditions.put(end, new Sites.Condition(written.span(), false));
        return end;
    }

    private @Nullable Formula compared(Expression.Compared compared, Env env) {
        Typed left = expressions.value(compared.left(), env, null);
        if (left == null) {
            expressions.besides(compared.right(), env);
            return null;
        }
        if (left.type() instanceof Type.Choice choice) {
            return choiceCompared(compared, left, choice, env);
        }
        if (left.type() instanceof Type.Date) {
            return expressions.dates().compared(compared, left, env);
        }
        if (left.type() instanceof Type.Text) {
            return textCompared(compared, left, env);
        }
        if (left.type() instanceof Type.YesNo) {
            return yesNoCompared(compared, left, env);
        }
        if (left.type() instanceof Type.Items) {
            problems.add(TypeDiagnostics.itemsCompared(compared.span()));
            return null;
        }
        if (!left.isNumeric()) {
            expressions.isNoNumber(compared.left(), left.type());
            expressions.besides(compared.right(), env);
            return null;
        }
        return limits.compared(compared, left, env);
    }

    private @Nullable Formula choiceCompared(Expression.Compared compared, Typed left, Type.Choice choice, Env env) {
        Typed right = option(compared.right(), choice, env);
        if (right == null) {
            return null;
        }
        Relation relation = compared.relation();
        boolean ordered = relation != Relation.IS && relation != Relation.IS_NOT;
        if (ordered && !isGraded(choice, compared.left())) {
            return null;
        }
        return new Matches(left.formula(), right.formula(), relation.words(), standing(relation), Comparisons::silent);
    }

    private @Nullable Typed option(Expression expression, Type.Choice choice, Env env) {
        Typed typed = expressions.value(expression, env, choice);
        if (typed != null && !typed.type().equals(choice)) {
            problems.add(
                    TypeDiagnostics.noOption(expression.span(), typed.type().words(), choice.options()));
            return null;
        }
        return typed;
    }

    private boolean isGraded(Type.Choice choice, Expression subject) {
        if (!choice.graded()) {
            problems.add(TypeDiagnostics.notGraded(subject.span(), choice.options()));
        }
        return choice.graded();
    }

    private @Nullable Formula textCompared(Expression.Compared compared, Typed left, Env env) {
        Typed right = expressions.value(compared.right(), env, new Type.Text());
        boolean same = compared.relation() == Relation.IS || compared.relation() == Relation.IS_NOT;
        if (right == null) {
            return null;
        }
        if (!same || !(right.type() instanceof Type.Text)) {
            problems.add(TypeDiagnostics.textCompared(compared.span()));
            return null;
        }
        return new Matches(
                left.formula(),
                right.formula(),
                compared.relation().words(),
                standing(compared.relation()),
                Comparisons::silent);
    }

    /** {@code x is yes} says no more than {@code x}. */
    private @Nullable Formula yesNoCompared(Expression.Compared compared, Typed left, Env env) {
        boolean same = compared.relation() == Relation.IS || compared.relation() == Relation.IS_NOT;
        Typed right = expressions.value(compared.right(), env, new Type.YesNo());
        if (right == null) {
            return null;
        }
        if (!same || !(right.formula() instanceof Constant constant) || !right.isCondition()) {
            problems.add(TypeDiagnostics.yesNoCompared(compared.span()));
            return null;
        }
        boolean asIs = constant.value().equals(Value.Judged.YES) == (compared.relation() == Relation.IS);
        return asIs ? left.formula() : new Not(left.formula());
    }

    private @Nullable Formula oneOf(Expression.OneOf oneOf, Env env) {
        Typed value = expressions.value(oneOf.value(), env, null);
        if (value == null) {
            return null;
        }
        List<Formula> cases = new ArrayList<>();
        for (Expression.Option option : oneOf.options()) {
            Typed wanted = value.type() instanceof Type.Choice choice
                    ? expressions.option(choice, option.text(), option.span())
                    : Typed.constant(new Value.Words(option.text()), option.text(), new Type.Text());
            if (wanted != null) {
                Formula met = new Matches(value.formula(), wanted.formula(), "is", Standing.SAME, Comparisons::silent);
                expressions.sites().options.put(met, option.span());
                cases.add(met);
            }
        }
        if (!(value.type() instanceof Type.Choice) && !(value.type() instanceof Type.Text)) {
            problems.add(TypeDiagnostics.nothingToChoose(
                    oneOf.value().span(), value.type().words()));
            return null;
        }
        return cases.size() < oneOf.options().size() ? null : new Joined(false, cases);
    }

    private @Nullable Formula hasAllOf(Expression.HasAllOf expression, Env env) {
        Typed items = expressions.value(expression.items(), env, new Type.Items());
        Typed wanted = expressions.value(expression.wanted(), env, new Type.Items());
        boolean sound = true;
        for (var side : List.of(expression.items(), expression.wanted())) {
            Typed typed = side == expression.items() ? items : wanted;
            sound &= typed != null;
            if (typed != null && !(typed.type() instanceof Type.Items)) {
                problems.add(TypeDiagnostics.noItems(side.span(), typed.type().words()));
                sound = false;
            }
        }
        if (!sound || items == null || wanted == null) {
            return null;
        }
        return new Matches(
                items.formula(),
                wanted.formula(),
                "has all of",
                Standing.HAS_ALL,
                (found, all) -> "missing: " + String.join(", ", Standing.lacking(found, all)));
    }

    /** What the words of a comparison mean for values without uncertainty. */
    static Standing standing(Relation written) {
        return switch (written) {
            case IS -> Standing.SAME;
            case IS_NOT -> Standing.OTHER;
            case AT_LEAST -> Standing.AT_LEAST;
            case AT_MOST -> Standing.AT_MOST;
            case LESS -> Standing.LESS;
            case MORE -> Standing.MORE;
        };
    }

    private static String silent(Value subject, Value other) {
        return "";
    }
}
