package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was entered for one engine on one day, in the order it was entered.
 *
 * @param sheet the job's number or name
 * @param procedure the name of the procedure that was followed
 * @param revision which revision of it, one or more
 * @param card the file of the engine card; null when whoever judges names it
 * @param tray the file of the gauge tray; null when whoever judges names it
 * @param engine the engine on the bench
 * @param date the day the work was done; calibrations are due or not on this day
 * @param runningTime how long the engine had run in all when the sheet was begun; null when nobody kept account
 * @param entries what was entered, a timeline: a later entry never overwrites an earlier one
 */
public record JobSheet(
        String sheet,
        String procedure,
        int revision,
        @Nullable String card,
        @Nullable String tray,
        SheetEngine engine,
        LocalDate date,
        @Nullable Quantity runningTime,
        List<Entry> entries) {
    public JobSheet {
        entries = List.copyOf(entries);
    }

    /** The same heading above other entries. */
    public JobSheet withEntries(List<Entry> others) {
        return new JobSheet(sheet, procedure, revision, card, tray, engine, date, runningTime, others);
    }
}
