package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.Arrays;
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
    private volatile ReleaseRule.@Nullable Decision release;

    /**
     * @param left the engine as it was left
     * @param found as it was found; the same where nothing was adjusted
     * @param measured as if every leaf were what is stamped on it; null where all leaves were measured
     */
    Judgement(Evidence evidence, Settled left, Settled found, @Nullable Settled measured) {
        this.evidence = evidence;
        this.left = left;
        this.found = found;
        this.measured = measured;
    }

    /**
     * The judgement on the same sheet, some entries longer, or with its last entries taken back: only what hangs on these is
     * judged anew, and it is the judgement that the whole sheet gets. Made from {@link Evidence#sheet()}, entry by entry, it
     * costs what depends on these entries, however long sheet and procedure are. A sheet with another heading is judged as a
     * whole.
     *
     * @return the judgement, or everything in the new entries that does not go together with the procedure
     */
    public Read<Judgement> continuedWith(OpenSheet sheet) {
        return Judge.judgeOn(this, sheet);
    }

    /** The same for a sheet that was read from a file: which entries are new is found by holding one against the other. */
    public Read<Judgement> continuedWith(Document<JobSheet> sheet) {
        return continuedWith(OpenSheet.of(sheet));
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
    public Verdicts verdicts() {
        return left.verdicts();
    }

    /** The verdict on the check of that name. */
    public Optional<Verdict> verdict(String check) {
        return verdicts().of(check);
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

    /** The release, and the checks that decided it: all checks are looked through for these when it is first asked for. */
    public ReleaseRule.Decision release() {
        ReleaseRule.Decision known = release;
        if (known == null) {
            known = graph().release().decide(verdicts());
            release = known;
        }
        return known;
    }

    /** How the engine is released, without the checks that decided it: told at once, however many there are. */
    public Release released() {
        return graph().release().release(verdicts());
    }

    public UnitSystem units() {
        return left.units();
    }

    /** The values of all slots as the engine was left, as a copy. */
    Value[] slots() {
        Value[] slots = new Value[graph().slots()];
        Arrays.setAll(slots, left::value);
        return slots;
    }

    /** The values as the engine was left, for putting a check's verdict into words. */
    public Frame frame(Node.Check check) {
        return Frame.of(left::value, check.rule(), units());
    }

    /** The values as the engine was left, conditions decided with the procedure's own confidence. */
    public Frame frame() {
        return Frame.of(left::value, graph().rule(), units());
    }

    /** The values as the engine was found, conditions decided with the procedure's own confidence. */
    public Frame frameAsFound() {
        return Frame.of(found::value, graph().rule(), units());
    }

    /** The values as the engine was found, before any adjustment. */
    public Frame frameAsFound(Node.Check check) {
        return Frame.of(found::value, check.rule(), units());
    }
}
