package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From JSON to repeated readings. Of what, only the procedure knows; that all are of the same, anybody can tell. */
final class SeriesReading {
    private SeriesReading() {}

    static Optional<List<String>> series(Spot list) {
        return list.someItems("a list of readings").map(spots -> {
            List<Quantity> readings = new ArrayList<>();
            List<String> written = new ArrayList<>();
            spots.forEach(spot -> reading(spot).ifPresent(reading -> {
                complainUnlessLike(readings, reading, spot);
                readings.add(reading);
                written.add(spot.json() instanceof Json.Text text ? text.text() : reading.toString());
            }));
            return written;
        });
    }

    private static void complainUnlessLike(List<Quantity> before, Quantity reading, Spot spot) {
        if (!before.isEmpty() && !before.get(0).dimension().equals(reading.dimension())) {
            spot.complain(
                    FileMistake.LP622,
                    "a series is of one kind, and " + reading + " is not of the kind of " + before.get(0),
                    "give every reading of the series in a unit of "
                            + before.get(0).dimension().words());
        }
    }

    private static Optional<Quantity> reading(Spot spot) {
        if (spot.json() instanceof Json.Digits) {
            return spot.number("a reading").map(FactReading::plain);
        }
        return spot.text("a reading in text").flatMap(text -> {
            try {
                return Optional.of(Quantity.parse(text));
            } catch (QuantityException e) {
                return spot.no(FileMistake.LP621, String.valueOf(e.getMessage()), e.remedy());
            }
        });
    }
}
