package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.AdjusterAdvice;
import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.NextLeafAdvice;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Operator;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Sums, products, powers and functions, with the dimensions that they have. */
final class Arithmetic {

    /** Nothing at a bench is raised to more than this, and the dimension's exponents stay small. */
    private static final int LARGEST_POWER = 9;

    private final SourceText source;
    private final Problems problems;
    private final Expressions expressions;
    private final Names names;

    Arithmetic(SourceText source, Problems problems, Expressions expressions, Names names) {
        this.source = source;
        this.problems = problems;
        this.expressions = expressions;
        this.names = names;
    }

    @Nullable
    Typed value(Expression expression, Env env) {
        if (expression instanceof Expression.Call call) {
            return call(call, env);
        }
        if (expression instanceof Expression.Negated negated) {
            return negated(negated, env);
        }
        return operation((Expression.Arithmetic) expression, env);
    }

    private @Nullable Typed negated(Expression.Negated negated, Env env) {
        Typed operand = expressions.numeric(negated.operand(), env);
        if (operand == null) {
            return null;
        }
        Dimension dimension = operand.type().inArithmetic().orElseThrow();
        if (dimension.isAbsolute()) {
            if (operand.formula() instanceof Constant && negated.operand() instanceof Expression.Amount number) {
                return minusDegrees(number, negated);
            }
            problems.add(TypeDiagnostics.absoluteTemperature(source, negated.span(), "turned to its negative"));
            return null;
        }
        String words = "-" + operand.formula().words();
        return computed(numbers -> numbers.get(0).negated(), List.of(operand), words, dimension);
    }

    /** −5 °C is a temperature of its own, not the negative of 5 °C, which as 278 K would make no sense. */
    private @Nullable Typed minusDegrees(Expression.Amount number, Expression.Negated negated) {
        return expressions.value(
                new Expression.Amount("-" + number.number(), number.unit(), number.unitSpan(), negated.span()),
                Env.TOP,
                null);
    }

    private @Nullable Typed operation(Expression.Arithmetic operation, Env env) {
        Typed left = expressions.numeric(operation.left(), env);
        Typed right = expressions.numeric(operation.right(), env);
        if (left == null || right == null) {
            return null;
        }
        Dimension a = left.type().inArithmetic().orElseThrow();
        Dimension b = right.type().inArithmetic().orElseThrow();
        String words = operand(operation.left(), left) + " "
                + operation.operator().sign() + " " + operand(operation.right(), right);
        List<Typed> both = List.of(left, right);
        return switch (operation.operator()) {
            case PLUS ->
                sum(operation, Dimension.sum(a, b), a, b)
                        .map(to -> computed(x -> x.get(0).plus(x.get(1)), both, words, to))
                        .orElse(null);
            case MINUS ->
                sum(operation, Dimension.difference(a, b), a, b)
                        .map(to -> computed(x -> x.get(0).minus(x.get(1)), both, words, to))
                        .orElse(null);
            case TIMES ->
                multiplies(operation, a, b) ? computed(x -> x.get(0).times(x.get(1)), both, words, a.times(b)) : null;
            case DIVIDED_BY ->
                multiplies(operation, a, b)
                        ? computed(x -> x.get(0).dividedBy(x.get(1)), both, words, a.dividedBy(b))
                        : null;
            case TO_THE -> power(operation, left, a, words);
        };
    }

    private static String operand(Expression expression, Typed typed) {
        boolean compound = expression instanceof Expression.Arithmetic || expression instanceof Expression.Negated;
        return compound ? "(" + typed.formula().words() + ")" : typed.formula().words();
    }

    private Optional<Dimension> sum(
            Expression.Arithmetic operation, Optional<Dimension> result, Dimension a, Dimension b) {
        if (result.isEmpty()) {
            problems.add(TypeDiagnostics.unlikeSum(
                    source,
                    operation.operatorSpan(),
                    operation.operator().sign(),
                    operation.left().span(),
                    words(a),
                    operation.right().span(),
                    words(b)));
        }
        return result;
    }

    private static String words(Dimension dimension) {
        return new Type.Measure(dimension).words();
    }

    private boolean multiplies(Expression.Arithmetic operation, Dimension a, Dimension b) {
        if (a.isAbsolute() || b.isAbsolute()) {
            Expression absolute = a.isAbsolute() ? operation.left() : operation.right();
            String done = operation.operator() == Operator.TIMES ? "multiplied" : "divided";
            problems.add(TypeDiagnostics.absoluteTemperature(source, absolute.span(), done));
            return false;
        }
        return true;
    }

    private @Nullable Typed power(Expression.Arithmetic operation, Typed left, Dimension base, String words) {
        Optional<Integer> exponent = wholeNumber(operation.right());
        if (base.isAbsolute()) {
            problems.add(
                    TypeDiagnostics.absoluteTemperature(source, operation.left().span(), "raised to a power"));
            return null;
        }
        if (exponent.isEmpty()) {
            problems.add(TypeDiagnostics.badPower(source, operation.right().span(), LARGEST_POWER));
            return null;
        }
        int power = exponent.get();
        return computed(numbers -> numbers.get(0).power(power), List.of(left), words, base.power(power));
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

    private static Typed computed(Computed.Rule rule, List<Typed> parts, String words, Dimension dimension) {
        List<Formula> formulas = parts.stream().map(Typed::formula).toList();
        return new Typed(new Computed(rule, formulas, words), new Type.Measure(dimension));
    }

    private @Nullable Typed call(Expression.Call call, Env env) {
        String name = call.function().text();
        if (name.equals("next_leaf") || name.equals("adjuster_turn")) {
            return advice(call, env, name.equals("next_leaf"));
        }
        Optional<Builtin> builtin = Builtin.named(name);
        return builtin.isPresent() ? builtin(builtin.get(), call, env) : defined(call, env);
    }

    private @Nullable Typed builtin(Builtin function, Expression.Call call, Env env) {
        List<Typed> arguments = expressions.numerics(call.arguments(), env);
        if (!function.takes(call.arguments().size())) {
            problems.add(TypeDiagnostics.wrongArguments(
                    source,
                    call.span(),
                    function.word(),
                    function.argumentWords(),
                    call.arguments().size()));
            return null;
        }
        if (arguments == null) {
            return null;
        }
        List<Dimension> dimensions = arguments.stream()
                .map(argument -> argument.type().inArithmetic().orElseThrow())
                .toList();
        Optional<Dimension> result = function.dimensions().of(dimensions);
        if (result.isEmpty()) {
            List<String> words = dimensions.stream().map(Arithmetic::words).toList();
            problems.add(TypeDiagnostics.functionDimensions(source, call.span(), function.word(), words));
            return null;
        }
        String words = arguments.stream()
                .map(argument -> argument.formula().words())
                .collect(Collectors.joining(", ", function.word() + "(", ")"));
        return computed(function.rule(), arguments, words, result.get());
    }

    private @Nullable Typed defined(Expression.Call call, Env env) {
        Names.Function function = names.function(call);
        if (function == null) {
            call.arguments().forEach(argument -> expressions.besides(argument, env));
            return null;
        }
        int wanted = function.parameters().size();
        if (wanted != call.arguments().size()) {
            String values = wanted == 0 ? "no value" : wanted == 1 ? "one value" : wanted + " values";
            problems.add(TypeDiagnostics.wrongArguments(
                    source,
                    call.span(),
                    call.function().text(),
                    values,
                    call.arguments().size()));
            return null;
        }
        List<Formula> arguments = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            Formula argument = argument(call, i, function, env);
            if (argument != null) {
                arguments.add(argument);
            }
        }
        return arguments.size() < wanted
                ? null
                : new Typed(
                        new Applied(call.function().text(), function.body().formula(), arguments),
                        function.body().type());
    }

    private @Nullable Formula argument(Expression.Call call, int number, Names.Function function, Env env) {
        Expression argument = call.arguments().get(number);
        Type wanted = function.parameters().get(number);
        Typed typed = expressions.value(argument, env, wanted);
        if (typed == null) {
            return null;
        }
        if (!Choices.fits(typed.type(), wanted)) {
            problems.add(TypeDiagnostics.wrongArgument(
                    source,
                    argument.span(),
                    typed.type().words(),
                    call.function().text(),
                    function.names().get(number),
                    wanted.words()));
            return null;
        }
        return typed.formula();
    }

    private @Nullable Typed advice(Expression.Call call, Env env, boolean nextLeaf) {
        List<Dimension> wanted = nextLeaf
                ? List.of(Dimension.LENGTH, Dimension.LENGTH, Dimension.LENGTH)
                : List.of(Dimension.LENGTH, Dimension.LENGTH, Dimension.LENGTH_PER_TURN, Dimension.RATIO);
        String name = call.function().text();
        List<Typed> given = expressions.numerics(call.arguments(), env);
        if (call.arguments().size() != wanted.size()) {
            String values = nextLeaf
                    ? "a gap, its lower limit and its upper limit"
                    : "a gap, the size aimed for, the pitch of the adjuster and its lever factor";
            problems.add(TypeDiagnostics.wrongArguments(
                    source, call.span(), name, values, call.arguments().size()));
            return null;
        }
        if (given == null) {
            return null;
        }
        for (int i = 0; i < wanted.size(); i++) {
            Dimension dimension = given.get(i).type().inArithmetic().orElseThrow();
            boolean gap = given.get(i).type() instanceof Type.Gap;
            if (!dimension.equals(wanted.get(i)) || (i == 0 && nextLeaf && !gap)) {
                String should = i == 0 && nextLeaf ? "gap" : words(wanted.get(i));
                problems.add(TypeDiagnostics.wrongArgument(
                        source,
                        call.arguments().get(i).span(),
                        given.get(i).type().words(),
                        name,
                        "value " + (i + 1),
                        should));
                return null;
            }
        }
        List<Formula> parts = given.stream().map(Typed::formula).toList();
        Formula advice = nextLeaf
                ? new NextLeafAdvice(parts.get(0), parts.get(1), parts.get(2))
                : new AdjusterAdvice(parts.get(0), parts.get(1), parts.get(2), parts.get(3));
        return new Typed(advice, new Type.Text());
    }
}
