package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Hazard;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The cautions that belong before a step: its own hazards, those of the states it needs, and those of getting there. */
public final class Cautions {

    private final CheckGraph graph;

    private Cautions(CheckGraph graph) {
        this.graph = graph;
    }

    /** The cautions of a procedure. */
    public static Cautions in(CheckGraph graph) {
        return new Cautions(graph);
    }

    /** Each caution once, in the order of the steps. */
    List<String> of(List<Node.Observation> observed) {
        Set<String> cautions = new LinkedHashSet<>();
        for (Node.Observation observation : observed) {
            for (BenchState.Need need : observation.needs()) {
                BenchState state = graph.state(need.name());
                state.way(state.starts(), need.state())
                        .orElse(List.of())
                        .forEach(change -> cautions.addAll(words(changing(state, change))));
            }
            cautions.addAll(during(observation));
        }
        return List.copyOf(cautions);
    }

    /** The cautions of the whole procedure. */
    List<String> ofAll() {
        return of(graph.observations());
    }

    /**
     * The cautions while a step is done; what lasts of earlier steps counts as well.
     *
     * @param bench how the states of the bench stand meanwhile, by their names; one that is not named stands as it starts
     */
    public List<String> during(Node.Observation observation, Map<String, String> bench) {
        List<Hazard> hazards = new ArrayList<>(observation.hazards());
        hazards.addAll(lasting(bench));
        return words(hazards);
    }

    /**
     * The cautions of a change of the bench; what lasts of earlier steps counts as well.
     *
     * @param bench how the states of the bench stand before it, by their names; one that is not named stands as it starts
     */
    public List<String> of(BenchState state, BenchState.Change change, Map<String, String> bench) {
        List<Hazard> hazards = changing(state, change);
        hazards.addAll(lasting(bench));
        return words(hazards);
    }

    private List<Hazard> lasting(Map<String, String> bench) {
        return graph.states().stream()
                .flatMap(state -> state.hazardsWhile(bench.getOrDefault(state.name(), state.starts())).stream())
                .toList();
    }

    /** The cautions while a step is done, the bench being as it needs it. */
    List<String> during(Node.Observation observation) {
        List<Hazard> hazards = new ArrayList<>(observation.hazards());
        observation
                .needs()
                .forEach(need -> hazards.addAll(graph.state(need.name()).hazardsWhile(need.state())));
        return words(hazards);
    }

    /** The hazards of a change: its own, and those of the states that it leaves and brings about. */
    private static List<Hazard> changing(BenchState state, BenchState.Change change) {
        List<Hazard> hazards = new ArrayList<>(change.hazards());
        hazards.addAll(state.hazardsWhile(change.from()));
        hazards.addAll(state.hazardsWhile(change.to()));
        return hazards;
    }

    private static List<String> words(List<Hazard> hazards) {
        return hazards.stream().map(Hazard::caution).distinct().toList();
    }
}
