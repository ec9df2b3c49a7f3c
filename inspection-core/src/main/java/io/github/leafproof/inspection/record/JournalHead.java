package io.github.leafproof.inspection.record;

import java.util.List;

/**
 * What the first line of a journal says: for which sheet it is kept, and by which files the work is done. Who goes on with
 * other files goes on with other work.
 *
 * @param sheet the sheet before its first entry
 * @param procedure the procedure by its name, and the digest of its own file
 * @param parts the files that the procedure uses
 * @param card the engine card
 * @param tray the gauge tray
 */
public record JournalHead(
        JobSheet sheet, Report.Input procedure, List<Report.Input> parts, Report.Input card, Report.Input tray) {

    /** How a journal begins. */
    static final String FORMAT = "leafproof-journal/1";

    public JournalHead {
        parts = List.copyOf(parts);
    }
}
