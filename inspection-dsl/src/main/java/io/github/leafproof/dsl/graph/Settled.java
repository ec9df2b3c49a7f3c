package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** A graph evaluated over what was given of one engine: a value in every slot, and a verdict for each check. */
final class Settled {

    private final CheckGraph graph;
    private final Value[] slots;
    private final Verdict[] verdicts;
    private final UnitSystem units;

    private Settled(CheckGraph graph, Value[] slots, Verdict[] verdicts, UnitSystem units) {
        this.graph = graph;
        this.slots = slots;
        this.verdicts = verdicts;
        this.units = units;
    }

    /**
     * What has to be evaluated.
     *
     * @param nodes derived values, and observations that may turn out not to apply, each after all that it reads
     * @param checks numbers of checks, each after the gates it waits for
     */
    private record Scope(List<Node> nodes, Collection<Integer> checks) {}

    /** Everything, from what was given; the slots are taken over and filled. */
    static Settled whole(CheckGraph graph, Value[] given, UnitSystem units) {
        Settled settled = new Settled(graph, given, new Verdict[graph.checks().size()], units);
        settled.settle(new Scope(graph.settlingOrder(), graph.checkOrder()));
        return settled;
    }

    /**
     * The same engine with a few observations given otherwise: only what hangs on these is evaluated anew, by the same
     * rules, so that it comes to what the whole would.
     *
     * @param changed the slots of these observations
     */
    Settled with(Value[] given, List<Integer> changed) {
        Readers readers = graph.readers();
        Readers.Reach reach = readers.reach(changed);
        Value[] next = slots.clone();
        Set<Integer> settling = new TreeSet<>(changed);
        reach.asked()
                .forEach(place -> settling.add(graph.observations().get(place).slot()));
        settling.forEach(slot -> next[slot] = given[slot]);
        reach.values().forEach(place -> settling.add(graph.derived().get(place).slot()));
        Set<Integer> judged = new TreeSet<>(Comparator.comparingInt(readers::turnOf));
        judged.addAll(reach.judging());
        judged.addAll(reach.waiting());
        Settled settled = new Settled(graph, next, verdicts.clone(), units);
        settled.settle(new Scope(graph.settlingOrderIn(settling), judged));
        return settled;
    }

    /** The values, not a copy. */
    Value[] slots() {
        return slots;
    }

    List<Verdict> verdicts() {
        return List.of(verdicts);
    }

    private void settle(Scope scope) {
        Frame frame = Frame.of(slots, graph.rule(), units);
        scope.nodes().forEach(node -> settle(node, frame));
        for (int number : scope.checks()) {
            Node.Check check = graph.checks().get(number);
            verdicts[number] = verdict(check, Frame.of(slots, check.rule(), units));
        }
    }

    /**
     * Computes a value; of an observation that was not made, looks whether it applies to this engine, for nobody needs to
     * enter it otherwise. What hangs on something left out is left out with it.
     */
    private void settle(Node node, Frame frame) {
        if (node instanceof Node.Derived derived) {
            slots[derived.slot()] = derived.formula().value(frame);
        } else if (node instanceof Node.Observation observation
                && slots[observation.slot()] instanceof Value.Missing missing
                && !missing.isNotAsked()
                && doesNotApply(SettlingOrder.read(observation).value(frame))) {
            slots[observation.slot()] =
                    Value.Missing.of(Value.Lack.Kind.NOT_ASKED, observation.name(), "does not apply");
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
            @Nullable Verdict found = verdicts[gate];
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
