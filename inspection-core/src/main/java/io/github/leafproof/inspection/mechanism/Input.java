package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * One thing that a calculation takes.
 *
 * @param name what it is called, words joined by underscores
 * @param meaning what it is, for somebody who measures it
 * @param low the least that the formula holds for
 * @param high the most
 * @param because why no less and no more
 */
public record Input(String name, String meaning, Quantity low, Quantity high, String because) {
    public Input {
        if (!low.dimension().equals(high.dimension()) || low.base() >= high.base()) {
            throw new QuantityException(
                    name + " cannot go from " + low + " to " + high, "give the least first, and both of the same kind");
        }
    }

    /** An input whose range is written as people write quantities. */
    static Input of(String name, String meaning, String low, String high, String because) {
        return new Input(name, meaning, Quantity.parse(low), Quantity.parse(high), because);
    }

    /** The same input by another name. */
    Input called(String other, String itsMeaning) {
        return new Input(other, itsMeaning, low, high, because);
    }

    /** What it is an amount of. */
    public Dimension dimension() {
        return low.dimension();
    }

    /** The unit its range is written in. */
    public Unit unit() {
        return low.unit();
    }

    /** Its name as people say it. */
    public String words() {
        return name.replace('_', ' ');
    }

    /** Why a value, in coherent SI units, is outside the range; empty when it is inside. */
    Optional<String> refused(double value) {
        if (value >= low.base() && value <= high.base()) {
            return Optional.empty();
        }
        return Optional.of(is(value) + " and must be from " + low + " to " + high + ": " + because);
    }

    String is(double value) {
        return "the " + words() + " is " + shown(value);
    }

    private String shown(double value) {
        return Display.of(value, dimension(), 0, unit());
    }

    /** A limit that follows from other inputs, to as many digits as a person compares with. */
    String limit(double value) {
        double digits = BigDecimal.valueOf(unit().fromBase(value))
                .round(new MathContext(4))
                .doubleValue();
        return shown(unit().toBase(digits));
    }
}
