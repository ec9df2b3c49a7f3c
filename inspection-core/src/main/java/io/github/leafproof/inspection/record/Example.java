package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.Map;

/** What a quantity of some dimension looks like, for those who got it wrong. */
final class Example {
    private static final Map<Dimension, String> USUAL = Map.of(
            Dimension.LENGTH, "0.05 mm",
            Dimension.VOLUME, "15.0 cm3",
            Dimension.LENGTH_PER_TURN, "0.45 mm per turn",
            Dimension.ANGLE, "3 turns",
            Dimension.TEMPERATURE, "21 °C",
            Dimension.TEMPERATURE_DIFFERENCE, "1 K",
            Dimension.PRESSURE, "50 kPa",
            Dimension.TORQUE, "0.5 N·m",
            Dimension.ROTATIONAL_SPEED, "2300 rpm");

    private Example() {}

    static String of(Dimension dimension) {
        String usual = USUAL.get(dimension);
        return usual == null ? "1 " + Unit.coherent(dimension).symbol() : usual;
    }

    /** {@code a length}, {@code an angle}. */
    static String withArticle(String noun) {
        return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }
}
