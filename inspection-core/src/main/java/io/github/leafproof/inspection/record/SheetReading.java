package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** From JSON to a job sheet. */
final class SheetReading {
    private static final List<String> KEYS =
            List.of("sheet", "procedure", "revision", "card", "tray", "engine", "date", "running_time", "entries");

    private static final List<String> ENGINE_KEYS = List.of("serial", "condition", "owner", "variant");

    private SheetReading() {}

    static Optional<JobSheet> sheet(Spot spot) {
        return spot.fields("a job sheet", KEYS).flatMap(fields -> {
            int before = spot.errors();
            Optional<String> sheet =
                    fields.required("sheet", "the job's number or name").flatMap(s -> s.text("a name"));
            Optional<String> procedure = fields.required("procedure", "the name of the procedure that was followed")
                    .flatMap(s -> s.text("a name"));
            Optional<Integer> revision = fields.required("revision", "which revision of the procedure was followed")
                    .flatMap(s -> s.whole("a revision", 1, Integer.MAX_VALUE));
            Optional<String> card = fields.optional("card").flatMap(s -> s.text("the engine card's file"));
            Optional<String> tray = fields.optional("tray").flatMap(s -> s.text("the gauge tray's file"));
            Optional<SheetEngine> engine = fields.required(
                            "engine",
                            "which engine was on the bench: its serial, condition, owner and variant, as far as known")
                    .flatMap(SheetReading::engine);
            Optional<LocalDate> date =
                    fields.required("date", "the day the work was done").flatMap(Spot::date);
            @Nullable Quantity runningTime = fields.orNull("running_time", s -> Amounts.zeroOrMore(s, Dimension.TIME));
            List<Entry> entries = fields.required("entries", "what was entered, in that order")
                    .flatMap(list -> list.items("a list of entries"))
                    .map(spots -> new Timeline(new HashSet<>(), null, runningTime).entries(spots))
                    .orElse(List.of());
            return spot.errors() > before
                    ? Optional.empty()
                    : Optional.of(new JobSheet(
                            sheet.orElseThrow(),
                            procedure.orElseThrow(),
                            revision.orElseThrow(),
                            card.orElse(null),
                            tray.orElse(null),
                            engine.orElseThrow(),
                            date.orElseThrow(),
                            runningTime,
                            entries));
        });
    }

    private static Optional<SheetEngine> engine(Spot spot) {
        return spot.fields("what is known of the engine", ENGINE_KEYS)
                .map(fields -> new SheetEngine(
                        fields.orNull("serial", s -> s.text("a serial number as text")),
                        fields.orNull("condition", s -> s.text("a condition in words")),
                        fields.orNull("owner", s -> s.text("an owner or a job")),
                        fields.orNull("variant", s -> s.text("a variant of the card"))));
    }
}
