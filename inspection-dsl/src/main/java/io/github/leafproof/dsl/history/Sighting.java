package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What things were at one look, each as found and as left, ready to be compared with other looks. */
final class Sighting {

    private final Judgement judgement;
    private final CheckGraph graph;
    private final int look;
    private final Set<String> lasting;

    Sighting(Judgement judgement, int look) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.look = look;
        this.lasting = judgement.evidence().files().tray().content().gauges().stream()
                .map(Gauge::lastingErrors)
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    Judgement judgement() {
        return judgement;
    }

    /** What is observed or computed from it, in the order of the procedure. */
    List<Node> followed() {
        List<Node> nodes = new ArrayList<>(graph.observations());
        graph.derived().stream()
                .filter(derived -> !observations(derived).isEmpty())
                .forEach(nodes::add);
        return nodes;
    }

    /** What it was; empty where it was neither found nor left known. */
    Optional<Followed.Sight> of(Node node) {
        Set<Node.Observation> observations = observations(node);
        boolean adjusted = observations.stream().anyMatch(judgement.evidence()::isAdjusted);
        Value found = judgement.frameAsFound().slot(slot(node));
        Value left = judgement.frame().slot(slot(node));
        if (found instanceof Value.Missing && left instanceof Value.Missing) {
            return Optional.empty();
        }
        Followed.Point asLeft = point(left, observations, false);
        return Optional.of(
                new Followed.Sight(look, adjusted, adjusted ? point(found, observations, true) : asLeft, asLeft));
    }

    /** The value as it was left. */
    Value left(Node node) {
        return judgement.frame().slot(slot(node));
    }

    static int slot(Node node) {
        return node instanceof Node.Derived derived ? derived.slot() : ((Node.Observation) node).slot();
    }

    private Set<Node.Observation> observations(Node node) {
        Set<Node.Observation> found = new LinkedHashSet<>();
        if (node instanceof Node.Observation observation) {
            found.add(observation);
        } else if (node instanceof Node.Derived derived) {
            graph.readBy(derived.formula()).forEach(read -> found.addAll(observations(read)));
        }
        return found;
    }

    private Followed.Point point(Value value, Set<Node.Observation> observations, boolean asFound) {
        Estimate number = number(value);
        return new Followed.Point(
                value instanceof Value.Missing missing ? missing.words() : Shown.measured(value, judgement.units()),
                number == null ? null : number.withSources(this::ofThisLook),
                unfit(value, observations, asFound),
                runningTime(observations, asFound));
    }

    private static @Nullable Estimate number(Value value) {
        if (value instanceof Value.Amount amount) {
            return amount.estimate();
        }
        if (value instanceof Value.Felt felt) {
            return felt.evidence().estimate(felt.gap()).orElse(null);
        }
        return value instanceof Value.Readings readings
                ? readings.series().mean().orElse(null)
                : null;
    }

    /** What a gauge of the same tray is off, it is off at every look; anything else goes wrong anew each time. */
    private String ofThisLook(String source) {
        return lasting.contains(source)
                ? source + " of tray " + judgement.evidence().files().tray().sha256()
                : source + " at look " + look;
    }

    /** A number whose preconditions were not shown, or whose trials contradict each other, is no number to count with. */
    private @Nullable String unfit(Value value, Set<Node.Observation> observations, boolean asFound) {
        if (value instanceof Value.Felt felt
                && !felt.evidence().contradictions(graph.rule()).isEmpty()) {
            return "its trials contradict each other";
        }
        for (Node.Observation observation : observations) {
            List<Verdict> verdicts = graph.affectedBy(observation).checks().stream()
                    .map(check -> verdict(check, asFound))
                    .filter(verdict -> verdict.outcome() != Outcome.NOT_APPLICABLE)
                    .toList();
            if (!verdicts.isEmpty() && verdicts.stream().allMatch(verdict -> verdict.outcome() == Outcome.BLOCKED)) {
                return "not established: "
                        + verdicts.get(0).blockedBy().stream()
                                .map(gate -> gate.name() + " was not shown")
                                .collect(Collectors.joining(", "));
            }
        }
        return null;
    }

    /** How a check came out, before or after what was adjusted. */
    Verdict verdict(Node.Check check, boolean asFound) {
        Verdict left = judgement.verdicts().get(check.number());
        return asFound ? judgement.asFound(check).orElse(left) : left;
    }

    /** How long the engine had run when the last of these was observed. */
    private @Nullable Quantity runningTime(Set<Node.Observation> observations, boolean asFound) {
        Quantity latest = null;
        for (Node.Observation observation : observations) {
            for (Evidence.Statement said : judgement.evidence().statements(observation)) {
                Entry entry = said.entry();
                if (asFound && entry.given() instanceof Given.Adjusted) {
                    break;
                }
                Quantity then = entry.runningTime();
                latest = latest == null || (then != null && then.base() > latest.base()) ? then : latest;
            }
        }
        return latest;
    }
}
