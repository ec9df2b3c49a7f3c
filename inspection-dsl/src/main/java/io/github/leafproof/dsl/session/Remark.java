package io.github.leafproof.dsl.session;

import io.github.leafproof.inspection.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What there is to say beside an entry.
 *
 * @param note in words; null when there is none
 * @param runningTime how long the engine had run in all by now; null when it did not run, or nobody keeps account
 */
public record Remark(@Nullable String note, @Nullable Quantity runningTime) {

    /** Nothing to say. */
    public static final Remark NONE = new Remark(null, null);

    /** A remark in words. */
    public static Remark of(String note) {
        return new Remark(note, null);
    }
}
