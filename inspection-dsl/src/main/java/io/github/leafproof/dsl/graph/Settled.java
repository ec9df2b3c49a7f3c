package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A graph evaluated over what was given of one engine: a value in every slot, and a verdict for each check.
 *
 * @param slots the values
 */
record Settled(CheckGraph graph, Row<Value> slots, Verdicts verdicts, UnitSystem units) {

    /**
     * Everything.
     *
     * @param as which of the values that were given counts
     */
    static Settled whole(Evidence evidence, Function<Entered.Said, Value> as, UnitSystem units) {
        CheckGraph graph = evidence.graph();
        Row<Entered.Said> given = evidence.entered().said();
        Row.Draft<Value> slots = Row.blank(graph.slots());
        for (int slot = 0; slot < graph.slots(); slot++) {
            Entered.Said said = given.get(slot);
            if (said != null) {
                slots.set(slot, as.apply(said));
            }
        }
        return new Settling(graph, slots, Verdicts.blank(graph), units)
                .settled(graph.settlingOrder(), graph.checkOrder());
    }

    /**
     * The same engine with a few observations given otherwise: only what hangs on these is evaluated anew, by the same
     * rules, so that it comes to what the whole would.
     *
     * @param as which of the values that were given counts
     * @param changed these observations
     */
    Settled with(Evidence evidence, Function<Entered.Said, Value> as, List<Node.Observation> changed) {
        Row<Entered.Said> given = evidence.entered().said();
        Readers readers = graph.readers();
        Set<Integer> settling = new TreeSet<>();
        changed.forEach(observation -> settling.add(observation.slot()));
        Readers.Reach reach = readers.reach(settling);
        Row.Draft<Value> next = slots.draft();
        reach.asked()
                .forEach(place -> settling.add(graph.observations().get(place).slot()));
        settling.forEach(slot -> next.set(slot, as.apply(Objects.requireNonNull(given.get(slot)))));
        reach.values().forEach(place -> settling.add(graph.derived().get(place).slot()));
        Set<Integer> judged = new TreeSet<>(Comparator.comparingInt(readers::turnOf));
        judged.addAll(reach.judging());
        judged.addAll(reach.waiting());
        return new Settling(graph, next, verdicts.draft(), units).settled(graph.settlingOrderIn(settling), judged);
    }

    /** The value in a slot. */
    Value value(int slot) {
        return Objects.requireNonNull(slots.get(slot));
    }
}
