package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Evaluates a graph, or a part of it that hangs on what is given otherwise. */
final class Settling {

    private final CheckGraph graph;
    private final Row.Draft<Value> slots;
    private final Verdicts.Draft verdicts;
    private final UnitSystem units;

    /**
     * Begins with what is known.
     *
     * @param slots what is given, and what was computed and stays as it was
     * @param verdicts those that stay as they were
     */
    Settling(CheckGraph graph, Row.Draft<Value> slots, Verdicts.Draft verdicts, UnitSystem units) {
        this.graph = graph;
        this.slots = slots;
        this.verdicts = verdicts;
        this.units = units;
    }

    /**
     * Evaluates these.
     *
     * @param nodes derived values, and observations that may turn out not to apply, each after all that it reads
     * @param checks numbers of checks, each after the gates it waits for
     */
    Settled settled(List<Node> nodes, Collection<Integer> checks) {
        Frame frame = frame(graph.rule());
        nodes.forEach(node -> settle(node, frame));
        for (int number : checks) {
            Node.Check check = graph.checks().get(number);
            verdicts.set(number, verdict(check, frame(check.rule())));
        }
        return new Settled(graph, slots.row(), verdicts.verdicts(), units);
    }

    private Frame frame(DecisionRule rule) {
        return Frame.of(slot -> Objects.requireNonNull(slots.get(slot)), rule, units);
    }

    /**
     * Computes a value; of an observation that was not made, looks whether it applies to this engine, for nobody needs to
     * enter it otherwise. What hangs on something left out is left out with it.
     */
    private void settle(Node node, Frame frame) {
        if (node instanceof Node.Derived derived) {
            slots.set(derived.slot(), derived.formula().value(frame));
        } else if (node instanceof Node.Observation observation
                && slots.get(observation.slot()) instanceof Value.Missing missing
                && !missing.isNotAsked()
                && doesNotApply(SettlingOrder.read(observation).value(frame))) {
            slots.set(
                    observation.slot(),
                    Value.Missing.of(Value.Lack.Kind.NOT_ASKED, observation.name(), "does not apply"));
        }
    }

    private static boolean doesNotApply(Value applies) {
        return applies instanceof Value.Judged judged
                ? judged.outcome() == Outcome.FAILS
                : applies instanceof Value.Missing missing && missing.isNotAsked();
    }

    private Verdict verdict(Node.Check check, Frame frame) {
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
            @Nullable Verdict found = verdicts.get(gate);
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
}
