package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Needs;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What in a procedure hangs on what: worked out once, since a session asks it after every entry.
 *
 * @param checksOf for each observation, by its name, the checks that rest on it
 * @param observationsOf for each check, by its number, the names of the observations that it rests on
 * @param decidedBy for each observation that may not apply the names of those that decide it
 */
record Ties(
        Map<String, List<Node.Check>> checksOf,
        List<List<String>> observationsOf,
        Map<String, List<String>> decidedBy) {

    static Ties of(CheckGraph graph) {
        Map<String, List<Node.Check>> checksOf = new HashMap<>();
        List<List<String>> observationsOf = new ArrayList<>();
        for (Node.Check check : graph.checks()) {
            Needs needs = graph.needsOf(check);
            observationsOf.add(names(needs.observations()));
            needs.observations()
                    .forEach(each -> checksOf.computeIfAbsent(each.name(), name -> new ArrayList<>())
                            .add(check));
        }
        Map<String, List<String>> decidedBy = new HashMap<>();
        for (Node.Observation observation : graph.observations()) {
            if (observation.when() != null) {
                decidedBy.put(observation.name(), names(graph.decidingOn(observation)));
            }
        }
        return new Ties(checksOf, observationsOf, decidedBy);
    }

    private static List<String> names(List<Node.Observation> observations) {
        return observations.stream().map(Node.Observation::name).toList();
    }

    /** The checks that rest on an observation. */
    List<Node.Check> checks(Node.Observation observation) {
        return checksOf.getOrDefault(observation.name(), List.of());
    }
}
