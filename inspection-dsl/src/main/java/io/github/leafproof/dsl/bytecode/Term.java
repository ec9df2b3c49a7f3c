package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Value;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A formula that can be compiled.
 *
 * @param shape what comes of it
 * @param written writes the code that works it out
 * @param known its value, where that does not depend on the engine
 */
record Term(Shape shape, Writing written, @Nullable Value known) {

    Term(Shape shape, Writing written) {
        this(shape, written, null);
    }

    /** Writes code, and tells in which local variables it leaves what it worked out. */
    @FunctionalInterface
    interface Writing {
        Local to(Code code);
    }

    /**
     * Where something lies.
     *
     * @param state the local variable that holds its truth, or what it lacks; below zero where it never lacks anything
     * @param value the local variable that holds the value, or the line of the slate; below zero where there is none beside the
     *     truth
     */
    record Local(int state, int value) {
        static final int NONE = -1;

        boolean mayLack() {
            return state >= 0;
        }
    }

    /** The number, where it is a number that does not depend on the engine. */
    Optional<Double> constant() {
        return known instanceof Value.Amount amount && shape.isDouble()
                ? Optional.of(amount.estimate().value())
                : Optional.empty();
    }
}
