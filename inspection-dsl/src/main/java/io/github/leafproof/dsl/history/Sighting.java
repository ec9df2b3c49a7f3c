package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
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
    private final Origins found;
    private final Origins left;
    private final HeldLimits limits;

    Sighting(Judgement judgement, int look) {
        this.judgement = judgement;
        this.graph = judgement.graph();
        this.look = look;
        this.lasting = judgement.evidence().tray().content().gauges().stream()
                .map(Gauge::lastingErrors)
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
        this.found = Origins.of(judgement, true);
        this.left = Origins.of(judgement, false);
        this.limits = HeldLimits.of(judgement);
    }

    /** What is observed, and what is computed from it, in the order of the procedure. */
    List<Node> followed() {
        List<Node> nodes = new ArrayList<>(graph.observations());
        graph.derived().stream().filter(derived -> left.of(derived).isPresent()).forEach(nodes::add);
        return nodes;
    }

    /** What it was; empty where it was neither found nor left known. */
    Optional<Followed.Sight> of(Node node) {
        Value before = judgement.frameAsFound().slot(slot(node));
        Value after = left(node);
        boolean unknown = before instanceof Value.Missing && after instanceof Value.Missing;
        return unknown
                ? Optional.empty()
                : left.of(node).map(origin -> {
                    Followed.Point asLeft = point(after, origin, "");
                    Followed.Point asFound =
                            origin.adjusted() ? point(before, found.of(node).orElse(origin), " as found") : asLeft;
                    return new Followed.Sight(look, origin.adjusted(), asFound, asLeft);
                });
    }

    /** The value as it was left. */
    Value left(Node node) {
        return judgement.frame().slot(slot(node));
    }

    /** How far it was turned, where it was adjusted once and the sheet says so. */
    Optional<Quantity> turn(Node node) {
        if (!(node instanceof Node.Observation observation)) {
            return Optional.empty();
        }
        List<Given.Adjusted> adjusted = judgement.evidence().statements(observation).stream()
                .map(said -> said.entry().given())
                .filter(Given.Adjusted.class::isInstance)
                .map(Given.Adjusted.class::cast)
                .toList();
        return adjusted.size() == 1 ? Optional.ofNullable(adjusted.get(0).turn()) : Optional.empty();
    }

    /** The limits that checks hold directly against it. */
    List<HeldLimits.Limit> limits(Node node, Estimate now) {
        return limits.of(slot(node), now);
    }

    /** Which tray it was measured with, to the last letter. */
    String tray() {
        return judgement.evidence().tray().sha256();
    }

    private static int slot(Node node) {
        return node instanceof Node.Derived derived ? derived.slot() : ((Node.Observation) node).slot();
    }

    private Followed.Point point(Value value, Origins.Origin origin, String when) {
        Estimate number = number(value);
        return new Followed.Point(
                value instanceof Value.Missing missing ? missing.words() : Shown.measured(value, judgement.units()),
                number == null ? null : number.withSources(source -> source(source, when)),
                origin.unfit(),
                origin.runningTime());
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

    /**
     * What a gauge of the same tray is off, it is off at every look; anything else goes wrong anew each time, also before and
     * after an adjustment.
     */
    private String source(String name, String when) {
        return lasting.contains(name) ? name + " of tray " + tray() : name + " at look " + look + when;
    }
}
