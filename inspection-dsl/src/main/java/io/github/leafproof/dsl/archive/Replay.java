package io.github.leafproof.dsl.archive;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.ReleaseWords;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Judges sheets under two revisions of a procedure. Each sheet stands for itself, whichever revision it was filled in by,
 * so that any number of them can be compared at once.
 */
public final class Replay {

    private final Procedure old;
    private final Procedure now;
    private final Cabinet cabinet;
    private final UnitSystem units;
    private final ChecksCompared checks;

    private Replay(Procedure old, Procedure now, Cabinet cabinet, UnitSystem units) {
        this.old = old;
        this.now = now;
        this.cabinet = cabinet;
        this.units = units;
        this.checks = new ChecksCompared(old.graph(), now.graph());
    }

    /**
     * A comparison of two revisions.
     *
     * @param cabinet where the cards and trays of the sheets are
     * @param units the units that texts show their numbers in
     * @throws IllegalArgumentException if the two are not {@linkplain #areRevisionsOfOne revisions of one procedure}
     */
    public static Replay of(Procedure old, Procedure now, Cabinet cabinet, UnitSystem units) {
        if (!areRevisionsOfOne(old, now)) {
            throw new IllegalArgumentException(nameOf(old) + " and " + nameOf(now) + " are two procedures");
        }
        return new Replay(old, now, cabinet, units);
    }

    /** Whether two procedures have one name, so that sheets of one may be sheets of the other. */
    public static boolean areRevisionsOfOne(Procedure one, Procedure other) {
        return nameOf(one).equals(nameOf(other));
    }

    private static String nameOf(Procedure procedure) {
        return procedure.graph().identity().name();
    }

    public Procedure old() {
        return old;
    }

    public Procedure now() {
        return now;
    }

    /**
     * Compares sheet by sheet, by all processors; the comparisons come in the order of the sheets. Only some hundreds of
     * sheets are held at a time, however many there are. Closing the stream closes that of the sheets.
     */
    public Stream<Comparison> compare(Stream<Filed> sheets) {
        InOrder<Filed, Comparison> inOrder = new InOrder<>(
                sheets.iterator(),
                this::compare,
                Filed::weight,
                Runtime.getRuntime().availableProcessors());
        return StreamSupport.stream(
                        Spliterators.spliteratorUnknownSize(inOrder, Spliterator.ORDERED | Spliterator.NONNULL), false)
                .onClose(inOrder::close)
                .onClose(sheets::close);
    }

    /** Compares one sheet; safe to call from any number of threads. */
    public Comparison compare(Filed filed) {
        Read<Document<JobSheet>> read = filed.sheet();
        if (read.value().isEmpty()) {
            return filed.isSomethingElse()
                    ? new Comparison.NoSheet(filed.place())
                    : new Comparison.Damaged(filed.place(), read.problems());
        }
        Document<JobSheet> sheet = read.orElseThrow();
        if (!sheet.content().procedure().equals(nameOf(old))) {
            return new Comparison.OtherProcedure(filed.place(), sheet.content().procedure());
        }
        Read<Evidence.Files> files = cabinet.filesOf(filed, sheet);
        return files.value()
                .map(found -> compare(filed.place(), found))
                .orElseGet(() -> new Comparison.Damaged(filed.place(), files.problems()));
    }

    private Comparison compare(Filed.Place place, Evidence.Files files) {
        Read<Judgement> before = old.rejudgement(files.card(), files.tray(), files.sheet(), units);
        Read<Judgement> after = now.rejudgement(files.card(), files.tray(), files.sheet(), units);
        if (before.value().isEmpty() && after.value().isEmpty()) {
            Set<Problem> all = new LinkedHashSet<>(before.problems());
            all.addAll(after.problems());
            return new Comparison.Damaged(place, List.copyOf(all));
        }
        if (before.value().isEmpty() || after.value().isEmpty()) {
            return new Comparison.Differs(
                    place, job(files), cameOut(before), cameOut(after), List.of(), List.of(), List.of());
        }
        return compare(place, files, before.orElseThrow(), after.orElseThrow());
    }

    private Comparison compare(Filed.Place place, Evidence.Files files, Judgement before, Judgement after) {
        List<Evidence.Unknown> toOld = before.evidence().unknown();
        List<Evidence.Unknown> toNew = after.evidence().unknown();
        List<Problem> toBoth = toNew.stream()
                .filter(entry -> names(toOld).contains(entry.entry().observe()))
                .map(Evidence.Unknown::problem)
                .toList();
        if (!toBoth.isEmpty()) {
            return new Comparison.Damaged(place, toBoth);
        }
        List<CheckMoved> moved = checks.moved(before, after);
        boolean sameRelease = before.release().release() == after.release().release();
        if (sameRelease && moved.isEmpty() && toOld.isEmpty() && toNew.isEmpty()) {
            return new Comparison.Same(place, job(files), after.release().release());
        }
        return new Comparison.Differs(
                place,
                job(files),
                cameOut(before),
                cameOut(after),
                moved,
                List.copyOf(names(toNew)),
                List.copyOf(names(toOld)));
    }

    private static Set<String> names(List<Evidence.Unknown> unknown) {
        return unknown.stream()
                .map(each -> each.entry().observe())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Comparison.Job job(Evidence.Files files) {
        JobSheet sheet = files.sheet().content();
        return new Comparison.Job(
                sheet.sheet(), sheet.engine().serial(), files.card().content().model(), sheet.date(), sheet.revision());
    }

    private static Comparison.CameOut cameOut(Read<Judgement> judged) {
        return judged.value().map(Replay::cameOut).orElseGet(() -> new Comparison.CameOut.NotJudged(judged.problems()));
    }

    private static Comparison.CameOut cameOut(Judgement judgement) {
        return new Comparison.CameOut.Judged(judgement.release().release(), ReleaseWords.of(judgement));
    }
}
