package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A value written into the procedure.
 *
 * @param unit the unit that it is written in, or null where it is no number
 */
public record Constant(Value value, String words, @Nullable Unit unit) implements Formula {

    /** A value that has no unit. */
    public Constant(Value value, String words) {
        this(value, words, null);
    }

    @Override
    public Value value(Frame frame) {
        return value;
    }

    @Override
    public List<Formula> parts() {
        return List.of();
    }
}
