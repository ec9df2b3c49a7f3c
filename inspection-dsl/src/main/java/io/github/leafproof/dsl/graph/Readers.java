package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Who reads what: the way from a slot to everything that it bears on. */
final class Readers {

    private final CheckGraph graph;
    /** By slot, who reads it; by check, who waits for it. */
    private final List<List<Integer>> values;

    private final List<List<Integer>> askings;
    private final List<List<Integer>> checks;
    private final List<List<Integer>> advised;
    private final List<List<Integer>> waiting;
    private final int[] places;
    private final int[] turns;

    private Readers(CheckGraph graph) {
        this.graph = graph;
        this.values = nobody(graph.slots());
        this.askings = nobody(graph.slots());
        this.checks = nobody(graph.slots());
        this.advised = nobody(graph.slots());
        this.waiting = nobody(graph.checks().size());
        this.places = new int[graph.slots()];
        List<Node.Derived> derived = graph.derived();
        for (int place = 0; place < derived.size(); place++) {
            note(values, derived.get(place).formula(), place);
        }
        List<Node.Observation> observations = graph.observations();
        for (int place = 0; place < observations.size(); place++) {
            note(askings, observations.get(place).when(), place);
            places[observations.get(place).slot()] = place;
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

    private static List<List<Integer>> nobody(int size) {
        return new ArrayList<>(Collections.nCopies(size, List.of()));
    }

    private static void note(List<List<Integer>> readers, @Nullable Formula formula, int reader) {
        if (formula != null) {
            formula.slots(slot -> note(readers, slot, reader));
        }
    }

    private static void note(List<List<Integer>> readers, int of, int reader) {
        List<Integer> known = readers.get(of);
        if (known.isEmpty()) {
            known = new ArrayList<>();
            readers.set(of, known);
        }
        // Readers come in order, so that one that reads twice stands last.
        if (known.isEmpty() || known.get(known.size() - 1) != reader) {
            known.add(reader);
        }
    }

    /** The place of an observation among all. */
    int placeOf(int slot) {
        return places[slot];
    }

    /** When a check is judged: each after the gates it waits for. */
    int turnOf(int check) {
        return turns[check];
    }

    /** Everything that hangs on some slots, near or far; its size is that of the work. */
    Reach reach(Collection<Integer> slots) {
        Deque<Integer> open = new ArrayDeque<>(slots);
        Set<Integer> places = new TreeSet<>();
        Set<Integer> asked = new TreeSet<>();
        Set<Integer> judging = new TreeSet<>();
        Set<Integer> advising = new TreeSet<>();
        while (!open.isEmpty()) {
            int slot = open.remove();
            for (int place : values.get(slot)) {
                if (places.add(place)) {
                    open.add(graph.derived().get(place).slot());
                }
            }
            for (int place : askings.get(slot)) {
                if (asked.add(place)) {
                    open.add(graph.observations().get(place).slot());
                }
            }
            judging.addAll(checks.get(slot));
            advising.addAll(advised.get(slot));
        }
        return new Reach(places, asked, judging, waitingFor(judging), advising);
    }

    /** The checks that wait for some of these, near or far. */
    private Set<Integer> waitingFor(Set<Integer> gates) {
        Set<Integer> found = new TreeSet<>();
        Deque<Integer> open = new ArrayDeque<>(gates);
        while (!open.isEmpty()) {
            for (int check : waiting.get(open.remove())) {
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
