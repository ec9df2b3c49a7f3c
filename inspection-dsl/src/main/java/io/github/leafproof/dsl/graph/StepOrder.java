package io.github.leafproof.dsl.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Observations in the order that changes the bench least, with the changes between them.
 *
 * <p>An observation stands behind what it has to wait for: at least one check that rests on it no longer waits for a gate
 * that was not looked at, and what decides whether it is asked for at all is known. Among what need not wait, earlier
 * stages come before later ones. In this freedom the order has the fewest changes of the bench, or, where the
 * procedure is too large to try all that matters, few: never more than the procedure's own order has.
 *
 * @param changes how many changes of the bench there are among the steps
 * @param atLeast how many there are in any order; the same where it is exact
 */
public record StepOrder(List<Step> steps, int changes, int atLeast, Method method) {

    /** How an order was found. */
    public enum Method {
        /** No order has fewer changes. */
        EXACT,
        /** Next comes what needs the fewest changes from where the bench is; another order may have fewer in all. */
        NEAREST_FIRST
    }

    public StepOrder {
        steps = List.copyOf(steps);
    }

    /** One thing to do. */
    public sealed interface Step {}

    /** The bench is brought from one state to another: {@code covers} from fitted to off. */
    public record Change(BenchState state, BenchState.Change change) implements Step {}

    /** Something is observed. */
    public record Observe(Node.Observation observation) implements Step {}

    /**
     * The order of these observations of a graph.
     *
     * @param stands how the bench stands before the first step; a state that is not named stands as it starts
     */
    static StepOrder of(CheckGraph graph, List<Node.Observation> observations, Map<String, String> stands) {
        StepSearch.Found found = StepSearch.search(graph, observations, stands);
        Map<String, String> bench = new HashMap<>();
        graph.states().forEach(state -> bench.put(state.name(), stands.getOrDefault(state.name(), state.starts())));
        List<Step> steps = new ArrayList<>();
        for (Node.Observation observation : found.order()) {
            List<Change> changes = setup(graph, observation, bench);
            changes.forEach(
                    change -> bench.put(change.state().name(), change.change().to()));
            steps.addAll(changes);
            steps.add(new Observe(observation));
        }
        int changes = steps.size() - found.order().size();
        return new StepOrder(
                steps, changes, found.method() == Method.EXACT ? changes : found.atLeast(), found.method());
    }

    /**
     * The changes that bring the bench to where an observation needs it, in the order in which they are made: first what ends
     * a state that carries a hazard, such as a lead that is on the plug, and last what begins one, such as fuel in the tank.
     */
    static List<Change> setup(CheckGraph graph, Node.Observation observation, Map<String, String> bench) {
        return observation.needs().stream()
                .sorted(Comparator.comparingInt(need -> danger(graph, need, bench)))
                .flatMap(need -> {
                    BenchState state = graph.state(need.name());
                    return state.way(bench.getOrDefault(need.name(), state.starts()), need.state()).stream()
                            .flatMap(List::stream)
                            .map(change -> new Change(state, change));
                })
                .toList();
    }

    /** More than 0 where a hazard begins, less where one ends. */
    private static int danger(CheckGraph graph, BenchState.Need need, Map<String, String> bench) {
        BenchState state = graph.state(need.name());
        boolean before = !state.hazardsWhile(bench.getOrDefault(need.name(), state.starts()))
                .isEmpty();
        boolean after = !state.hazardsWhile(need.state()).isEmpty();
        return before == after ? 0 : after ? 1 : -1;
    }

    /** The observations alone, in this order. */
    public List<Node.Observation> observations() {
        return steps.stream()
                .flatMap(step -> step instanceof Observe observe ? Stream.of(observe.observation()) : Stream.empty())
                .toList();
    }
}
