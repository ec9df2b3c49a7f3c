package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.BenchState;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.inspection.record.Act;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What is still ahead, in the order in which it is asked for. What was just entered and can be settled by another trial comes
 * at once, the bench being as it has to be. Then comes what was never put off, then what was put off once, and so on, each
 * in the order that changes the bench least from where it stands by then.
 *
 * @param agenda what has become of each observation
 */
record Ahead(Agenda agenda, StepOrder order) {

    static Ahead of(Judgement judgement, Course course) {
        CheckGraph graph = judgement.graph();
        Agenda agenda = Agenda.of(judgement, course);
        Map<String, Integer> timesPutOff = course.timesPutOff();
        Optional<String> atHand = atHand(course);
        // By how often they were put off; what is at hand comes before all others.
        TreeMap<Integer, List<Node.Observation>> rounds = new TreeMap<>();
        for (Node.Observation observation : graph.observations()) {
            String name = observation.name();
            if (agenda.isAskedFor(observation)) {
                boolean isAtHand = agenda.place(observation) == Place.TO_DO
                        && atHand.filter(name::equals).isPresent();
                int round = isAtHand ? -1 : timesPutOff.getOrDefault(name, 0);
                rounds.computeIfAbsent(round, key -> new ArrayList<>()).add(observation);
            }
        }
        return new Ahead(agenda, inOrder(graph, rounds.values(), course.bench(graph)));
    }

    /** What the last act entered. */
    private static Optional<String> atHand(Course course) {
        List<Act> acts = course.acts();
        return !acts.isEmpty() && acts.get(acts.size() - 1) instanceof Act.Entered entered
                ? Optional.of(entered.entry().observe())
                : Optional.empty();
    }

    private static StepOrder inOrder(
            CheckGraph graph, Collection<List<Node.Observation>> rounds, Map<String, String> bench) {
        List<StepOrder.Step> steps = new ArrayList<>();
        int changes = 0;
        int atLeast = 0;
        StepOrder.Method method = StepOrder.Method.EXACT;
        for (List<Node.Observation> round : rounds) {
            StepOrder order = graph.stepOrder(round, bench);
            steps.addAll(order.steps());
            changes += order.changes();
            atLeast += order.atLeast();
            method = order.method() == StepOrder.Method.EXACT ? method : order.method();
            order.observations().forEach(observation -> {
                for (BenchState.Need need : observation.needs()) {
                    bench.put(need.name(), need.state());
                }
            });
        }
        return new StepOrder(steps, changes, atLeast, method);
    }
}
