package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Operator;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Sums, products and powers. A row of operators, {@code a + b - c}, is taken from left to right without descending
 * into it, and becomes one formula: rows may be a thousand long, and neither understanding nor judging one should need
 * a thousand steps of the stack.
 */
final class Operations {

    /** Nothing at a bench is raised to more than this, and the dimension's exponents stay small. */
    private static final int LARGEST_POWER = 9;

    private final Problems problems;
    private final Expressions expressions;

    Operations(Problems problems, Expressions expressions) {
        this.problems = problems;
        this.expressions = expressions;
    }

    @Nullable
    Typed value(Expression.Arithmetic operation, Env env) {
        return operation.operator() == Operator.TO_THE ? power(operation, env) : row(operation, env);
    }

    private @Nullable Typed row(Expression.Arithmetic last, Env env) {
        Deque<Expression.Arithmetic> row = new ArrayDeque<>();
        Expression first = last;
        while (first instanceof Expression.Arithmetic step && step.operator() != Operator.TO_THE) {
            row.push(step);
            first = step.left();
        }
        Typed start = expressions.value(first, env, null);
        while (start != null && start.type() instanceof Type.Date && !row.isEmpty()) {
            start = expressions.dates().applied(start, row.pop(), env);
            if (start == null || row.isEmpty()) {
                row.forEach(step -> expressions.besides(step.right(), env));
                return start;
            }
        }
        if (start != null && !start.isNumeric()) {
            expressions.isNoNumber(first, start.type());
            start = null;
        }
        Optional<Dimension> soFar =
                start == null ? Optional.empty() : start.type().inArithmetic();
        List<Formula> parts = new ArrayList<>();
        List<Operator> operators = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        if (start != null) {
            parts.add(start.formula());
            words.append(operand(first, start));
        }
        for (Expression.Arithmetic step : row) {
            Typed right = expressions.numeric(step.right(), env);
            soFar = right == null
                    ? Optional.empty()
                    : soFar.flatMap(left ->
                            result(step, left, right.type().inArithmetic().orElseThrow()));
            if (right != null) {
                parts.add(right.formula());
                bracket(words, operators, step.operator());
                words.append(' ').append(step.operator().sign()).append(' ').append(operand(step.right(), right));
            }
            operators.add(step.operator());
        }
        return soFar.map(dimension -> new Typed(
                        new Computed(inARow(operators), parts, words.toString()), new Type.Measure(dimension)))
                .orElse(null);
    }

    private static Operation.InARow inARow(List<Operator> operators) {
        return new Operation.InARow(operators.stream().map(Operations::sign).toList());
    }

    private static Operation.Sign sign(Operator operator) {
        return switch (operator) {
            case PLUS -> Operation.Sign.PLUS;
            case MINUS -> Operation.Sign.MINUS;
            case TIMES -> Operation.Sign.TIMES;
            case DIVIDED_BY -> Operation.Sign.DIVIDED_BY;
            case TO_THE -> throw new IllegalArgumentException("a power does not stand in a row");
        };
    }

    private Optional<Dimension> result(Expression.Arithmetic step, Dimension left, Dimension right) {
        return switch (step.operator()) {
            case PLUS -> sum(step, Dimension.sum(left, right), left, right);
            case MINUS -> sum(step, Dimension.difference(left, right), left, right);
            case TIMES -> multiplies(step, left, right) ? Optional.of(left.times(right)) : Optional.empty();
            case DIVIDED_BY -> multiplies(step, left, right) ? Optional.of(left.dividedBy(right)) : Optional.empty();
            case TO_THE -> Optional.empty();
        };
    }

    private Optional<Dimension> sum(
            Expression.Arithmetic operation, Optional<Dimension> result, Dimension a, Dimension b) {
        if (result.isEmpty()) {
            problems.add(TypeDiagnostics.unlikeSum(
                    operation.operatorSpan(),
                    operation.operator().sign(),
                    operation.left().span(),
                    new Type.Measure(a).words(),
                    operation.right().span(),
                    new Type.Measure(b).words()));
        }
        return result;
    }

    private boolean multiplies(Expression.Arithmetic operation, Dimension a, Dimension b) {
        if (a.isAbsolute() || b.isAbsolute()) {
            Expression absolute = a.isAbsolute() ? operation.left() : operation.right();
            String done = operation.operator() == Operator.TIMES ? "multiplied" : "divided";
            problems.add(TypeDiagnostics.absoluteTemperature(absolute.span(), done));
            return false;
        }
        return true;
    }

    /** What was a sum so far needs its parentheses before it is multiplied. */
    private static void bracket(StringBuilder words, List<Operator> before, Operator next) {
        if (!before.isEmpty() && isProduct(next) && !isProduct(before.get(before.size() - 1))) {
            words.insert(0, '(').append(')');
        }
    }

    private static boolean isProduct(Operator operator) {
        return operator == Operator.TIMES || operator == Operator.DIVIDED_BY;
    }

    /** An operand in words, in parentheses where it would read as something else without. */
    static String operand(Expression expression, Typed typed) {
        boolean compound = expression instanceof Expression.Arithmetic
                || expression instanceof Expression.Negated
                || expression instanceof Expression.IfElse
                || expression instanceof Expression.Uncertain;
        return compound ? "(" + typed.formula().words() + ")" : typed.formula().words();
    }

    private @Nullable Typed power(Expression.Arithmetic operation, Env env) {
        Typed base = expressions.numeric(operation.left(), env);
        Typed raisedTo = expressions.numeric(operation.right(), env);
        if (base == null || raisedTo == null) {
            return null;
        }
        Dimension dimension = base.type().inArithmetic().orElseThrow();
        if (dimension.isAbsolute()) {
            problems.add(TypeDiagnostics.absoluteTemperature(operation.left().span(), "raised to a power"));
            return null;
        }
        Optional<Integer> exponent = wholeNumber(operation.right());
        if (exponent.isEmpty()) {
            problems.add(TypeDiagnostics.badPower(operation.right().span(), LARGEST_POWER));
            return null;
        }
        int power = exponent.get();
        String words = operand(operation.left(), base) + " ^ " + operand(operation.right(), raisedTo);
        return new Typed(
                new Computed(new Operation.Power(power), List.of(base.formula()), words),
                new Type.Measure(dimension.power(power)));
    }

    private static Optional<Integer> wholeNumber(Expression expression) {
        boolean negative = expression instanceof Expression.Negated;
        Expression plain = negative ? ((Expression.Negated) expression).operand() : expression;
        if (!(plain instanceof Expression.Amount number)
                || !number.unit().isEmpty()
                || !number.number().matches("[0-9]{1,2}")) {
            return Optional.empty();
        }
        int value = Integer.parseInt(number.number());
        return value > LARGEST_POWER ? Optional.empty() : Optional.of(negative ? -value : value);
    }
}
