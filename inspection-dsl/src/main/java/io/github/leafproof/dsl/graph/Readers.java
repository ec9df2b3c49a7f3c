package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Who reads what: the way from a slot to everything that it bears on. */
final class Readers {

    private final CheckGraph graph;
    private final Map<Integer, List<Integer>> values = new HashMap<>();
    private final Map<Integer, List<Integer>> askings = new HashMap<>();
    private final Map<Integer, List<Integer>> checks = new HashMap<>();
    private final Map<Integer, List<Integer>> advised = new HashMap<>();
    private final Map<Integer, List<Integer>> waiting = new HashMap<>();
    private final Map<Integer, Integer> places = new HashMap<>();
    private final int[] turns;

    private Readers(CheckGraph graph) {
        this.graph = graph;
        List<Node.Derived> derived = graph.derived();
        for (int place = 0; place < derived.size(); place++) {
            note(values, derived.get(place).formula(), place);
        }
        List<Node.Observation> observations = graph.observations();
        for (int place = 0; place < observations.size(); place++) {
            note(askings, observations.get(place).when(), place);
            places.put(observations.get(place).slot(), place);
        }
        for (Node.Check check : graph.checks()) {
            note(checks, check.requirement(), check.number());
            note(checks, check.when(), check.number());
            check.advice().forEach(advice -> note(advised, advice.text(), check.number()));
            check.after().forEach(gate -> note(waiting, gate, check.number()));
        }
        this.turns = new int[graph.checks().size()];
        for (int turn = 0; turn < turns.length; turn++) {
            turns[graph.checkOrder().get(turn)] = turn;
        }
    }

    static Readers of(CheckGraph graph) {
        return new Readers(graph);
    }

    private static void note(Map<Integer, List<Integer>> readers, @Nullable Formula formula, int reader) {
        if (formula != null) {
            formula.slots(slot -> note(readers, slot, reader));
        }
    }

    private static void note(Map<Integer, List<Integer>> readers, int of, int reader) {
        List<Integer> known = readers.computeIfAbsent(of, key -> new ArrayList<>());
        // Readers come in order, so that one that reads twice stands last.
        if (known.isEmpty() || known.get(known.size() - 1) != reader) {
            known.add(reader);
        }
    }

    /** The place of an observation among all. */
    int placeOf(int slot) {
        return Objects.requireNonNull(places.get(slot));
    }

    /** When a check is judged: each after the gates it waits for. */
    int turnOf(int check) {
        return turns[check];
    }

    /** Everything that hangs on some slots, near or far; its size is that of the work. */
    Reach reach(Collection<Integer> slots) {
        Set<Integer> reached = new TreeSet<>(slots);
        Deque<Integer> open = new ArrayDeque<>(reached);
        Set<Integer> places = new TreeSet<>();
        Set<Integer> asked = new TreeSet<>();
        Set<Integer> judging = new TreeSet<>();
        Set<Integer> advising = new TreeSet<>();
        while (!open.isEmpty()) {
            int slot = open.remove();
            for (int place : values.getOrDefault(slot, List.of())) {
                if (places.add(place)) {
                    open.add(graph.derived().get(place).slot());
                }
            }
            for (int place : askings.getOrDefault(slot, List.of())) {
                if (asked.add(place)) {
                    open.add(graph.observations().get(place).slot());
                }
            }
            judging.addAll(checks.getOrDefault(slot, List.of()));
            advising.addAll(advised.getOrDefault(slot, List.of()));
        }
        return new Reach(places, asked, judging, waitingFor(judging), advising);
    }

    /** The checks that wait for some of these, near or far. */
    private Set<Integer> waitingFor(Set<Integer> gates) {
        Set<Integer> found = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>(gates);
        while (!open.isEmpty()) {
            for (int check : waiting.getOrDefault(open.remove(), List.of())) {
                if (found.add(check)) {
                    open.add(check);
                }
            }
        }
        return found;
    }

    /**
     * What hangs on something.
     *
     * @param values places among the derived values, each after all that it reads
     * @param asked places among the observations that are asked for, or not, accordingly
     * @param judging numbers of the checks that read it, through values or directly
     * @param waiting numbers of the checks that wait for some of these as for a gate
     * @param advising numbers of the checks some of whose advice reads it
     */
    record Reach(
            Set<Integer> values,
            Set<Integer> asked,
            Set<Integer> judging,
            Set<Integer> waiting,
            Set<Integer> advising) {}
}
