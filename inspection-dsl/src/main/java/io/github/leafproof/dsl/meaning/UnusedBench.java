package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Name;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Points at gauges, setups, states and hazards that no step has any use for. */
final class UnusedBench {

    /** Between more states than these no ways are looked for: a bench has a handful. */
    private static final int MOST_STATES = 40;

    private final Problems problems;
    private final Outline outline;

    UnusedBench(Problems problems, Outline outline) {
        this.problems = problems;
        this.outline = outline;
    }

    void look(List<BenchState> states, List<Node.Observation> observed) {
        Set<String> gauges = new HashSet<>();
        Map<String, Set<String>> needed = new LinkedHashMap<>();
        for (Node.Observation observation : observed) {
            if (observation.gauge() != null) {
                gauges.add(observation.gauge().name());
            }
            observation
                    .needs()
                    .forEach(need -> needed.computeIfAbsent(need.name(), name -> new LinkedHashSet<>())
                            .add(need.state()));
        }
        outline.gauges.values().stream()
                .filter(gauge -> !gauges.contains(gauge.name().text()))
                .forEach(gauge -> unused(gauge.name(), "declared, but no observation is made with it"));
        for (BenchState state : states) {
            Declaration.Setup setup = outline.setups.get(state.name());
            Set<String> wanted = needed.get(state.name());
            if (setup != null && wanted != null) {
                idleStates(setup, state, wanted);
            } else if (setup != null) {
                unused(setup.name(), "declared, but no observation needs it");
            }
        }
        hazards();
    }

    /** A state counts as used when a step needs it, or when the shortest way between two that are used leads through it. */
    private void idleStates(Declaration.Setup setup, BenchState state, Set<String> wanted) {
        Map<String, Span> all = new LinkedHashMap<>();
        setup.changes()
                .forEach(change ->
                        all.putIfAbsent(change.to().text(), change.to().span()));
        if (all.size() > MOST_STATES) {
            return;
        }
        Set<String> ends = new LinkedHashSet<>(wanted);
        ends.add(state.starts());
        Set<String> used = new HashSet<>(ends);
        for (String from : ends) {
            for (String to : ends) {
                state.way(from, to).orElse(List.of()).forEach(change -> used.add(change.to()));
            }
        }
        all.forEach((word, span) -> {
            if (!used.contains(word) && !outline.isInPart(span)) {
                problems.add(StructureDiagnostics.unused(
                        span, word, "a state of " + state.name() + " that no observation needs"));
            }
        });
    }

    private void hazards() {
        Set<String> named = new HashSet<>();
        outline.observations
                .values()
                .forEach(item -> add(named, item.declaration().hazards()));
        for (Declaration.Setup setup : outline.setups.values()) {
            setup.changes().forEach(change -> add(named, change.hazards()));
            setup.whiles().forEach(lasting -> add(named, lasting.hazards()));
        }
        outline.hazards.values().stream()
                .filter(hazard -> !named.contains(hazard.name().text()))
                .forEach(hazard -> unused(hazard.name(), "declared, but nothing carries it, so nobody is warned"));
    }

    private static void add(Set<String> named, List<Name> hazards) {
        hazards.forEach(hazard -> named.add(hazard.text()));
    }

    /** What a part declares and its user has no need of is no news. */
    private void unused(Name name, String what) {
        if (!outline.isInPart(name.span())) {
            problems.add(StructureDiagnostics.unused(name.span(), name.text(), what));
        }
    }
}
