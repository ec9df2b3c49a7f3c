package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Hazard;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The cautions that belong before a step: its own hazards, those of the states it needs, and those of getting there. */
final class Cautions {

    private final CheckGraph graph;

    Cautions(CheckGraph graph) {
        this.graph = graph;
    }

    /** Each caution once, in the order of the steps. */
    List<String> of(List<Node.Observation> observed) {
        Set<String> cautions = new LinkedHashSet<>();
        for (Node.Observation observation : observed) {
            for (BenchState.Need need : observation.needs()) {
                BenchState state = graph.state(need.name());
                state.way(state.starts(), need.state())
                        .orElse(List.of())
                        .forEach(change -> cautions.addAll(of(change)));
            }
            cautions.addAll(during(observation));
        }
        return List.copyOf(cautions);
    }

    /** The cautions of the whole procedure. */
    List<String> ofAll() {
        return of(graph.observations());
    }

    /** The cautions while a step is done, the bench being as it needs it. */
    List<String> during(Node.Observation observation) {
        List<Hazard> hazards = new ArrayList<>(observation.hazards());
        observation
                .needs()
                .forEach(need -> hazards.addAll(graph.state(need.name()).hazardsWhile(need.state())));
        return words(hazards);
    }

    /** The cautions of a change of the bench. */
    static List<String> of(BenchState.Change change) {
        return words(change.hazards());
    }

    private static List<String> words(List<Hazard> hazards) {
        return hazards.stream().map(Hazard::caution).distinct().toList();
    }
}
