package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Values that depend on a choice or on a condition. */
final class Choices {

    private final Problems problems;
    private final Expressions expressions;

    Choices(Problems problems, Expressions expressions) {
        this.problems = problems;
        this.expressions = expressions;
    }

    @Nullable
    Typed value(Expression expression, Env env, @Nullable Type expected) {
        return expression instanceof Expression.Choose choose
                ? choose(choose, env, expected)
                : ifElse((Expression.IfElse) expression, env, expected);
    }

    private @Nullable Typed ifElse(Expression.IfElse expression, Env env, @Nullable Type expected) {
        Formula condition = expressions.condition(expression.condition(), env);
        Typed then = expressions.value(expression.then(), env, expected);
        Typed otherwise = expressions.value(expression.otherwise(), env, expected);
        if (condition == null || then == null || otherwise == null) {
            return null;
        }
        Optional<Type> type = common(then.type(), otherwise.type());
        if (type.isEmpty()) {
            unlike(expression.then(), then.type(), expression.otherwise(), otherwise.type());
            return null;
        }
        expressions.sites().ifs.add(new Sites.If(expression.condition().span(), condition));
        return new Typed(new IfElse(condition, then.formula(), otherwise.formula()), type.get());
    }

    private @Nullable Typed choose(Expression.Choose choose, Env env, @Nullable Type expected) {
        Typed subject = expressions.value(choose.subject(), env, null);
        List<Expression> values = Stream.concat(
                        choose.arms().stream().map(Expression.Arm::value), Stream.ofNullable(choose.otherwise()))
                .toList();
        List<@Nullable Typed> typed = new ArrayList<>();
        values.forEach(value -> typed.add(expressions.value(value, env, expected)));
        if (subject == null) {
            return null;
        }
        if (!(subject.type() instanceof Type.Choice choice)) {
            problems.add(TypeDiagnostics.nothingToChoose(
                    choose.subject().span(), subject.type().words()));
            return null;
        }
        if (problems.isHurt(choose.span())) {
            // Arms may be lost, or values of them cut short.
            return null;
        }
        int[] armOf = armOf(choose, choice);
        Optional<Type> type = commonOfAll(values, typed);
        if (armOf.length == 0 || type.isEmpty()) {
            return null;
        }
        List<Formula> arms = new ArrayList<>();
        for (int arm : armOf) {
            Typed chosen = typed.get(arm);
            if (chosen != null) {
                arms.add(chosen.formula());
            }
        }
        List<Integer> chosen = Arrays.stream(armOf).boxed().toList();
        Chosen formula = new Chosen(subject.formula(), arms);
        Sites.Choice site = new Sites.Choice(choose, subject.formula(), chosen);
        expressions.sites().choices.add(site);
        expressions.sites().chosen.put(formula, site);
        return new Typed(formula, type.get());
    }

    /** Which arm stands for each option; empty after saying that an option has none, or is not one. */
    private int[] armOf(Expression.Choose choose, Type.Choice choice) {
        int[] armOf = new int[choice.options().size()];
        Arrays.fill(armOf, choose.otherwise() == null ? -1 : choose.arms().size());
        boolean[] given = new boolean[armOf.length];
        boolean sound = true;
        for (int arm = 0; arm < choose.arms().size(); arm++) {
            for (Expression.Option option : choose.arms().get(arm).options()) {
                int at = choice.options().indexOf(option.text());
                if (at < 0) {
                    problems.add(NameDiagnostics.unknownOption(option.span(), option.text(), choice.options()));
                    sound = false;
                } else if (given[at]) {
                    problems.add(NameDiagnostics.optionTwice(option.span(), option.text()));
                } else {
                    given[at] = true;
                    armOf[at] = arm;
                }
            }
        }
        List<String> left = new ArrayList<>();
        for (int at = 0; at < armOf.length; at++) {
            if (armOf[at] < 0) {
                left.add(choice.options().get(at));
            }
        }
        if (!left.isEmpty() && sound) {
            problems.add(TypeDiagnostics.choiceNotExhausted(choose.subject().span(), left));
        }
        return left.isEmpty() && sound ? armOf : new int[0];
    }

    private Optional<Type> commonOfAll(List<Expression> values, List<@Nullable Typed> typed) {
        Typed first = typed.isEmpty() ? null : typed.get(0);
        if (first == null || typed.contains(null)) {
            return Optional.empty();
        }
        Type type = first.type();
        for (int i = 1; i < typed.size(); i++) {
            Typed next = typed.get(i);
            Optional<Type> both = next == null ? Optional.empty() : common(type, next.type());
            if (both.isEmpty()) {
                unlike(values.get(0), type, values.get(i), next == null ? type : next.type());
                return Optional.empty();
            }
            type = both.get();
        }
        return Optional.of(type);
    }

    private void unlike(Expression one, Type first, Expression other, Type second) {
        problems.add(TypeDiagnostics.unlikeArms(one.span(), first.words(), other.span(), second.words()));
    }

    /** The type that stands for both, if they can stand in one place. */
    private static Optional<Type> common(Type a, Type b) {
        if (a.equals(b)) {
            return Optional.of(a);
        }
        return a.inArithmetic().isPresent() && a.inArithmetic().equals(b.inArithmetic())
                ? a.inArithmetic().map(Type.Measure::new)
                : Optional.empty();
    }

    /** Whether a value of one type may stand where another is wanted. */
    static boolean fits(Type given, Type wanted) {
        boolean asNumber = wanted instanceof Type.Measure
                && given.inArithmetic().isPresent()
                && given.inArithmetic().equals(wanted.inArithmetic());
        return asNumber || given.equals(wanted);
    }
}
