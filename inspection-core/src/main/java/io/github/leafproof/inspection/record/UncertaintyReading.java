package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.gauge.Calibration;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** From JSON to how well a gauge is known, and since when. */
final class UncertaintyReading {
    /** The three ways to state it; {@code k} belongs to {@code U}. */
    static final List<String> WAYS = List.of("u", "limits", "U");

    static final List<String> KEYS = List.of("u", "limits", "U", "k");

    static final List<String> CALIBRATION_KEYS = List.of("calibrated", "due");

    static final String HOW_TO_STATE =
            "state one of \"u\" (standard uncertainty), \"limits\" (the most it can be off) or \"U\" with its \"k\"";

    private UncertaintyReading() {}

    static boolean isStated(Fields fields) {
        return KEYS.stream().anyMatch(fields::has);
    }

    /** The uncertainty of something of this dimension; empty after a complaint. */
    static Optional<Uncertainty> read(Fields fields, Dimension dimension) {
        List<String> stated = WAYS.stream().filter(fields::has).toList();
        Optional<Quantity> amount = Optional.empty();
        for (String way : stated) {
            amount = fields.optional(way).flatMap(spot -> Amounts.interval(spot, dimension));
        }
        Optional<Double> k = fields.optional("k").flatMap(UncertaintyReading::factor);
        if (stated.size() > 1) {
            fields.complainAtKey(
                    stated.get(1),
                    FileMistake.LP642,
                    "the uncertainty is stated in " + stated.size() + " ways: " + String.join(", ", stated),
                    "keep one of them, so that nobody has to guess which holds");
            return Optional.empty();
        }
        if (fields.has("k") != fields.has("U")) {
            fields.complainAtKey(
                    fields.has("k") ? "k" : "U",
                    FileMistake.LP642,
                    fields.has("k") ? "k stands without the U it belongs to" : "U stands without its k",
                    "an expanded uncertainty is U together with its coverage factor k, which is mostly 2");
            return Optional.empty();
        }
        return amount.flatMap(size -> switch (stated.get(0)) {
            case "u" -> Optional.of(Uncertainty.standard(size));
            case "limits" -> Optional.of(Uncertainty.limits(size));
            default -> k.map(factor -> Uncertainty.expanded(size, factor));
        });
    }

    private static Optional<Double> factor(Spot spot) {
        return spot.number("the coverage factor as a plain number")
                .flatMap(number -> number.signum() > 0
                        ? Optional.of(number.doubleValue())
                        : spot.no(
                                FileMistake.LP623,
                                "a coverage factor k of " + number + " makes no sense",
                                "k is a number above zero, mostly 2"));
    }

    static Calibration calibration(Fields fields) {
        Optional<LocalDate> calibrated = fields.optional("calibrated").flatMap(Spot::date);
        Optional<LocalDate> due = fields.optional("due").flatMap(Spot::date);
        if (calibrated.isPresent() && due.isPresent() && due.get().isBefore(calibrated.get())) {
            fields.optional("due")
                    .ifPresent(spot -> spot.complain(
                            FileMistake.LP626,
                            "due on " + due.get() + ", which is before it was calibrated on " + calibrated.get(),
                            "correct one of the two; due is the last day the calibration is to be relied on"));
            return Calibration.unknown();
        }
        return new Calibration(calibrated.orElse(null), due.orElse(null));
    }
}
