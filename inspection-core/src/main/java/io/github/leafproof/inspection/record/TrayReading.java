package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.gauge.Calibration;
import io.github.leafproof.inspection.gauge.Counter;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From JSON to a gauge tray. */
final class TrayReading {
    private static final List<String> KINDS = List.of("leaf set", "pin set", "reading", "counter");

    private static final Map<String, List<String>> KEYS = Map.of(
            "leaf set", List.of("name", "kind", "drag_band", "film", "leaves"),
            "pin set", List.of("name", "kind", "drag_band", "pins"),
            "reading", List.of("name", "kind", "of", "resolution", "u", "limits", "U", "k", "calibrated", "due"),
            "counter", List.of("name", "kind"));

    private static final Quantity NOTHING = Quantity.of(0, Unit.parse("mm"));

    private TrayReading() {}

    static Optional<GaugeTray> tray(Spot spot) {
        return spot.fields("a gauge tray", List.of("tray", "gauges")).flatMap(fields -> {
            int before = spot.errors();
            Optional<String> name =
                    fields.required("tray", "what the shop calls the tray").flatMap(s -> s.text("a name"));
            List<Gauge> gauges = new ArrayList<>();
            fields.required("gauges", "what lies in the tray")
                    .flatMap(list -> list.items("a list of gauges"))
                    .ifPresent(spots -> gauges(spots, gauges));
            return spot.errors() > before ? Optional.empty() : Optional.of(new GaugeTray(name.orElseThrow(), gauges));
        });
    }

    private static void gauges(List<Spot> spots, List<Gauge> gauges) {
        Set<String> names = new HashSet<>();
        for (Spot spot : spots) {
            spot.anyFields("a gauge").ifPresent(fields -> {
                complainOfSecond(fields, names);
                gauge(spot, fields).ifPresent(gauges::add);
            });
        }
    }

    private static void complainOfSecond(Fields fields, Set<String> names) {
        fields.optional("name").filter(spot -> spot.json() instanceof Json.Text).ifPresent(spot -> {
            String name = ((Json.Text) spot.json()).text();
            if (!names.add(name)) {
                spot.complain(
                        FileMistake.LP644,
                        "the tray has another gauge called " + Shown.quoted(name),
                        "a procedure asks for a gauge by its name, so each may be there once");
            }
        });
    }

    private static Optional<Gauge> gauge(Spot spot, Fields fields) {
        int before = spot.errors();
        Optional<String> name =
                fields.required("name", "what a procedure calls the gauge").flatMap(s -> s.text("a name"));
        Optional<String> kind = fields.required("kind", "what sort of gauge it is: " + String.join(", ", KINDS))
                .flatMap(s -> s.word("a kind of gauge", KINDS));
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        fields.allow(KEYS.getOrDefault(kind.get(), List.of()));
        String called = name.orElse("?");
        Optional<Gauge> gauge = switch (kind.get()) {
            case "leaf set" -> leafSet(called, fields, before, spot);
            case "pin set" -> pinSet(called, fields, before, spot);
            case "reading" -> instrument(called, fields, before, spot);
            default -> Optional.of(new Counter(called));
        };
        return spot.errors() > before ? Optional.empty() : gauge;
    }

    private static Optional<Gauge> leafSet(String name, Fields fields, int before, Spot spot) {
        List<Leaf> leaves = fields.required("leaves", "the leaves of the set, each with marking and thickness")
                .map(new LeafReading(name, "leaf")::leaves)
                .orElse(List.of());
        Quantity dragBand = allowance(fields, "drag_band");
        Quantity film = allowance(fields, "film");
        return spot.errors() > before ? Optional.empty() : Optional.of(new LeafSet(name, leaves, dragBand, film));
    }

    private static Optional<Gauge> pinSet(String name, Fields fields, int before, Spot spot) {
        List<Leaf> pins = fields.required("pins", "the pins of the set, each with marking and diameter")
                .map(new LeafReading(name, "pin")::leaves)
                .orElse(List.of());
        Quantity dragBand = allowance(fields, "drag_band");
        return spot.errors() > before ? Optional.empty() : Optional.of(new PinSet(name, pins, dragBand));
    }

    private static Quantity allowance(Fields fields, String key) {
        return fields.optional(key)
                .flatMap(spot -> Amounts.zeroOrMore(spot, Dimension.LENGTH))
                .orElse(NOTHING);
    }

    private static Optional<Gauge> instrument(String name, Fields fields, int before, Spot spot) {
        Optional<Dimension> of = fields.required("of", "what the instrument reads, such as temperature or length")
                .flatMap(s -> s.word("a kind of quantity", Dimension.names()))
                .flatMap(Dimension::named);
        Calibration calibration = UncertaintyReading.calibration(fields);
        if (of.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> resolution = fields.optional("resolution").flatMap(s -> Amounts.interval(s, of.get()));
        Optional<Uncertainty> uncertainty =
                UncertaintyReading.isStated(fields) ? UncertaintyReading.read(fields, of.get()) : Optional.empty();
        if (!fields.has("resolution") && !UncertaintyReading.isStated(fields)) {
            fields.complain(
                    FileMistake.LP641,
                    "nothing says how far this instrument may be off",
                    UncertaintyReading.HOW_TO_STATE + ", or at least the \"resolution\" of its display");
        }
        return spot.errors() > before
                ? Optional.empty()
                : Optional.of(new ReadingInstrument(
                        name, of.get(), resolution.orElse(null), uncertainty.orElse(null), calibration));
    }
}
