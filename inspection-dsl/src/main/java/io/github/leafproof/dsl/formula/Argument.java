package io.github.leafproof.dsl.formula;

import java.util.List;

/** An argument of the function whose body this stands in. */
public record Argument(int number, String words) implements Formula {

    @Override
    public Value value(Frame frame) {
        return frame.argument(number);
    }

    @Override
    public List<Formula> parts() {
        return List.of();
    }
}
