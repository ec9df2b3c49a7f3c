package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.AdjusterAdvice;
import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.NextLeafAdvice;
import io.github.leafproof.dsl.formula.OfReadings;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.SeriesDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is computed: negatives, operations and functions, with the dimensions that they have. */
final class Arithmetic {

    private final Problems problems;
    private final Expressions expressions;
    private final Names names;
    private final Operations operations;

    Arithmetic(Problems problems, Expressions expressions, Names names) {
        this.problems = problems;
        this.expressions = expressions;
        this.names = names;
        this.operations = new Operations(problems, expressions);
    }

    @Nullable
    Typed value(Expression expression, Env env) {
        if (expression instanceof Expression.Call call) {
            return call(call, env);
        }
        if (expression instanceof Expression.Negated negated) {
            return negated(negated, env);
        }
        return operations.value((Expression.Arithmetic) expression, env);
    }

    private @Nullable Typed negated(Expression.Negated negated, Env env) {
        Typed operand = expressions.numeric(negated.operand(), env);
        if (operand == null) {
            return null;
        }
        Dimension dimension = operand.type().inArithmetic().orElseThrow();
        if (dimension.isAbsolute()) {
            Expression minus = minus(negated.operand(), negated);
            if (minus != null) {
                return expressions.value(minus, env, null);
            }
            problems.add(TypeDiagnostics.absoluteTemperature(negated.span(), "turned to its negative"));
            return null;
        }
        String words = "-" + Operations.operand(negated.operand(), operand);
        return computed(new Operation.Negated(), List.of(operand), words, dimension);
    }

    /** −5 °C is a temperature of its own, not the negative of 5 °C, which as 278 K would make no sense. */
    private static @Nullable Expression minus(Expression degrees, Expression.Negated negated) {
        if (degrees instanceof Expression.Amount number) {
            return new Expression.Amount("-" + number.number(), number.unit(), number.unitSpan(), negated.span());
        }
        if (!(degrees instanceof Expression.Uncertain known)) {
            return null;
        }
        Expression value = minus(known.value(), negated);
        return value == null
                ? null
                : new Expression.Uncertain(
                        value, known.stated(), known.signSpan(), known.uncertainty(), known.coverage(), negated.span());
    }

    private static String words(Dimension dimension) {
        return new Type.Measure(dimension).words();
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
        Optional<Statistic> statistic = Statistic.named(name);
        if (statistic.isPresent()) {
            return statistic(statistic.get(), call, env);
        }
        Optional<Builtin> builtin = Builtin.named(name);
        return builtin.isPresent() ? builtin(builtin.get(), call, env) : defined(call, env);
    }

    private @Nullable Typed builtin(Builtin function, Expression.Call call, Env env) {
        List<Typed> arguments = expressions.numerics(call.arguments(), env);
        if (!function.takes(call.arguments().size())) {
            problems.add(TypeDiagnostics.wrongArguments(
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
            problems.add(TypeDiagnostics.functionDimensions(call.span(), function.word(), words, function.remedy()));
            return null;
        }
        String words = arguments.stream()
                .map(argument -> argument.formula().words())
                .collect(Collectors.joining(", ", function.word() + "(", ")"));
        return computed(function.rule(), arguments, words, result.get());
    }

    private @Nullable Typed statistic(Statistic statistic, Expression.Call call, Env env) {
        if (call.arguments().size() != 1) {
            call.arguments().forEach(argument -> expressions.besides(argument, env));
            problems.add(TypeDiagnostics.wrongArguments(
                    call.span(),
                    statistic.word(),
                    "one series",
                    call.arguments().size()));
            return null;
        }
        Expression argument = call.arguments().get(0);
        Typed readings = expressions.value(argument, env, null);
        if (readings == null) {
            return null;
        }
        if (!(readings.type() instanceof Type.Series series)) {
            problems.add(SeriesDiagnostics.needsSeries(
                    argument.span(), statistic.word(), readings.type().words()));
            return null;
        }
        Dimension dimension = statistic.dimension(series.of().inArithmetic().orElseThrow());
        return new Typed(new OfReadings(statistic, readings.formula()), new Type.Measure(dimension));
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
                    call.span(), name, values, call.arguments().size()));
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
                        call.arguments().get(i).span(), given.get(i).type().words(), name, "value " + (i + 1), should));
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
