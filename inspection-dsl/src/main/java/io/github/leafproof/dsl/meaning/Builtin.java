package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Reckoning;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.inspection.mechanism.Input;
import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A function of numbers that the language brings with it.
 *
 * @param word its name in procedures
 * @param arguments how many values it takes; {@value #ANY} for two or more
 * @param dimensions the dimension of the result, or empty where these dimensions make no sense
 * @param rule what it computes
 */
record Builtin(String word, int arguments, DimensionRule dimensions, Computed.Rule rule) {

    private static final int ANY = -1;

    private static final List<Builtin> ALL = List.of(
            new Builtin("min", ANY, Builtin::alike, Operation.Function.MIN),
            new Builtin("max", ANY, Builtin::alike, Operation.Function.MAX),
            new Builtin("abs", 1, Builtin::difference, Operation.Function.ABS),
            new Builtin("sqrt", 1, given -> given.get(0).root(2), Operation.Function.SQRT),
            new Builtin("sin", 1, Builtin::ofAngle, Operation.Function.SIN),
            new Builtin("cos", 1, Builtin::ofAngle, Operation.Function.COS),
            new Builtin("tan", 1, Builtin::ofAngle, Operation.Function.TAN));

    /** Gives the dimension of a result from those of the arguments. */
    @FunctionalInterface
    interface DimensionRule {
        Optional<Dimension> of(List<Dimension> given);
    }

    /** The function of that name. */
    static Optional<Builtin> named(String word) {
        return ALL.stream()
                .filter(each -> each.word.equals(word))
                .findFirst()
                .or(() -> Mechanisms.named(word).map(Builtin::calculating));
    }

    private static Builtin calculating(Mechanism mechanism) {
        List<Dimension> wanted =
                mechanism.inputs().stream().map(Input::dimension).toList();
        return new Builtin(
                mechanism.name(),
                wanted.size(),
                given -> given.equals(wanted) ? Optional.of(mechanism.result()) : Optional.empty(),
                new Reckoning(mechanism));
    }

    /** Every function that the language brings, those of readings, those that give advice and the calculations of the trade too. */
    static List<String> names() {
        return Stream.of(
                        ALL.stream().map(Builtin::word),
                        Statistic.words().stream(),
                        Stream.of("next_leaf", "adjuster_turn"),
                        Mechanisms.names().stream())
                .flatMap(words -> words)
                .toList();
    }

    /** Whether it takes so many values. */
    boolean takes(int given) {
        return arguments == ANY ? given >= 2 : given == arguments;
    }

    /** How many values it takes, in words. */
    String argumentWords() {
        if (rule instanceof Reckoning reckoning) {
            List<Input> inputs = reckoning.mechanism().inputs();
            String names = inputs.stream().map(Input::words).collect(Collectors.joining(", "));
            return (inputs.size() == 1 ? "one value: " : inputs.size() + " values: ") + names;
        }
        return arguments == ANY ? "two values or more" : "one value";
    }

    /** What kinds of values it takes, as advice for whoever gave others. */
    String remedy() {
        if (rule instanceof Reckoning reckoning) {
            return reckoning.mechanism().inputs().stream()
                    .map(input -> input.words() + ", " + input.dimension().phrase())
                    .collect(Collectors.joining("; ", "it takes ", ""));
        }
        return switch (word) {
            case "sqrt" -> "give it something that has a root, such as an area or a plain number";
            case "sin", "cos", "tan" -> "give it an angle, as in " + word + "(30 deg)";
            case "abs" -> "a temperature has no sign; take a difference, such as head - room";
            default -> "all its values must be of one kind";
        };
    }

    private static Optional<Dimension> alike(List<Dimension> given) {
        return given.stream().allMatch(given.get(0)::equals) ? Optional.of(given.get(0)) : Optional.empty();
    }

    private static Optional<Dimension> difference(List<Dimension> given) {
        return alike(given).filter(dimension -> !dimension.isAbsolute());
    }

    private static Optional<Dimension> ofAngle(List<Dimension> given) {
        return given.get(0).equals(Dimension.ANGLE) ? Optional.of(Dimension.RATIO) : Optional.empty();
    }
}
