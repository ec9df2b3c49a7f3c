package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.mechanism.Answer.Known;
import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.Optional;

/**
 * A lash that was read on warm metal. Whether lash opens or closes with heat depends on materials and lengths (sources
 * disagree on the sign, and both can be right), so without these a warm reading says nothing about the cold lash.
 *
 * @param lash what was read, a length
 * @param excess how much warmer the metal was than the shop, a temperature difference
 */
public record WarmReading(Estimate lash, Estimate excess) {
    /** Within this much of the shop, metal counts as cold (common practice). */
    private static final double COLD = 10;

    public WarmReading {
        if (!lash.dimension().equals(Dimension.LENGTH)
                || !excess.dimension().equals(Dimension.TEMPERATURE_DIFFERENCE)) {
            throw new IllegalArgumentException("a warm reading is a length and a temperature difference");
        }
    }

    /**
     * The lash when cold.
     *
     * @param change by how much it has opened with the heat, from {@link Thermal#PUSH_ROD_LASH_CHANGE} and {@link
     *     Thermal#VALVE_LASH_CHANGE}; empty where the materials are not known
     */
    public Answer coldLash(Optional<Estimate> change) {
        if (change.isPresent()) {
            return new Known(lash.minus(change.get()));
        }
        if (excess.value() <= COLD) {
            return new Known(lash);
        }
        String warm = Display.of(excess.value(), excess.dimension(), 0, Unit.parse("K"));
        return new Refusal(
                "cold_lash",
                "excess",
                "the metal is " + warm
                        + " warmer than the shop, and without materials and lengths of cylinder, push rod"
                        + " and valve nobody knows whether lash opens or closes with heat: let it cool");
    }

    /** How long to wait until the metal counts as cold; nothing when it already does. */
    public Answer wait(Estimate timeConstant) {
        if (excess.value() <= COLD) {
            return new Known(Estimate.exact(0, Dimension.TIME));
        }
        return Thermal.COOLING_TIME.of(excess, Estimate.exact(COLD, Dimension.TEMPERATURE_DIFFERENCE), timeConstant);
    }
}
