package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.List;
import java.util.Optional;

/** What an inspection came to: a verdict for each check, and the release of the whole engine. */
public final class Judgement {

    private final Evidence evidence;
    private final Value[] slots;
    private final Value[] slotsAsFound;
    private final List<Verdict> verdicts;
    private final List<Verdict> asFound;
    private final List<Verdict> asIfMeasured;
    private final ReleaseRule.Decision release;
    private final UnitSystem units;

    Judgement(
            Evidence evidence,
            Value[] slots,
            Value[] slotsAsFound,
            List<Verdict> verdicts,
            List<Verdict> asFound,
            List<Verdict> asIfMeasured,
            ReleaseRule.Decision release,
            UnitSystem units) {
        this.evidence = evidence;
        this.slots = slots;
        this.slotsAsFound = slotsAsFound;
        this.verdicts = verdicts;
        this.asFound = asFound;
        this.asIfMeasured = asIfMeasured;
        this.release = release;
        this.units = units;
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
                !asFound.isEmpty() && graph().observationsOf(check).stream().anyMatch(evidence::isAdjusted);
        return bearsOnIt ? Optional.of(asFound.get(check.number())) : Optional.empty();
    }

    /**
     * How a check would come out if the leaves it rests on had been measured and found to be what is stamped on them;
     * empty where all of them were measured.
     */
    public Optional<Verdict> asIfMeasured(Node.Check check) {
        boolean restsOnMarkings = graph().observationsOf(check).stream()
                .anyMatch(each -> evidence.value(each) instanceof Value.Felt felt && felt.neverMeasured());
        return restsOnMarkings ? Optional.of(asIfMeasured.get(check.number())) : Optional.empty();
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
        return slots.clone();
    }

    /** The values as the engine was left, for putting a check's verdict into words. */
    public Frame frame(Node.Check check) {
        return Frame.of(slots, check.rule(), units);
    }

    /** The values as the engine was found, before any adjustment. */
    public Frame frameAsFound(Node.Check check) {
        return Frame.of(slotsAsFound, check.rule(), units);
    }
}
