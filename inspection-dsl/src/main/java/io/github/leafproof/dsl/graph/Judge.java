package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.CheckOutcome;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.ReleaseRule;
import java.util.ArrayList;
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
        Value[] left = slots(graph, evidence.asLeft(), units);
        Verdict[] verdicts = verdicts(graph, left, units);
        Value[] found = evidence.isAdjusted() ? slots(graph, evidence.asFound(), units) : left;
        List<Verdict> asFound = evidence.isAdjusted() ? List.of(verdicts(graph, found, units)) : List.of();
        return new Judgement(
                evidence,
                left,
                found,
                List.of(verdicts),
                asFound,
                asIfMeasured(evidence, units),
                release(graph, verdicts),
                units);
    }

    /** The verdicts if every leaf were what is stamped on it; none where all leaves were measured. */
    private static List<Verdict> asIfMeasured(Evidence evidence, UnitSystem units) {
        Value[] slots = evidence.asLeft();
        boolean any = false;
        for (Node.Observation observation : evidence.graph().observations()) {
            if (slots[observation.slot()] instanceof Value.Felt felt && felt.neverMeasured()) {
                slots[observation.slot()] = felt.asIfMeasured();
                any = true;
            }
        }
        return any ? List.of(verdicts(evidence.graph(), slots(evidence.graph(), slots, units), units)) : List.of();
    }

    private static Value[] slots(CheckGraph graph, Value[] slots, UnitSystem units) {
        Frame frame = Frame.of(slots, graph.rule(), units);
        do {
            derive(graph, slots, frame);
        } while (leaveOutWhatDoesNotApply(graph, slots, frame));
        return slots;
    }

    private static void derive(CheckGraph graph, Value[] slots, Frame frame) {
        for (Node.Derived derived : graph.derived()) {
            slots[derived.slot()] = derived.formula().value(frame);
        }
    }

    /**
     * Nobody needs to enter what does not apply to this engine; says whether there was any such. What hangs on something
     * left out is left out with it, so this is asked again until nothing more falls away.
     */
    private static boolean leaveOutWhatDoesNotApply(CheckGraph graph, Value[] slots, Frame frame) {
        boolean any = false;
        for (Node.Observation observation : graph.observations()) {
            boolean asked = slots[observation.slot()] instanceof Value.Missing missing && !missing.isNotAsked();
            if (asked && observation.when() != null) {
                if (doesNotApply(observation.when().value(frame))) {
                    slots[observation.slot()] =
                            Value.Missing.of(Value.Lack.Kind.NOT_ASKED, observation.name(), "does not apply");
                    any = true;
                }
            }
        }
        return any;
    }

    private static boolean doesNotApply(Value applies) {
        return applies instanceof Value.Judged judged
                ? judged.outcome() == Outcome.FAILS
                : applies instanceof Value.Missing missing && missing.isNotAsked();
    }

    private static Verdict[] verdicts(CheckGraph graph, Value[] slots, UnitSystem units) {
        Verdict[] verdicts = new Verdict[graph.checks().size()];
        for (int number : graph.checkOrder()) {
            Node.Check check = graph.checks().get(number);
            verdicts[number] = verdict(check, verdicts, Frame.of(slots, check.rule(), units));
        }
        return verdicts;
    }

    private static Verdict verdict(Node.Check check, @Nullable Verdict[] before, Frame frame) {
        if (check.when() != null) {
            Value applies = check.when().value(frame);
            if (applies instanceof Value.Judged judged && judged.outcome() == Outcome.FAILS) {
                return Verdict.notApplicable(check);
            }
            if (!(applies instanceof Value.Judged judged && judged.holds())) {
                return undecidedWhether(check, applies);
            }
        }
        List<Node.Check> shut = new ArrayList<>();
        for (int gate : check.after()) {
            Verdict found = before[gate];
            if (found != null && !found.outcome().letsThrough()) {
                shut.add(found.check());
            }
        }
        return shut.isEmpty() ? Verdict.of(check, check.requirement().value(frame)) : Verdict.blocked(check, shut);
    }

    /** Whether the check applies is itself open or lacks an observation: nothing can be said until it is known. */
    private static Verdict undecidedWhether(Node.Check check, Value applies) {
        return Verdict.of(
                check,
                applies instanceof Value.Missing
                        ? applies
                        : Value.Missing.of(
                                Value.Lack.Kind.UNDECIDED, check.name(), "may or may not apply: it cannot be told"));
    }

    private static ReleaseRule.Decision release(CheckGraph graph, Verdict[] verdicts) {
        List<CheckOutcome> outcomes = new ArrayList<>(verdicts.length);
        for (Verdict verdict : verdicts) {
            outcomes.add(
                    new CheckOutcome(verdict.check().name(), verdict.check().severity(), verdict.outcome()));
        }
        return graph.release().decide(outcomes);
    }
}
