package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.JsonWriting.ObjectBuilder;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** From a job sheet to JSON, as a person would write it: what there is nothing to say of is left out. */
final class SheetWriting {
    /** Longer whole numbers are written by their power of ten. */
    private static final int MOST_ZEROS = 20;

    private SheetWriting() {}

    static Json sheet(JobSheet sheet) {
        ObjectBuilder object = new ObjectBuilder()
                .put("sheet", sheet.sheet())
                .put("procedure", sheet.procedure())
                .put("revision", JsonWriting.number(sheet.revision()));
        putText(object, "card", sheet.card());
        putText(object, "tray", sheet.tray());
        object.put("engine", engine(sheet.engine())).put("date", sheet.date().toString());
        putText(object, "running_time", sheet.runningTime());
        return object.put("entries", JsonWriting.list(entries(sheet))).done();
    }

    private static Json engine(SheetEngine engine) {
        ObjectBuilder object = new ObjectBuilder();
        putText(object, "serial", engine.serial());
        putText(object, "condition", engine.condition());
        putText(object, "owner", engine.owner());
        putText(object, "variant", engine.variant());
        return object.done();
    }

    /** How long the engine had run is told where it is no longer what the entry above says. */
    private static List<Json> entries(JobSheet sheet) {
        List<Json> entries = new ArrayList<>();
        @Nullable Quantity running = sheet.runningTime();
        for (Entry entry : sheet.entries()) {
            boolean isNew = !Objects.equals(entry.runningTime(), running);
            running = entry.runningTime();
            entries.add(entry(isNew ? entry : entry.after(null)));
        }
        return entries;
    }

    /** One entry, with all that it says itself. */
    static Json entry(Entry entry) {
        ObjectBuilder object = new ObjectBuilder();
        object.put(entry.given() instanceof Given.Adjusted ? "adjust" : "observe", entry.observe());
        give(entry.given(), object);
        if (entry.corrects()) {
            object.put("corrects", JsonWriting.yesNo(true));
        }
        putText(object, "running_time", entry.runningTime());
        putText(object, "note", entry.note());
        putText(object, "by", entry.by());
        if (entry.at() != null) {
            object.put("at", moment(entry.at()));
        }
        return object.done();
    }

    /** With its seconds, even where there are none: ISO 8601 as RFC 3339 has it. */
    static String moment(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }

    private static void give(Given given, ObjectBuilder object) {
        if (given instanceof Given.Words words) {
            object.put("value", words.text());
        } else if (given instanceof Given.Flag flag) {
            object.put("value", JsonWriting.yesNo(flag.yes()));
        } else if (given instanceof Given.Count count) {
            object.put("value", number(count.number()));
        } else if (given instanceof Given.Series series) {
            object.put("series", JsonWriting.texts(series.readings()));
        } else if (given instanceof Given.Items items) {
            object.put("items", JsonWriting.texts(items.items()));
        } else if (given instanceof Given.Trials trials) {
            object.put(
                    "trials",
                    JsonWriting.list(
                            trials.trials().stream().map(SheetWriting::trial).toList()));
        } else if (given instanceof Given.Cannot cannot) {
            object.put("cannot", cannot.why());
        } else if (given instanceof Given.Adjusted adjusted) {
            putText(object, "turn", adjusted.turn());
        }
    }

    private static Json number(BigDecimal number) {
        boolean isShort = Math.abs(number.scale()) <= MOST_ZEROS;
        return new Json.Digits(Json.NOWHERE, isShort ? number.toPlainString() : number.toString());
    }

    private static Json trial(TrialGiven trial) {
        Json leaf = trial.leaves().size() == 1
                ? JsonWriting.text(trial.leaves().get(0))
                : JsonWriting.texts(trial.leaves());
        return new ObjectBuilder()
                .put("leaf", leaf)
                .put("result", trial.result().word())
                .done();
    }

    private static void putText(ObjectBuilder object, String key, @Nullable Object value) {
        if (value != null) {
            object.put(key, value.toString());
        }
    }
}
