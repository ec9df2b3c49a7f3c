package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a formula sees while it is evaluated: the numbered slots of the graph, the arguments of the function it stands
 * in, the confidence that conditions are decided with, and the units in which text shows its numbers.
 *
 * <p>A frame belongs to one evaluation and is not for sharing between threads.
 */
public final class Frame {

    private static final Value[] NONE = {};

    private final IntFunction<Value> slots;
    private final Value[] arguments;
    private final DecisionRule rule;
    private final UnitSystem units;
    private final MonteCarlo.@Nullable Trial trial;

    private Frame(
            IntFunction<Value> slots,
            Value[] arguments,
            DecisionRule rule,
            UnitSystem units,
            MonteCarlo.@Nullable Trial trial) {
        this.slots = slots;
        this.arguments = arguments;
        this.rule = rule;
        this.units = units;
        this.trial = trial;
    }

    /** The frame in which a check or a derived value is evaluated. It reads the given slots, not a copy of them. */
    public static Frame of(Value[] slots, DecisionRule rule, UnitSystem units) {
        return of(number -> slots[number], rule, units);
    }

    /** The same over slots that are kept otherwise. */
    public static Frame of(IntFunction<Value> slots, DecisionRule rule, UnitSystem units) {
        return new Frame(slots, NONE, rule, units, null);
    }

    /** The same slots, for a formula with these arguments. */
    public Frame within(Value[] callArguments) {
        return new Frame(slots, callArguments, rule, units, trial);
    }

    /** The same frame in one trial of a Monte Carlo: whatever is computed or judged in it is computed from drawn numbers. */
    public Frame drawing(MonteCarlo.Trial trialOfMany) {
        return new Frame(slots, arguments, rule, units, trialOfMany);
    }

    /** A number as the trial has it; as it is, where there is none. */
    Estimate drawn(Estimate estimate) {
        return trial == null ? estimate : trial.settled(estimate);
    }

    /** The value in a slot. */
    public Value slot(int number) {
        return slots.apply(number);
    }

    Value argument(int number) {
        return arguments[number];
    }

    /** The confidence that conditions are decided with. */
    public DecisionRule rule() {
        return rule;
    }

    /** The units in which text shows its numbers. */
    public UnitSystem units() {
        return units;
    }
}
