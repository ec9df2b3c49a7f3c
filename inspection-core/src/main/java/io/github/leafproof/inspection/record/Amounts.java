package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import java.util.Optional;

/** Asks a value of a file for an amount, and complains of what no such amount can be. */
final class Amounts {
    private Amounts() {}

    /** An amount of this dimension. */
    static Optional<Quantity> of(Spot spot, Dimension dimension) {
        return any(spot, dimension).flatMap(quantity -> ofDimension(spot, quantity, dimension));
    }

    /** An amount of this dimension above zero. */
    static Optional<Quantity> aboveZero(Spot spot, Dimension dimension) {
        return of(spot, dimension).flatMap(quantity -> aboveZero(spot, quantity));
    }

    /** An amount of this dimension, zero or more. */
    static Optional<Quantity> zeroOrMore(Spot spot, Dimension dimension) {
        return of(spot, dimension)
                .flatMap(quantity -> quantity.base() >= 0
                        ? Optional.of(quantity)
                        : spot.no(
                                FileMistake.LP623,
                                quantity + " is below zero, which nothing of this kind can be",
                                "write an amount of zero or more"));
    }

    /** How far apart two amounts of this dimension can be, above zero: {@code 1 °C} is understood as {@code 1 K}. */
    static Optional<Quantity> interval(Spot spot, Dimension dimension) {
        return any(spot, dimension.difference())
                .map(Quantity::asDifference)
                .flatMap(quantity -> ofDimension(spot, quantity, dimension.difference()))
                .flatMap(quantity -> aboveZero(spot, quantity));
    }

    private static Optional<Quantity> aboveZero(Spot spot, Quantity quantity) {
        return quantity.base() > 0
                ? Optional.of(quantity)
                : spot.no(
                        FileMistake.LP623,
                        quantity + " is not above zero, as anything of this kind must be",
                        "write an amount above zero; leave the key out where nothing is known");
    }

    private static Optional<Quantity> any(Spot spot, Dimension expected) {
        if (!(spot.json() instanceof Json.Text)) {
            return spot.wrongKind(
                    Example.withArticle(expected.words()) + " in text",
                    "write a number and a unit in double quotes, such as \"" + Example.of(expected) + "\"");
        }
        return spot.text(Example.withArticle(expected.words())).flatMap(text -> {
            try {
                return Optional.of(Quantity.parse(text));
            } catch (QuantityException e) {
                return spot.no(FileMistake.LP621, String.valueOf(e.getMessage()), e.remedy());
            }
        });
    }

    private static Optional<Quantity> ofDimension(Spot spot, Quantity quantity, Dimension dimension) {
        if (quantity.dimension().equals(dimension)) {
            return Optional.of(quantity);
        }
        String wanted = Example.withArticle(dimension.words());
        String found = quantity.dimension().isRatio()
                ? "a number without a unit"
                : Example.withArticle(quantity.dimension().words());
        return spot.no(
                FileMistake.LP622,
                "this should be " + wanted + ", and " + quantity + " is " + found,
                "write " + wanted + ", such as \"" + Example.of(dimension) + "\"");
    }
}
