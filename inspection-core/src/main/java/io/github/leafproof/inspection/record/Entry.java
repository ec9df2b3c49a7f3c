package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * One line of a job sheet: what was observed, or what was adjusted.
 *
 * @param observe the observation's name, {@code lash[intake]}; for an adjustment the observation it changes
 * @param given what was entered
 * @param corrects whether an earlier entry of this observation was a slip of the pen: this one counts, the earlier one
 *     stays visible
 * @param by who entered it; null when the sheet does not say
 * @param at when; null when the sheet does not say
 * @param note a remark; null when there is none
 * @param runningTime how long the engine had run in all by then, as this entry, one above it or the sheet says; null when
 *     none does
 * @param place where in the sheet it stands, as {@link Problem#place()} gives it
 */
public record Entry(
        String observe,
        Given given,
        boolean corrects,
        @Nullable String by,
        @Nullable OffsetDateTime at,
        @Nullable String note,
        @Nullable Quantity runningTime,
        String place) {

    /** The same entry, made when the engine had run so long. */
    Entry after(@Nullable Quantity running) {
        return new Entry(observe, given, corrects, by, at, note, running, place);
    }
}
