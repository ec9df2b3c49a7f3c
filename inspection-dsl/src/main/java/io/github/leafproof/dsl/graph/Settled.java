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
     * @param values derived values, each after all that it reads
     * @param asked observations that may turn out not to apply
     * @param checks numbers of checks, each after the gates it waits for
     */
    private record Scope(List<Node.Derived> values, List<Node.Observation> asked, Collection<Integer> checks) {}

    /** Everything, from what was given; the slots are taken over and filled. */
    static Settled whole(CheckGraph graph, Value[] given, UnitSystem units) {
        Settled settled = new Settled(graph, given, new Verdict[graph.checks().size()], units);
        settled.settle(new Scope(graph.derived(), graph.observations(), graph.checkOrder()));
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
        Set<Integer> asked = new TreeSet<>(reach.asked());
        changed.forEach(slot -> {
            next[slot] = given[slot];
            asked.add(readers.placeOf(slot));
        });
        List<Node.Observation> observations =
                asked.stream().map(graph.observations()::get).toList();
        observations.forEach(observation -> next[observation.slot()] = given[observation.slot()]);
        Set<Integer> judged = new TreeSet<>(Comparator.comparingInt(readers::turnOf));
        judged.addAll(reach.judging());
        judged.addAll(reach.waiting());
        Settled settled = new Settled(graph, next, verdicts.clone(), units);
        settled.settle(
                new Scope(reach.values().stream().map(graph.derived()::get).toList(), observations, judged));
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
        do {
            derive(scope.values(), frame);
        } while (leaveOutWhatDoesNotApply(scope.asked(), frame));
        for (int number : scope.checks()) {
            Node.Check check = graph.checks().get(number);
            verdicts[number] = verdict(check, Frame.of(slots, check.rule(), units));
        }
    }

    private void derive(List<Node.Derived> values, Frame frame) {
        for (Node.Derived derived : values) {
            slots[derived.slot()] = derived.formula().value(frame);
        }
    }

    /**
     * Nobody needs to enter what does not apply to this engine; says whether there was any such. What hangs on something
     * left out is left out with it, so this is asked again until nothing more falls away.
     */
    private boolean leaveOutWhatDoesNotApply(List<Node.Observation> observations, Frame frame) {
        boolean any = false;
        for (Node.Observation observation : observations) {
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
