package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.OptionalDouble;

/**
 * The two leaves to own for a window: the thinnest that shows the gap to be large enough when it enters, and the thickest
 * that shows it to be small enough when it refuses. They lie a little inside the limits; leaves of exactly the limit sizes
 * can never prove anything.
 *
 * @param go in metres: the leaf that has to enter; empty when there is no lower limit
 * @param noGo in metres: the leaf that has to refuse; empty when there is no upper limit
 * @param u in metres: the standard uncertainty to which both are measured
 */
public record LeafPair(OptionalDouble go, OptionalDouble noGo, double u) {

    /** False when the window is too narrow for leaves known no better than this. */
    public boolean canShowInside() {
        return go.isEmpty() || noGo.isEmpty() || go.getAsDouble() < noGo.getAsDouble();
    }

    /** The pair in words, for whoever sets up a tray. */
    public String words(UnitSystem system) {
        double typical = noGo.orElseGet(() -> go.orElse(0));
        String known = " (u " + Display.of(u, Dimension.LENGTH, u, system.unitFor(Dimension.LENGTH, typical)) + ")";
        if (!canShowInside()) {
            return "No two leaves can show this window" + known + ": it is too narrow for how well they are known.";
        }
        Inward inward = Inward.toSecondDigitOf(u, typical, system);
        if (go.isEmpty()) {
            return "The leaf to own measures " + inward.atMost(noGo.orElseThrow()) + known + " and must refuse.";
        }
        if (noGo.isEmpty()) {
            return "The leaf to own measures " + inward.atLeast(go.getAsDouble()) + known + " and must pass.";
        }
        return "The pair to own measures " + inward.atLeast(go.getAsDouble()) + ", which must pass, and "
                + inward.atMost(noGo.getAsDouble()) + ", which must refuse" + known + ".";
    }
}
