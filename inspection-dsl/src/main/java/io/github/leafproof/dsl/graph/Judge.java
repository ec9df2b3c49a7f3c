package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.graph.Entered.Said;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.SheetChange;
import java.util.List;

/**
 * Judges an engine: evaluates a graph over what a job sheet says. The order of the sheet's entries makes no difference,
 * and neither does anything outside the arguments.
 */
public final class Judge {

    private Judge() {}

    /** The verdicts as the engine was left; where something was adjusted, also as it was found. */
    public static Judgement judge(Evidence evidence, UnitSystem units) {
        Settled left = Settled.whole(evidence, Said::left, units);
        Settled found = evidence.isAdjusted() ? Settled.whole(evidence, Said::found, units) : left;
        Settled measured =
                evidence.entered().markedOnly() > 0 ? Settled.whole(evidence, Said::ifMeasured, units) : null;
        return new Judgement(evidence, left, found, measured);
    }

    /** The verdicts as the engine was left, and nothing of how it was found. */
    public static Verdicts verdicts(Evidence evidence) {
        return Settled.whole(evidence, Said::left, UnitSystem.METRIC).verdicts();
    }

    /**
     * The judgement on a sheet that has changed at its end: entries were added, or the last ones taken back. Only what hangs
     * on these is judged anew, and it comes to what {@link #judge} would say of the whole sheet. How much is done depends on
     * them alone, however large the procedure is. A sheet with another heading is judged as a whole.
     *
     * @return the judgement, or everything in the new entries that does not go together with the procedure
     */
    static Read<Judgement> judgeOn(Judgement before, OpenSheet sheet) {
        Evidence known = before.evidence();
        if (!hasSameHeading(known.sheet().heading(), sheet.heading())) {
            return Evidence.of(before.graph(), known.card(), known.tray(), sheet.document())
                    .map(evidence -> judge(evidence, before.units()));
        }
        SheetChange change = SheetChange.between(known.sheet(), sheet);
        List<Node.Observation> changed = before.graph().observationsNamed(change.names());
        return known.after(change, changed, sheet).map(evidence -> judgeOn(before, evidence, changed));
    }

    private static Judgement judgeOn(Judgement before, Evidence evidence, List<Node.Observation> changed) {
        Settled left = before.left().with(evidence, Said::left, changed);
        Settled found = evidence.isAdjusted() ? before.found().with(evidence, Said::found, changed) : left;
        Settled measured = before.measured() == null ? before.left() : before.measured();
        return new Judgement(
                evidence,
                left,
                found,
                evidence.entered().markedOnly() > 0 ? measured.with(evidence, Said::ifMeasured, changed) : null);
    }

    private static boolean hasSameHeading(JobSheet before, JobSheet now) {
        return now.procedure().equals(before.procedure())
                && now.revision() == before.revision()
                && now.engine().equals(before.engine())
                && now.date().equals(before.date());
    }
}
