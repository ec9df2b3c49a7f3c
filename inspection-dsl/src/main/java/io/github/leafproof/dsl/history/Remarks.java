package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.history.History.Look;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a reader should know of a history before leaning on it. */
final class Remarks {

    private Remarks() {}

    static List<String> of(List<Look> looks, List<Followed> values) {
        List<String> notes = new ArrayList<>();
        boolean compares = values.stream().anyMatch(value -> !value.changes().isEmpty());
        if (compares) {
            notes.add(
                    "a change goes from as left at one look to as found at the next, so that an adjustment is no wear;"
                            + " what a gauge of the same tray is off is in both and cancels");
            notes.add("what procedures call alike is taken to be the same thing; running times count as exact");
        }
        if (values.stream().anyMatch(value -> value.byFeel() && !value.changes().isEmpty())) {
            notes.add("a gap known by leaves is compared as the middle between the leaf that passed and the one that"
                    + " refused, any place between them being as likely");
        }
        silent(looks).ifPresent(notes::add);
        differing(
                        looks,
                        "measured with",
                        look -> look.tray().name(),
                        look -> look.tray().sha256())
                .map(note -> note + "; what either tray is off does not cancel between them")
                .ifPresent(notes::add);
        differing(
                        looks,
                        "taken as",
                        look -> look.variant() == null ? "a variant not stated" : look.variant(),
                        look -> String.valueOf(look.variant()))
                .map(note -> note + "; the limits may differ with it")
                .ifPresent(notes::add);
        return notes;
    }

    private static Optional<String> silent(List<Look> looks) {
        List<Look> silent =
                looks.stream().filter(look -> look.runningTime() == null).toList();
        return silent.isEmpty()
                ? Optional.empty()
                : Optional.of(numbers(silent)
                        + (silent.size() == 1 ? " does" : " do")
                        + " not say how long the engine had run by then; what it did in an hour of running is only told"
                        + " between looks that do (running_time on the sheet)");
    }

    /** Says so where looks differ in something. */
    private static Optional<String> differing(
            List<Look> looks, String how, Function<Look, String> words, Function<Look, String> key) {
        Map<String, List<Look>> apart =
                looks.stream().collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
        return apart.size() < 2
                ? Optional.empty()
                : Optional.of(apart.values().stream()
                        .map(same -> numbers(same) + (same.size() == 1 ? " was " : " were ") + how + " "
                                + words.apply(same.get(0)))
                        .collect(Collectors.joining(", ")));
    }

    private static String numbers(List<Look> looks) {
        String all = looks.stream().map(look -> String.valueOf(look.number())).collect(Collectors.joining(", "));
        return (looks.size() == 1 ? "look " : "looks ") + all;
    }
}
