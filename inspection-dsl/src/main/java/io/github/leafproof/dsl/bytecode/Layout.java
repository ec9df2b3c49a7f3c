package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Where what belongs to a slot lies in a row of numbers: one number in the place of the slot itself, what more it takes behind
 * all of these, and behind that what takes more or less for each engine.
 */
final class Layout {

    /** A number takes three more: its uncertainty, the degrees of freedom of that, and where the whole estimate is. */
    static final int KNOWN = 3;
    /** A statistic of readings: a number with all of these. */
    static final int STATISTIC = 1 + KNOWN;

    private final int[] more;
    private final int length;
    private final Map<String, Integer> words = new TreeMap<>();

    private Layout(CheckGraph graph) {
        this.more = new int[graph.slots()];
        int next = graph.slots();
        for (Node.Observation observation : graph.observations()) {
            if (mayBeUncertain(observation)) {
                more[observation.slot()] = next;
                next += KNOWN;
            } else if (observation.type() instanceof Type.Series) {
                more[observation.slot()] = next;
                next += STATISTIC * Statistic.values().length;
            }
        }
        for (Node.Derived derived : graph.derived()) {
            if (derived.type() instanceof Type.Measure || derived.type() instanceof Type.Count) {
                more[derived.slot()] = next;
                next += KNOWN;
            }
        }
        this.length = next;
        findWords(graph);
    }

    static Layout of(CheckGraph graph) {
        return new Layout(graph);
    }

    /** Whether it is read from an instrument. */
    static boolean mayBeUncertain(Node.Observation observation) {
        return observation.type() instanceof Type.Measure && observation.gauge() != null;
    }

    /** Where the further numbers of a slot begin. */
    int more(int slot) {
        return more[slot];
    }

    /** How many numbers there are for every engine. */
    int length() {
        return length;
    }

    /** The words that the procedure compares with, by their numbers. */
    Map<String, Integer> words() {
        return words;
    }

    private void findWords(CheckGraph graph) {
        Deque<Formula> open = new ArrayDeque<>();
        graph.derived().forEach(derived -> open.add(derived.formula()));
        graph.observations().forEach(observation -> add(observation.when(), open));
        for (Node.Check check : graph.checks()) {
            add(check.when(), open);
            open.add(check.requirement());
        }
        Set<Formula> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        while (!open.isEmpty()) {
            Formula formula = open.remove();
            if (seen.add(formula)) {
                open.addAll(formula.parts());
                if (formula instanceof Constant constant && constant.value() instanceof Value.Words known) {
                    words.putIfAbsent(known.text(), words.size());
                }
            }
        }
    }

    private static void add(@Nullable Formula formula, Deque<Formula> to) {
        if (formula != null) {
            to.add(formula);
        }
    }
}
