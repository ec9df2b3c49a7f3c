package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Quantity;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A journal that tells of an inspection with everything in it. */
final class Journals {

    static final Act.Stamp STAMP = new Act.Stamp("mk", OffsetDateTime.parse("2026-03-04T10:12:00Z"));
    private static final String DIGEST = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";

    static final JournalHead HEAD = new JournalHead(
            new JobSheet(
                    "0412",
                    "first_look",
                    5,
                    "cards/quillan-15.json",
                    "trays/bench-one.json",
                    new SheetEngine("Q15-20417", null, "job 0412", null),
                    LocalDate.of(2026, 3, 4),
                    Quantity.parse("0 h"),
                    List.of()),
            new Report.Input("first_look", DIGEST),
            List.of(new Report.Input("parts/lash.inspection", DIGEST)),
            new Report.Input("cards/quillan-15.json", DIGEST),
            new Report.Input("trays/bench-one.json", DIGEST));

    /** One of each kind of act, and of each kind of entry. */
    static final List<Act> ACTS = List.of(
            new Act.Opened(4711, STAMP),
            entered("head", new Given.Words("21.4 °C"), false, null),
            entered("head", new Given.Words("21.2 °C"), true, "misread; \"warm\"\nhands"),
            new Act.Brought("covers", "off", STAMP),
            entered(
                    "lash[intake]",
                    new Given.Trials(List.of(
                            new TrialGiven(List.of("0.05 mm"), TrialResult.PASSES, ""),
                            new TrialGiven(List.of("0.05 mm", "0.04 mm"), TrialResult.REFUSES, ""))),
                    false,
                    null),
            entered("lash[intake]", new Given.Adjusted(Quantity.parse("50 deg")), false, null),
            entered("strokes", new Given.Count(BigDecimal.valueOf(3)), false, null),
            entered("dry", new Given.Flag(true), false, null),
            entered("idle_rpm", new Given.Series(List.of("2300 rpm", "2310 rpm")), false, null),
            entered("in_box", new Given.Items(List.of()), false, null),
            entered("wrench_found", new Given.Cannot("the box was not sent"), false, null),
            new Act.Skipped("rattle", STAMP),
            new Act.PutOff("plug_glows", new Act.Stamp(null, STAMP.at())),
            new Act.TookBack(STAMP),
            new Act.Finished(DIGEST, STAMP),
            new Act.Opened(4712, STAMP),
            entered("nut_tight", new Given.Flag(false), false, null));

    private Journals() {}

    static Act entered(String observe, Given given, boolean corrects, @Nullable String note) {
        return new Act.Entered(new Entry(observe, given, corrects, "mk", STAMP.at(), note, null, ""));
    }

    /** Writes it all, and lets go of it. */
    static void write(Path sheet) {
        try (Journal journal = Journal.begin(sheet, HEAD).orElseThrow()) {
            for (Act act : ACTS) {
                journal.append(act).ifPresent(problem -> {
                    throw new AssertionError(problem.toString());
                });
            }
        }
    }

    /** The acts of a journal, wherever its lines stand. */
    static List<Act> acts(Journal journal) {
        return journal.acts().stream().map(Journals::withoutPlace).toList();
    }

    private static Act withoutPlace(Act act) {
        if (!(act instanceof Act.Entered entered)) {
            return act;
        }
        Entry entry = entered.entry();
        Given given = entry.given() instanceof Given.Trials trials
                ? new Given.Trials(trials.trials().stream()
                        .map(trial -> new TrialGiven(trial.leaves(), trial.result(), ""))
                        .toList())
                : entry.given();
        return new Act.Entered(new Entry(
                entry.observe(),
                given,
                entry.corrects(),
                entry.by(),
                entry.at(),
                entry.note(),
                entry.runningTime(),
                ""));
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
