package io.github.leafproof.dsl.formula;

import java.util.List;

/** A value written into the procedure. */
public record Constant(Value value, String words) implements Formula {

    @Override
    public Value value(Frame frame) {
        return value;
    }

    @Override
    public List<Formula> parts() {
        return List.of();
    }
}
