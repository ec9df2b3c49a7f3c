package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Answers what a check needs, and what an observation bears on. */
final class Questions {

    private final CheckGraph graph;
    private final Set<Integer> read = new TreeSet<>();
    private final Deque<Integer> open = new ArrayDeque<>();

    private Questions(CheckGraph graph) {
        this.graph = graph;
    }

    static Needs needs(CheckGraph graph, Node.Check check) {
        return new Questions(graph).needs(check);
    }

    /** The observations that a check rests on, and those that decide whether they are asked for. */
    static List<Node.Observation> observations(CheckGraph graph, Node.Check check) {
        Questions questions = new Questions(graph);
        questions.readAll(check);
        return questions.all(Node.Observation.class);
    }

    /** The observations that decide whether one is asked for. */
    static List<Node.Observation> deciding(CheckGraph graph, Node.Observation observation) {
        Questions questions = new Questions(graph);
        questions.read(observation.when());
        questions.follow();
        return questions.all(Node.Observation.class);
    }

    private void readAll(Node.Check check) {
        read(check.requirement());
        read(check.when());
        follow();
    }

    private void follow() {
        while (!open.isEmpty()) {
            Node node = graph.inSlot(open.remove());
            if (node instanceof Node.Derived derived) {
                read(derived.formula());
            } else if (node instanceof Node.Observation observation) {
                read(observation.when());
            }
        }
    }

    private Needs needs(Node.Check check) {
        readAll(check);
        List<Node.Observation> observations = all(Node.Observation.class);
        Set<GaugeNeed> gauges = new LinkedHashSet<>();
        Set<BenchState.Need> states = new LinkedHashSet<>();
        for (Node.Observation observation : observations) {
            if (observation.gauge() != null) {
                gauges.add(observation.gauge());
            }
            states.addAll(observation.needs());
        }
        return new Needs(
                all(Node.Fact.class),
                observations,
                all(Node.Derived.class),
                List.copyOf(gauges),
                List.copyOf(states),
                checks(gates(graph, check)));
    }

    private void read(@Nullable Formula formula) {
        if (formula != null) {
            formula.slots(slot -> {
                if (read.add(slot)) {
                    open.add(slot);
                }
            });
        }
    }

    private <T extends Node> List<T> all(Class<T> kind) {
        return read.stream()
                .map(graph::inSlot)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** The numbers of all gates before a check, near or far. */
    static Set<Integer> gates(CheckGraph graph, Node.Check check) {
        Set<Integer> gates = new TreeSet<>();
        Deque<Node.Check> waiting = new ArrayDeque<>(List.of(check));
        while (!waiting.isEmpty()) {
            for (int gate : waiting.remove().after()) {
                if (gates.add(gate)) {
                    waiting.add(graph.checks().get(gate));
                }
            }
        }
        return gates;
    }

    static Affected affected(CheckGraph graph, Node.Observation observation) {
        return new Questions(graph).affected(observation);
    }

    private Affected affected(Node.Observation observation) {
        Readers.Reach reach = graph.readers().reach(List.of(observation.slot()));
        Set<Integer> waiting = new TreeSet<>(reach.waiting());
        waiting.removeAll(reach.judging());
        Set<Integer> bearsOn = new TreeSet<>(List.of(observation.slot()));
        reach.values().forEach(place -> bearsOn.add(graph.derived().get(place).slot()));
        reach.asked()
                .forEach(place -> bearsOn.add(graph.observations().get(place).slot()));
        List<Affected.Said> advice = new ArrayList<>();
        for (Node.Check check : checks(reach.advising())) {
            for (Node.Advice each : check.advice()) {
                if (readsAny(each.text(), bearsOn)) {
                    advice.add(new Affected.Said(check, each));
                }
            }
        }
        return new Affected(
                reach.values().stream()
                        .map(graph.derived()::get)
                        .sorted(Comparator.comparingInt(Node.Derived::slot))
                        .toList(),
                reach.asked().stream().map(graph.observations()::get).toList(),
                checks(reach.judging()),
                checks(waiting),
                advice);
    }

    private static boolean readsAny(Formula formula, Set<Integer> slots) {
        boolean[] reads = new boolean[1];
        formula.slots(slot -> reads[0] |= slots.contains(slot));
        return reads[0];
    }

    private List<Node.Check> checks(Collection<Integer> numbers) {
        return numbers.stream().map(graph.checks()::get).toList();
    }
}
