package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Unit;
import java.util.List;

/** The same value, shown in a unit of the writer's choice. */
public record InUnit(Formula part, Unit unit) implements Formula {

    @Override
    public Value value(Frame frame) {
        Value value = Computed.number(part, frame);
        return value instanceof Value.Amount number ? new Value.Amount(number.estimate(), unit) : value;
    }

    @Override
    public String words() {
        return part.words() + " in " + unit.symbol();
    }

    @Override
    public List<Formula> parts() {
        return List.of(part);
    }
}
