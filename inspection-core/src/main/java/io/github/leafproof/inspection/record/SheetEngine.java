package io.github.leafproof.inspection.record;

import org.jspecify.annotations.Nullable;

/**
 * The one engine on the bench, as far as the sheet says.
 *
 * @param serial the number on it; null when it has none
 * @param condition as it came in: new in box, old stock, used
 * @param owner whose it is, or the job it belongs to
 * @param variant which of the card's variants it is; {@code unknown} is a legal answer, null when the sheet does not say
 */
public record SheetEngine(
        @Nullable String serial,
        @Nullable String condition,
        @Nullable String owner,
        @Nullable String variant) {

    /** An engine of which the sheet says nothing. */
    public static SheetEngine unknown() {
        return new SheetEngine(null, null, null, null);
    }
}
