package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** From JSON to what leaves and pins did when they were offered to a gap. */
final class TrialReading {
    private static final List<String> RESULTS =
            Arrays.stream(TrialResult.values()).map(TrialResult::word).toList();

    private TrialReading() {}

    static Optional<List<TrialGiven>> trials(Spot list) {
        return list.someItems("a list of trials").map(spots -> {
            List<TrialGiven> trials = new ArrayList<>();
            spots.forEach(spot -> trial(spot).ifPresent(trials::add));
            return trials;
        });
    }

    private static Optional<TrialGiven> trial(Spot spot) {
        return spot.fields("a trial", List.of("leaf", "result")).flatMap(fields -> {
            List<String> leaves = fields.required(
                            "leaf", "the marking of what was offered, or a list of them for a stack")
                    .map(TrialReading::leaves)
                    .orElse(List.of());
            Optional<TrialResult> result = fields.required("result", "what the leaf did: " + String.join(", ", RESULTS))
                    .flatMap(s -> s.word("what a leaf does", RESULTS))
                    .flatMap(TrialResult::named);
            return result.map(did -> new TrialGiven(leaves, did, spot.place()));
        });
    }

    /** The markings as they were written: a sheet shows what its writer put down. */
    private static List<String> leaves(Spot spot) {
        List<Spot> offered = spot.json() instanceof Json.Items
                ? spot.someItems("the stack's list of leaves").orElse(List.of())
                : List.of(spot);
        List<String> written = new ArrayList<>();
        Map<Double, Quantity> markings = new HashMap<>();
        for (Spot one : offered) {
            Amounts.aboveZero(one, Dimension.LENGTH).ifPresent(marking -> {
                complainOfSecond(one, marking, markings.putIfAbsent(marking.base(), marking));
                one.anyText().ifPresent(written::add);
            });
        }
        return written;
    }

    private static void complainOfSecond(Spot one, Quantity marking, @Nullable Quantity before) {
        if (before != null) {
            one.complain(
                    FileMistake.LP618,
                    "the leaf marked " + marking + " is in the stack twice",
                    "a set has one leaf of each marking; name the leaves that were stacked");
        }
    }
}
