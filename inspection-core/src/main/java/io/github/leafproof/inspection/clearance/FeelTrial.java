package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.Optional;

/**
 * One leaf, pin or stack offered to a gap, and what was felt.
 *
 * @param feeler what was offered
 * @param result what was felt
 * @param dragBand in metres: how much wider than a dragging leaf the gap can be. Zero says that nobody has stated it; then a
 *     drag sets no upper bound
 */
public record FeelTrial(Feeler feeler, TrialResult result, double dragBand) {

    /** Refuses a drag band that is below zero or no number. */
    public FeelTrial {
        if (!(dragBand >= 0) || Double.isInfinite(dragBand)) {
            throw new IllegalArgumentException("a drag band is zero or more, not " + dragBand);
        }
    }

    /** A trial with a feeler of this set, whose drag band holds. */
    public static FeelTrial of(Feeler feeler, TrialResult result, FeelSet set) {
        return new FeelTrial(feeler, result, set.dragBand().base());
    }

    /** What the gap is no smaller than; empty when the leaf refused. */
    public Optional<Estimate> atLeast() {
        return result == TrialResult.REFUSES ? Optional.empty() : Optional.of(feeler.thickness());
    }

    /** What the gap is smaller than; empty when the leaf passed, or dragged without a stated drag band. */
    public Optional<Estimate> lessThan() {
        return switch (result) {
            case PASSES -> Optional.empty();
            case REFUSES -> Optional.of(feeler.thickness());
            case DRAGS ->
                dragBand == 0
                        ? Optional.empty()
                        : Optional.of(feeler.thickness().plus(Estimate.exact(dragBand, Dimension.LENGTH)));
        };
    }
}
