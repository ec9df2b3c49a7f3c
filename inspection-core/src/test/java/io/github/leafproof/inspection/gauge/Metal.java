package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;

/** Leaves for the tests of this room. */
final class Metal {
    static final String SET = "leaves";
    static final double MM = 1e-3;
    static final double INCH = 0.0254;

    private Metal() {}

    static Quantity q(String text) {
        return Quantity.parse(text);
    }

    static Leaf leaf(String marked, String measured, String u) {
        return Leaf.measured(SET, q(marked), q(measured), Uncertainty.standard(q(u)));
    }
}
