package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;

/** What is offered to a gap to feel whether it enters: one leaf or pin, or several leaves held together. */
public sealed interface Feeler permits Leaf, LeafStack {

    /** How a person names it, by its markings: {@code 0.05 mm}, {@code 0.05 + 0.04 mm}. */
    String label();

    /** The length that has to fit into the gap, as far as it is known. */
    Estimate thickness();

    /** The leaves it consists of, the thickest marking first. */
    List<Leaf> leaves();

    /** True when one of the leaves was never measured, so that its thickness rests on the marking alone. */
    default boolean neverMeasured() {
        for (Leaf leaf : leaves()) {
            if (leaf.measured() == null) {
                return true;
            }
        }
        return false;
    }

    /**
     * The same feeler as it would count if its leaves had been measured and found to be what is stamped on them: what
     * measuring could change. A leaf that was measured stays as it is.
     */
    Feeler asIfMeasured();
}
