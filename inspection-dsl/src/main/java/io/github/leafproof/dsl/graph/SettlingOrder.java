package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Formula;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Derived values, and the observations that may turn out not to apply, each after all that it reads. Gone through in this
 * order each has to be looked at once only, however they hang on each other and wherever they stand in the procedure.
 */
final class SettlingOrder {

    private final List<Node> nodes;
    private final Map<Integer, Integer> turns = new HashMap<>();

    private SettlingOrder(List<Node> nodes) {
        this.nodes = List.copyOf(nodes);
        for (int turn = 0; turn < nodes.size(); turn++) {
            turns.put(slot(nodes.get(turn)), turn);
        }
    }

    /**
     * The order of these.
     *
     * @throws IllegalArgumentException if some read each other in a circle
     */
    static SettlingOrder of(List<Node.Derived> derived, List<Node.Observation> observations) {
        List<Node> all = Stream.<Node>concat(
                        derived.stream(), observations.stream().filter(observation -> observation.when() != null))
                .toList();
        Map<Integer, List<Node>> readers = new HashMap<>();
        Map<Integer, Integer> unsettled = new HashMap<>();
        all.forEach(node -> unsettled.put(slot(node), 0));
        for (Node node : all) {
            read(node).slots(slot -> {
                if (unsettled.containsKey(slot)) {
                    readers.computeIfAbsent(slot, key -> new ArrayList<>()).add(node);
                    unsettled.merge(slot(node), 1, Integer::sum);
                }
            });
        }
        List<Node> order = new ArrayList<>(all.stream()
                .filter(node -> unsettled.getOrDefault(slot(node), 0) == 0)
                .toList());
        for (int next = 0; next < order.size(); next++) {
            for (Node reader : readers.getOrDefault(slot(order.get(next)), List.of())) {
                if (unsettled.merge(slot(reader), -1, Integer::sum) == 0) {
                    order.add(reader);
                }
            }
        }
        if (order.size() < all.size()) {
            throw new IllegalArgumentException("values and observations hang on each other in a circle");
        }
        return new SettlingOrder(order);
    }

    /** All of them. */
    List<Node> nodes() {
        return nodes;
    }

    /** Those in some of the slots. */
    List<Node> in(Collection<Integer> slots) {
        List<Integer> some = new ArrayList<>();
        for (int slot : slots) {
            Integer turn = turns.get(slot);
            if (turn != null) {
                some.add(turn);
            }
        }
        Collections.sort(some);
        List<Node> inOrder = new ArrayList<>();
        some.forEach(turn -> inOrder.add(nodes.get(turn)));
        return inOrder;
    }

    private static int slot(Node node) {
        return node instanceof Node.Observation observation ? observation.slot() : ((Node.Derived) node).slot();
    }

    /** What decides on it. */
    static Formula read(Node node) {
        @Nullable
        Formula read =
                node instanceof Node.Observation observation ? observation.when() : ((Node.Derived) node).formula();
        return Objects.requireNonNull(read);
    }
}
