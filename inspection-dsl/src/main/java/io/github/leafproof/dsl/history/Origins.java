package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * How the values of one look were come by, as found or as left: found out once, and handed on from what is observed to what is
 * computed from it.
 */
final class Origins {

    private final Judgement judgement;
    private final CheckGraph graph;
    private final boolean asFound;
    private final Map<Integer, Origin> bySlot = new HashMap<>();

    /**
     * What a value rests on.
     *
     * @param adjusted whether something of it was adjusted
     * @param unfit why it is not to be relied on; null where it is
     * @param runningTime how long the engine had run when the last of it was observed; null where no sheet says
     */
    record Origin(
            boolean adjusted,
            @Nullable String unfit,
            @Nullable Quantity runningTime) {

        Origin and(Origin other) {
            return new Origin(
                    adjusted || other.adjusted,
                    unfit == null ? other.unfit : unfit,
                    later(runningTime, other.runningTime));
        }
    }

    /** The checks that an observation bears on, in one look over all of them. */
    private static final class Judged {
        private boolean some;
        private @Nullable Verdict blocked;
    }

    private Origins(Judgement judgement, boolean asFound) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.asFound = asFound;
    }

    static Origins of(Judgement judgement, boolean asFound) {
        Origins origins = new Origins(judgement, asFound);
        Map<Integer, Judged> judged = origins.judged();
        for (Node.Observation observation : origins.graph.observations()) {
            origins.bySlot.put(observation.slot(), origins.origin(observation, judged.get(observation.slot())));
        }
        // In this order each comes after all that it reads.
        for (Node.Derived derived : origins.graph.derived()) {
            origins.graph.readBy(derived.formula()).stream()
                    .flatMap(read -> origins.of(read).stream())
                    .reduce(Origin::and)
                    .ifPresent(origin -> origins.bySlot.put(derived.slot(), origin));
        }
        return origins;
    }

    /** What a node rests on; empty where it rests on nothing observed. */
    Optional<Origin> of(Node node) {
        if (node instanceof Node.Observation observation) {
            return Optional.ofNullable(bySlot.get(observation.slot()));
        }
        return node instanceof Node.Derived derived
                ? Optional.ofNullable(bySlot.get(derived.slot()))
                : Optional.empty();
    }

    private Map<Integer, Judged> judged() {
        Map<Integer, Judged> judged = new HashMap<>();
        for (Node.Check check : graph.checks()) {
            Verdict verdict = verdict(check);
            if (verdict.outcome() != Outcome.NOT_APPLICABLE) {
                for (Node.Observation observation : graph.observationsOf(check)) {
                    Judged of = judged.computeIfAbsent(observation.slot(), slot -> new Judged());
                    if (verdict.outcome() == Outcome.BLOCKED) {
                        of.blocked = of.blocked == null ? verdict : of.blocked;
                    } else {
                        of.some = true;
                    }
                }
            }
        }
        return judged;
    }

    private Verdict verdict(Node.Check check) {
        Verdict left = judgement.verdicts().get(check.number());
        return asFound ? judgement.asFound(check).orElse(left) : left;
    }

    private Origin origin(Node.Observation observation, @Nullable Judged judged) {
        return new Origin(
                judgement.evidence().isAdjusted(observation), unfit(observation, judged), runningTime(observation));
    }

    /** A number whose preconditions were not shown, or whose trials contradict each other, is no number to count with. */
    private @Nullable String unfit(Node.Observation observation, @Nullable Judged judged) {
        Value value = (asFound ? judgement.frameAsFound() : judgement.frame()).slot(observation.slot());
        if (value instanceof Value.Felt felt
                && !felt.evidence().contradictions(graph.rule()).isEmpty()) {
            return "its trials contradict each other";
        }
        if (judged == null || judged.some || judged.blocked == null) {
            return null;
        }
        return "not established: "
                + judged.blocked.blockedBy().stream()
                        .map(gate -> gate.name() + " was not shown")
                        .collect(Collectors.joining(", "));
    }

    private @Nullable Quantity runningTime(Node.Observation observation) {
        Quantity latest = null;
        for (Evidence.Statement said : judgement.evidence().statements(observation)) {
            Entry entry = said.entry();
            if (asFound && entry.given() instanceof Given.Adjusted) {
                return latest;
            }
            latest = later(latest, entry.runningTime());
        }
        return latest;
    }

    private static @Nullable Quantity later(@Nullable Quantity one, @Nullable Quantity other) {
        return one == null || (other != null && other.base() > one.base()) ? other : one;
    }
}
