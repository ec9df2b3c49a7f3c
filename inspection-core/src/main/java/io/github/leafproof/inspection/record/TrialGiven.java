package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.clearance.TrialResult;
import java.util.List;

/**
 * One offering of a leaf, a pin or a stack of leaves to a gap.
 *
 * @param leaves the markings of what was offered, one or more, such as {@code 0.05 mm}
 * @param result what it did
 * @param place where in the sheet it stands, as {@link Problem#place()} gives it
 */
public record TrialGiven(List<String> leaves, TrialResult result, String place) {
    public TrialGiven {
        leaves = List.copyOf(leaves);
    }
}
