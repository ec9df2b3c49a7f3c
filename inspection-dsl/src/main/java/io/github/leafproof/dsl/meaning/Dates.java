package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.DaysBetween;
import io.github.leafproof.dsl.formula.DaysFrom;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Matches;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.DateDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Operator;
import io.github.leafproof.dsl.syntax.Expression.Relation;
import io.github.leafproof.inspection.quantity.Dimension;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Days of the calendar: written out, compared, and the times between them. */
final class Dates {

    private final Problems problems;
    private final Expressions expressions;

    Dates(Problems problems, Expressions expressions) {
        this.problems = problems;
        this.expressions = expressions;
    }

    @Nullable
    Typed day(Expression.Day written) {
        try {
            LocalDate day = LocalDate.parse(written.written());
            return Typed.constant(new Value.Day(day), written.written(), new Type.Date());
        } catch (DateTimeException noDay) {
            problems.add(DateDiagnostics.notInTheCalendar(written.span(), written.written()));
            return null;
        }
    }

    /** A day and what is added to it or taken from it: a time leads to another day, a day to the time between the two. */
    @Nullable
    Typed applied(Typed day, Expression.Arithmetic step, Env env) {
        Typed right = expressions.value(step.right(), env, null);
        if (right == null) {
            return null;
        }
        boolean minus = step.operator() == Operator.MINUS;
        boolean time =
                right.type().inArithmetic().filter(Dimension.TIME::equals).isPresent();
        if (time && (minus || step.operator() == Operator.PLUS)) {
            return new Typed(DaysFrom.of(day.formula(), !minus, right.formula()), new Type.Date());
        }
        if (minus && right.type() instanceof Type.Date) {
            return new Typed(new DaysBetween(day.formula(), right.formula()), new Type.Measure(Dimension.TIME));
        }
        problems.add(DateDiagnostics.noArithmetic(
                step.operatorSpan(),
                step.operator().sign(),
                step.left().span(),
                step.right().span(),
                right.type().words()));
        return null;
    }

    @Nullable
    Formula compared(Expression.Compared compared, Typed left, Env env) {
        return matches(left, compared.relation(), compared.right(), words(compared.relation()), env);
    }

    /** {@code x is before y}: whatever is not a day has no before and no after. */
    @Nullable
    Formula inTime(Expression.InTime compared, Env env) {
        Typed left = expressions.value(compared.left(), env, null);
        if (left == null) {
            expressions.besides(compared.right(), env);
            return null;
        }
        if (!(left.type() instanceof Type.Date)) {
            problems.add(
                    DateDiagnostics.noBefore(compared.left().span(), left.type().words()));
            expressions.besides(compared.right(), env);
            return null;
        }
        Relation relation = compared.before()
                ? compared.not() ? Relation.AT_LEAST : Relation.LESS
                : compared.not() ? Relation.AT_MOST : Relation.MORE;
        return matches(left, relation, compared.right(), words(relation), env);
    }

    /** From one day to another, both included. */
    @Nullable
    Formula between(Expression.Between between, Typed value, Env env) {
        Formula from = matches(value, Relation.AT_LEAST, between.low(), words(Relation.AT_LEAST), env);
        Formula to = matches(value, Relation.AT_MOST, between.high(), words(Relation.AT_MOST), env);
        return from == null || to == null ? null : new Joined(true, List.of(from, to));
    }

    private @Nullable Formula matches(Typed left, Relation relation, Expression written, String words, Env env) {
        Typed right = expressions.value(written, env, null);
        if (right == null) {
            return null;
        }
        if (!(right.type() instanceof Type.Date)) {
            problems.add(DateDiagnostics.needsDate(written.span(), right.type().words()));
            return null;
        }
        return new Matches(left.formula(), right.formula(), words, Comparisons.standing(relation), (one, other) -> "");
    }

    private static String words(Relation relation) {
        return switch (relation) {
            case AT_LEAST -> "is not before";
            case AT_MOST -> "is not after";
            case LESS -> "is before";
            case MORE -> "is after";
            case IS, IS_NOT -> relation.words();
        };
    }
}
