package io.github.leafproof.dsl.graph;

import java.util.ArrayList;
import java.util.List;

/**
 * What in a procedure hangs on what, near or far. It is worked out once for a graph: whoever looks for the next step asks it
 * after every entry.
 */
public final class Ties {

    private final List<List<Node.Observation>> behindChecks = new ArrayList<>();
    private final List<List<Node.Check>> checks = new ArrayList<>();
    private final List<List<Node.Observation>> deciding = new ArrayList<>();

    private Ties(CheckGraph graph) {
        for (int slot = 0; slot < graph.slots(); slot++) {
            checks.add(List.of());
            deciding.add(List.of());
        }
        for (Node.Observation observation : graph.observations()) {
            checks.set(observation.slot(), new ArrayList<>());
            if (observation.when() != null) {
                deciding.set(observation.slot(), Questions.deciding(graph, observation));
            }
        }
        for (Node.Check check : graph.checks()) {
            List<Node.Observation> behind = Questions.observations(graph, check);
            behindChecks.add(behind);
            behind.forEach(observation -> checks.get(observation.slot()).add(check));
        }
        checks.replaceAll(List::copyOf);
    }

    static Ties of(CheckGraph graph) {
        return new Ties(graph);
    }

    /** The checks that rest on an observation, in the order of the procedure. */
    public List<Node.Check> checks(Node.Observation observation) {
        return checks.get(observation.slot());
    }

    /** The observations that a check rests on, and those that decide whether these are asked for. */
    public List<Node.Observation> observations(Node.Check check) {
        return behindChecks.get(check.number());
    }

    /** The observations that decide whether one is asked for; none where it always is. */
    public List<Node.Observation> deciding(Node.Observation observation) {
        return deciding.get(observation.slot());
    }
}
