package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.SheetEngine;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a job sheet says above its entries, and a person knows before the first step.
 *
 * @param sheet the job's number or name
 * @param date the day the work is done; calibrations are due or not on this day
 * @param engine the engine on the bench, as far as it is known
 * @param runningTime how long it had run in all before the work began; null when nobody kept account
 * @param card the file of the engine card, as it is seen from the sheet's folder; null when whoever judges names it
 * @param tray the file of the gauge tray, as it is seen from the sheet's folder; null when whoever judges names it
 */
public record Heading(
        String sheet,
        LocalDate date,
        SheetEngine engine,
        @Nullable Quantity runningTime,
        @Nullable String card,
        @Nullable String tray) {

    /** A sheet for an engine of which nothing is known yet. */
    public static Heading of(String sheet, LocalDate date) {
        return new Heading(sheet, date, SheetEngine.unknown(), null, null, null);
    }

    /** The same for this engine. */
    public Heading withEngine(SheetEngine known) {
        return new Heading(sheet, date, known, runningTime, card, tray);
    }

    /** The same for an engine that had run so long. */
    public Heading withRunningTime(@Nullable Quantity known) {
        return new Heading(sheet, date, engine, known, card, tray);
    }

    /** The same, naming the files of card and tray as they are seen from the sheet's folder. */
    public Heading withFiles(@Nullable String cardFile, @Nullable String trayFile) {
        return new Heading(sheet, date, engine, runningTime, cardFile, trayFile);
    }

    /** A sheet for this procedure on which nothing is entered. */
    JobSheet emptySheet(CheckGraph.Identity procedure) {
        return new JobSheet(
                sheet, procedure.name(), procedure.revision(), card, tray, engine, date, runningTime, List.of());
    }
}
