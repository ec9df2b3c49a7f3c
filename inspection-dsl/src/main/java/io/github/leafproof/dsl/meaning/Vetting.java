package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StatedFacts;
import io.github.leafproof.dsl.message.BenchDiagnostics;
import io.github.leafproof.dsl.message.ReachDiagnostics;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Whether a procedure, a card and a tray go together, before an engine is on the bench. */
public final class Vetting {

    private final Outline outline;
    private final Sites sites;
    private final CheckGraph graph;
    private final List<SourceText> files;

    /** @param files the texts of the procedure in the order in which their mistakes are told */
    Vetting(Outline outline, Sites sites, CheckGraph graph, List<SourceText> files) {
        this.files = List.copyOf(files);
        this.outline = outline;
        this.sites = sites;
        this.graph = graph;
    }

    /**
     * What does not go together, in the order of the procedure.
     *
     * @param variant which of the card's variants is meant, or null where that is not known
     */
    public List<Diagnostic> on(EngineCard card, @Nullable String variant, GaugeTray tray) {
        Problems problems = new Problems(List.of(), files, Damage.none());
        String known = variant;
        if (variant != null && !card.knowsVariant(variant)) {
            problems.add(BenchDiagnostics.noVariant(
                    Objects.requireNonNull(outline.header).name().span(),
                    variant,
                    card.model(),
                    List.copyOf(card.variants().keySet())));
            known = null;
        }
        gauges(problems, tray);
        Map<Node.Fact, Value> facts = StatedFacts.of(graph.facts(), card, known);
        Value[] slots = new Value[graph.slots()];
        Ground ground = new Ground(
                graph.facts(),
                graph.observations(),
                graph.derived(),
                graph.checks().size());
        Possibilities so = new Possibilities(ground);
        for (Map.Entry<Node.Fact, Value> stated : facts.entrySet()) {
            Value value = stated.getValue();
            slots[stated.getKey().slot()] = value;
            if (value instanceof Value.Missing missing) {
                Span span = sites.facts.get(stated.getKey().name());
                if (span != null) {
                    problems.add(BenchDiagnostics.notOnCard(span, missing.words()));
                }
            } else {
                so = so.with(stated.getKey().slot(), Possible.of(value));
            }
        }
        if (applies(problems, card, slots)) {
            new BenchLimits(problems, sites, so, card, tray).look(graph.checks(), graph.observations());
        }
        if (ground.hasGivenUp()) {
            problems.add(ReachDiagnostics.notThoughtThrough(
                    Objects.requireNonNull(outline.header).name().span()));
        }
        return problems.inFileOrder();
    }

    private void gauges(Problems problems, GaugeTray tray) {
        for (GaugeNeed need : graph.gauges()) {
            Declaration.Gauge written = Objects.requireNonNull(outline.gauges.get(need.name()));
            Span span = written.name().span();
            Optional<Gauge> gauge = tray.gauge(need.name());
            if (gauge.isEmpty()) {
                List<String> held = tray.gauges().stream().map(Gauge::name).toList();
                problems.add(BenchDiagnostics.noGauge(span, need.name(), need.words(), tray.name(), held));
            } else if (!need.isMetBy(gauge.get())) {
                String found = GaugeNeed.metBy(gauge.get()).words();
                problems.add(BenchDiagnostics.otherGauge(span, need.name(), need.words(), tray.name(), found));
            }
        }
    }

    private boolean applies(Problems problems, EngineCard card, Value[] slots) {
        Formula condition = graph.applies().orElse(null);
        if (condition == null || outline.applies == null || readsUnknown(condition, slots)) {
            return true;
        }
        Span span = outline.applies.condition().span();
        Value value = condition.value(Frame.of(slots, graph.rule(), UnitSystem.METRIC));
        if (value instanceof Value.Missing missing) {
            problems.add(BenchDiagnostics.mayNotApply(span, card.model(), missing.words()));
            return false;
        }
        boolean holds = ((Value.Judged) value).holds();
        if (!holds) {
            problems.add(BenchDiagnostics.notForThisEngine(span, card.model()));
        }
        return holds;
    }

    /** What the job sheet will say of the engine is not known yet. */
    private static boolean readsUnknown(Formula condition, @Nullable Value[] slots) {
        boolean[] unknown = {false};
        condition.slots(slot -> unknown[0] |= slots[slot] == null);
        return unknown[0];
    }
}
