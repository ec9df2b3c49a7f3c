package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The sheets of one engine in the order in which they were filled in. */
public final class OneEngine {

    private final List<Evidence.Files> given;
    private final List<Problem> problems = new ArrayList<>();

    private OneEngine(List<Evidence.Files> given) {
        this.given = List.copyOf(given);
    }

    /**
     * The sheets, the earliest first. Sheets of one day stand in the order of their first entries where each of them says when
     * that was made, otherwise as they were given.
     *
     * @return the sheets, or everything that keeps them from being the history of one engine
     */
    public static Read<List<Evidence.Files>> inOrder(List<Evidence.Files> given) {
        return new OneEngine(given).read();
    }

    private Read<List<Evidence.Files>> read() {
        areAboutOneEngine();
        areThereOnce();
        List<Evidence.Files> ordered = ordered();
        if (problems.isEmpty()) {
            growOlder(ordered);
        }
        return problems.isEmpty() ? new Read.Done<>(ordered, List.of()) : new Read.Refused<>(problems);
    }

    private void complain(FileMistake mistake, Evidence.Files of, String place, String message, String help) {
        problems.add(new Problem(
                mistake.name(),
                of.sheet().name(),
                place.isEmpty() ? "" : of.sheet().place(place),
                message,
                help));
    }

    private void areAboutOneEngine() {
        Map<String, List<Evidence.Files>> byEngine = new LinkedHashMap<>();
        for (Evidence.Files files : given) {
            if (files.sheet().content().engine().serial() == null) {
                complain(
                        FileMistake.LP685,
                        files,
                        "$.engine",
                        "the sheet does not say which engine it is about: it states no serial",
                        "a history is of one engine; state its serial, and give one to an engine that has none");
            } else {
                byEngine.computeIfAbsent(name(files), engine -> new ArrayList<>())
                        .add(files);
            }
        }
        // Where most sheets agree, the slip is on the others.
        Optional<String> most = byEngine.keySet().stream()
                .max(Comparator.comparingInt(
                        engine -> Objects.requireNonNull(byEngine.get(engine)).size()));
        byEngine.forEach((engine, sheets) -> {
            if (!engine.equals(most.orElse(engine))) {
                sheets.forEach(files -> complain(
                        FileMistake.LP686,
                        files,
                        "$.engine.serial",
                        "the sheet is about another engine: " + engine + ", not " + most.orElseThrow(),
                        "a history is of one engine: leave this sheet out, or correct its number or its card if"
                                + " that is a slip"));
            }
        });
    }

    private static String name(Evidence.Files files) {
        return files.card().content().model() + ", serial "
                + files.sheet().content().engine().serial();
    }

    private void areThereOnce() {
        Map<String, String> names = new HashMap<>();
        for (Evidence.Files files : given) {
            String before =
                    names.putIfAbsent(files.sheet().sha256(), files.sheet().name());
            if (before != null) {
                complain(
                        FileMistake.LP687,
                        files,
                        "",
                        "this sheet is there twice: " + before + " is the same to the last letter",
                        "name each sheet once");
            }
        }
    }

    private List<Evidence.Files> ordered() {
        Map<LocalDate, List<Evidence.Files>> byDay = new TreeMap<>();
        given.forEach(files -> byDay.computeIfAbsent(files.sheet().content().date(), day -> new ArrayList<>())
                .add(files));
        List<Evidence.Files> ordered = new ArrayList<>();
        for (List<Evidence.Files> day : byDay.values()) {
            if (day.stream().allMatch(files -> begun(files).isPresent())) {
                day.sort(Comparator.comparing(files -> begun(files).orElseThrow()));
            }
            ordered.addAll(day);
        }
        return ordered;
    }

    private static Optional<Instant> begun(Evidence.Files files) {
        return files.sheet().content().entries().stream()
                .flatMap(entry -> Optional.ofNullable(entry.at()).stream())
                .map(at -> at.toInstant())
                .min(Comparator.naturalOrder());
    }

    private void growOlder(List<Evidence.Files> ordered) {
        Evidence.Files latest = null;
        Quantity oldest = null;
        for (Evidence.Files files : ordered) {
            JobSheet sheet = files.sheet().content();
            Quantity begun = begun(sheet);
            if (begun != null && oldest != null && latest != null && begun.base() < oldest.base()) {
                complain(
                        FileMistake.LP684,
                        files,
                        "$.running_time",
                        "the engine had run " + begun + " when this sheet of " + sheet.date() + " was begun, and "
                                + oldest
                                + " by the end of " + latest.sheet().name() + " of "
                                + latest.sheet().content().date(),
                        "running_time is how long it has run in all, not since the last run; it never becomes less");
            }
            Quantity end = end(sheet);
            if (end != null) {
                oldest = end;
                latest = files;
            }
        }
    }

    private static @Nullable Quantity begun(JobSheet sheet) {
        return sheet.runningTime() != null
                ? sheet.runningTime()
                : sheet.entries().stream()
                        .map(Entry::runningTime)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(null);
    }

    /** How long the engine had run by the last entry. */
    private static @Nullable Quantity end(JobSheet sheet) {
        List<Entry> entries = sheet.entries();
        return entries.isEmpty()
                ? sheet.runningTime()
                : entries.get(entries.size() - 1).runningTime();
    }
}
