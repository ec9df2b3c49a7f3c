package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** From JSON to one entry of a job sheet. */
final class EntryReading {
    /** What an entry about an observation can give; exactly one of them. */
    private static final List<String> GIVEN = List.of("value", "trials", "series", "items", "cannot");

    private static final List<String> KEYS = List.of(
            "observe",
            "value",
            "trials",
            "series",
            "items",
            "cannot",
            "corrects",
            "by",
            "at",
            "note",
            "running_time",
            "adjust",
            "turn");

    private static final String ONE_OF = "an entry gives one of value, trials, series, items or cannot";

    private EntryReading() {}

    /**
     * Reads an entry.
     *
     * @param observed the names observed in earlier entries; this entry's is added
     */
    static Optional<Entry> entry(Spot spot, Set<String> observed) {
        return spot.fields("an entry", KEYS).flatMap(fields -> {
            int before = spot.errors();
            @Nullable String by = fields.orNull("by", s -> s.text("who made the entry, as text"));
            @Nullable OffsetDateTime at = fields.orNull("at", Spot::moment);
            @Nullable String note = fields.orNull("note", s -> s.text("a remark"));
            @Nullable Quantity runningTime = fields.orNull("running_time", s -> Amounts.zeroOrMore(s, Dimension.TIME));
            boolean corrects = fields.optional("corrects").flatMap(Spot::yesNo).orElse(false);
            Optional<String> name = fields.has("adjust") ? name(fields, "adjust") : name(fields, "observe");
            Optional<Given> given = fields.has("adjust") ? adjusted(fields) : observation(fields);
            name.ifPresent(observation -> {
                if (corrects && !fields.has("adjust") && !observed.contains(observation)) {
                    fields.complainAtKey(
                            "corrects",
                            FileMistake.LP653,
                            "no entry above this one observes " + observation + ", so there is nothing to correct",
                            "check the name, or leave corrects out");
                }
                if (!fields.has("adjust")) {
                    observed.add(observation);
                }
            });
            return spot.errors() > before
                    ? Optional.empty()
                    : Optional.of(new Entry(
                            name.orElseThrow(),
                            given.orElseThrow(),
                            corrects,
                            by,
                            at,
                            note,
                            runningTime,
                            fields.place()));
        });
    }

    private static Optional<String> name(Fields fields, String key) {
        return fields.required(key, "what was observed, by the procedure's name for it")
                .flatMap(spot -> spot.text("the name of an observation"));
    }

    private static Optional<Given> adjusted(Fields fields) {
        for (String key : List.of("observe", "value", "trials", "series", "items", "cannot", "corrects")) {
            if (fields.has(key)) {
                fields.complainAtKey(
                        key,
                        FileMistake.LP652,
                        "an adjustment has no " + key,
                        "give the adjustment and what is observed after it an entry each");
            }
        }
        return Optional.of(new Given.Adjusted(fields.orNull("turn", spot -> Amounts.of(spot, Dimension.ANGLE))));
    }

    private static Optional<Given> observation(Fields fields) {
        if (fields.has("turn")) {
            fields.complainAtKey(
                    "turn",
                    FileMistake.LP652,
                    "only an adjustment has a turn",
                    "give the adjustment an entry of its own: { \"adjust\": …, \"turn\": … }");
        }
        List<String> given = GIVEN.stream().filter(fields::has).toList();
        if (given.size() > 1) {
            fields.complainAtKey(
                    given.get(1),
                    FileMistake.LP651,
                    "this entry gives " + String.join(" and ", given),
                    ONE_OF + "; give each an entry of its own");
        }
        if (given.isEmpty()) {
            fields.complain(
                    FileMistake.LP651,
                    "this entry gives nothing",
                    ONE_OF + "; where something could not be observed, cannot says why");
        }
        Optional<Given> first = Optional.empty();
        for (String key : given) {
            Optional<Given> read = fields.optional(key).flatMap(spot -> given(key, spot));
            first = first.isPresent() ? first : read;
        }
        return first;
    }

    private static Optional<Given> given(String key, Spot spot) {
        return switch (key) {
            case "trials" -> TrialReading.trials(spot).map(Given.Trials::new);
            case "series" -> SeriesReading.series(spot).map(Given.Series::new);
            case "items" -> items(spot).map(Given.Items::new);
            case "cannot" -> spot.text("why it could not be observed").map(Given.Cannot::new);
            default -> value(spot);
        };
    }

    private static Optional<Given> value(Spot spot) {
        if (spot.json() instanceof Json.Truth truth) {
            return Optional.of(new Given.Flag(truth.yes()));
        }
        if (spot.json() instanceof Json.Digits) {
            return spot.number("a number").map(Given.Count::new);
        }
        if (spot.json() instanceof Json.Text) {
            return spot.text("what was observed").map(Given.Words::new);
        }
        return spot.wrongKind(
                "a text, a number, true or false",
                "a list of leaves goes under trials, of readings under series, of things under items; where nothing could "
                        + "be observed, cannot says why");
    }

    /** None at all is an answer: the box was looked into, and it was empty. */
    private static Optional<List<String>> items(Spot spot) {
        return spot.items("a list of the things found").map(spots -> FactReading.distinct(spots, "a thing's name"));
    }
}
