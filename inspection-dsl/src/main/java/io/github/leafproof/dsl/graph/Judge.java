package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.verdict.CheckOutcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Judges an engine: evaluates a graph over what a job sheet says. The order of the sheet's entries makes no difference,
 * and neither does anything outside the arguments.
 */
public final class Judge {

    private Judge() {}

    /** The verdicts as the engine was left; where something was adjusted, also as it was found. */
    public static Judgement judge(Evidence evidence, UnitSystem units) {
        CheckGraph graph = evidence.graph();
        Settled left = Settled.whole(graph, evidence.asLeft(), units);
        Settled found = evidence.isAdjusted() ? Settled.whole(graph, evidence.asFound(), units) : left;
        Settled measured = restsOnMarkings(evidence) ? Settled.whole(graph, asIfMeasured(evidence), units) : null;
        return judgement(evidence, left, found, measured, units);
    }

    /** The verdicts as the engine was left, in the order of the procedure, and nothing of how it was found. */
    public static List<Verdict> verdicts(Evidence evidence) {
        return Settled.whole(evidence.graph(), evidence.asLeft(), UnitSystem.METRIC)
                .verdicts();
    }

    /**
     * The judgement on a sheet that has changed at its end: entries were added, or the last ones taken back. Only what hangs
     * on these is judged anew, and it comes to what {@link #judge} would say of the whole sheet. How many formulas are
     * evaluated depends on them alone, however large the procedure is. A sheet with another heading is judged as a whole.
     *
     * @return the judgement, or everything in the new entries that does not go together with the procedure
     */
    static Read<Judgement> judgeOn(Judgement before, Document<JobSheet> sheet) {
        Evidence.Files files = before.evidence().files();
        if (!hasSameHeading(files.sheet().content(), sheet.content())) {
            return Evidence.of(before.graph(), files.card(), files.tray(), sheet)
                    .map(evidence -> judge(evidence, before.units()));
        }
        SheetChange change = SheetChange.between(files.sheet().content(), sheet.content());
        return before.evidence().after(change, sheet).map(evidence -> judgeOn(before, evidence, change));
    }

    private static Judgement judgeOn(Judgement before, Evidence evidence, SheetChange change) {
        List<Integer> changed = before.graph().observationsNamed(change.names()).stream()
                .map(Node.Observation::slot)
                .sorted()
                .toList();
        Settled left = before.left().with(evidence.asLeft(), changed);
        Settled found = evidence.isAdjusted() ? before.found().with(evidence.asFound(), changed) : left;
        Settled measured = before.measured() == null ? before.left() : before.measured();
        return judgement(
                evidence,
                left,
                found,
                restsOnMarkings(evidence) ? measured.with(asIfMeasured(evidence), changed) : null,
                before.units());
    }

    private static boolean hasSameHeading(JobSheet before, JobSheet now) {
        return now.procedure().equals(before.procedure())
                && now.revision() == before.revision()
                && now.engine().equals(before.engine())
                && now.date().equals(before.date());
    }

    private static Judgement judgement(
            Evidence evidence, Settled left, Settled found, @Nullable Settled measured, UnitSystem units) {
        return new Judgement(evidence, left, found, measured, release(evidence.graph(), left.verdicts()), units);
    }

    /** Whether some leaf that was offered is known by its marking only. */
    private static boolean restsOnMarkings(Evidence evidence) {
        return evidence.graph().observations().stream()
                .anyMatch(each -> evidence.value(each) instanceof Value.Felt felt && felt.neverMeasured());
    }

    /** What was given, if every leaf were what is stamped on it. */
    private static Value[] asIfMeasured(Evidence evidence) {
        Value[] slots = evidence.asLeft();
        for (Node.Observation observation : evidence.graph().observations()) {
            if (slots[observation.slot()] instanceof Value.Felt felt && felt.neverMeasured()) {
                slots[observation.slot()] = felt.asIfMeasured();
            }
        }
        return slots;
    }

    private static ReleaseRule.Decision release(CheckGraph graph, List<Verdict> verdicts) {
        List<CheckOutcome> outcomes = verdicts.stream()
                .map(verdict ->
                        new CheckOutcome(verdict.check().name(), verdict.check().severity(), verdict.outcome()))
                .toList();
        return graph.release().decide(outcomes);
    }
}
