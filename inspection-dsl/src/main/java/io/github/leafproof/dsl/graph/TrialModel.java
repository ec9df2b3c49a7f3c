package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.MonteCarlo;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.List;

/**
 * A computed number, and all derived values that it is computed from, to be computed anew in each trial of a Monte Carlo.
 * A condition on the way is decided in each trial, too, as the numbers drawn have it; what leaves prove of a gap stays
 * proven.
 */
final class TrialModel implements MonteCarlo.Model {

    private final Formula number;
    private final List<Node.Derived> before;
    private final Value[] slots;
    private final Frame deriving;
    private final Frame judging;

    /**
     * A model of a number.
     *
     * @param before the derived values that it rests on, each after all that it reads
     * @param slots the values of the engine, to be written into
     * @param deriving the confidence with which conditions of derived values are decided
     * @param judging the confidence with which those of the number itself are
     */
    TrialModel(Formula number, List<Node.Derived> before, Value[] slots, DecisionRule deriving, DecisionRule judging) {
        this.number = number;
        this.before = before;
        this.slots = slots;
        this.deriving = Frame.of(slots, deriving, UnitSystem.METRIC);
        this.judging = Frame.of(slots, judging, UnitSystem.METRIC);
    }

    @Override
    public double in(MonteCarlo.Trial trial) {
        Frame drawing = deriving.drawing(trial);
        for (Node.Derived value : before) {
            slots[value.slot()] = value.formula().value(drawing);
        }
        return Computed.number(number, judging.drawing(trial)) instanceof Value.Amount known
                ? known.estimate().value()
                : Double.NaN;
    }
}
