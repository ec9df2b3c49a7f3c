package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What an inspection came to: a verdict for each check, and the release of the whole engine. */
public final class Judgement {

    private final Evidence evidence;
    private final Settled left;
    private final Settled found;
    private final @Nullable Settled measured;
    private final List<Verdict> verdicts;
    private final ReleaseRule.Decision release;
    private final UnitSystem units;

    /**
     * @param left the engine as it was left
     * @param found as it was found; the same where nothing was adjusted
     * @param measured as if every leaf were what is stamped on it; null where all leaves were measured
     */
    Judgement(
            Evidence evidence,
            Settled left,
            Settled found,
            @Nullable Settled measured,
            ReleaseRule.Decision release,
            UnitSystem units) {
        this.evidence = evidence;
        this.left = left;
        this.found = found;
        this.measured = measured;
        this.verdicts = left.verdicts();
        this.release = release;
        this.units = units;
    }

    /**
     * The judgement on the same sheet, some entries longer, or with its last entries taken back: only what hangs on these is
     * judged anew, and it is the judgement that the whole sheet gets. A sheet with another heading is judged as a whole.
     *
     * @return the judgement, or everything in the new entries that does not go together with the procedure
     */
    public Read<Judgement> continuedWith(Document<JobSheet> sheet) {
        return Judge.judgeOn(this, sheet);
    }

    /**
     * What is worth doing next, the most pressing first: what failed or stays open, then what a file does not say and what
     * nobody could enter so far, each in the order of the procedure. What a shut gate blocks has to wait.
     */
    public List<Work> worthDoing() {
        return Work.after(this);
    }

    /** What is still to be observed, in an order that changes the bench least from how it was before the first step. */
    public StepOrder stepOrder() {
        return StepOrder.of(
                graph(),
                worthDoing().stream()
                        .flatMap(work -> work instanceof Work.Observe observe
                                ? Stream.of(observe.observation())
                                : Stream.<Node.Observation>of())
                        .sorted(Comparator.comparingInt(Node.Observation::slot))
                        .toList(),
                Map.of());
    }

    Settled left() {
        return left;
    }

    Settled found() {
        return found;
    }

    @Nullable
    Settled measured() {
        return measured;
    }

    public CheckGraph graph() {
        return evidence.graph();
    }

    /** What was entered, as it was understood. */
    public Evidence evidence() {
        return evidence;
    }

    /** The verdict on each check, in the order of the procedure. */
    public List<Verdict> verdicts() {
        return verdicts;
    }

    /** The verdict on the check of that name. */
    public Optional<Verdict> verdict(String check) {
        return verdicts.stream()
                .filter(verdict -> verdict.check().name().equals(check))
                .findFirst();
    }

    /** How a check came out before anything was adjusted, where an adjustment bears on it. */
    public Optional<Verdict> asFound(Node.Check check) {
        boolean bearsOnIt =
                evidence.isAdjusted() && graph().observationsOf(check).stream().anyMatch(evidence::isAdjusted);
        return bearsOnIt ? Optional.of(found.verdicts().get(check.number())) : Optional.empty();
    }

    /**
     * How a check would come out if the leaves it rests on had been measured and found to be what is stamped on them;
     * empty where all of them were measured.
     */
    public Optional<Verdict> asIfMeasured(Node.Check check) {
        boolean restsOnMarkings = graph().observationsOf(check).stream()
                .anyMatch(each -> evidence.value(each) instanceof Value.Felt felt && felt.neverMeasured());
        return restsOnMarkings && measured != null
                ? Optional.of(measured.verdicts().get(check.number()))
                : Optional.empty();
    }

    /** The release, and the checks that decided it. */
    public ReleaseRule.Decision release() {
        return release;
    }

    public UnitSystem units() {
        return units;
    }

    /** The values of all slots as the engine was left, as a copy. */
    Value[] slots() {
        return left.slots().clone();
    }

    /** The values as the engine was left, for putting a check's verdict into words. */
    public Frame frame(Node.Check check) {
        return Frame.of(left.slots(), check.rule(), units);
    }

    /** The values as the engine was left, conditions decided with the procedure's own confidence. */
    public Frame frame() {
        return Frame.of(left.slots(), graph().rule(), units);
    }

    /** The values as the engine was found, conditions decided with the procedure's own confidence. */
    public Frame frameAsFound() {
        return Frame.of(found.slots(), graph().rule(), units);
    }

    /** The values as the engine was found, before any adjustment. */
    public Frame frameAsFound(Node.Check check) {
        return Frame.of(found.slots(), check.rule(), units);
    }
}
