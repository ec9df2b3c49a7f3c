package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Whether two procedures decide alike, as far as that can be read off their graphs: the same checks, each with the same
 * requirement, the same gates, and so on. What they say on the way does not count.
 */
final class SameGraph {

    private SameGraph() {}

    static boolean decideAlike(CheckGraph one, CheckGraph other) {
        return one.rule().equals(other.rule())
                && one.release().equals(other.release())
                && all(one.observations(), other.observations(), SameGraph::same)
                && all(one.derived(), other.derived(), SameGraph::same)
                && all(one.checks(), other.checks(), SameGraph::same)
                && all(gates(one), gates(other), Set::equals);
    }

    private static boolean same(Node.Observation one, Node.Observation other) {
        return one.name().equals(other.name())
                && one.type().equals(other.type())
                && one.optional() == other.optional()
                && same(one.when(), other.when());
    }

    private static boolean same(Node.Derived one, Node.Derived other) {
        return one.name().equals(other.name()) && same(one.formula(), other.formula());
    }

    private static boolean same(Node.Check one, Node.Check other) {
        return one.name().equals(other.name())
                && one.severity() == other.severity()
                && one.rule().equals(other.rule())
                && same(one.when(), other.when())
                && same(one.requirement(), other.requirement());
    }

    /**
     * For each check all gates that can hold it back: those it waits for, and those that these wait for. A gate that may not
     * apply lets through then, whatever it waits for itself, so that nothing is known of those.
     */
    private static List<Set<Integer>> gates(CheckGraph graph) {
        return graph.checks().stream()
                .map(check -> {
                    Set<Integer> all = new HashSet<>();
                    collect(graph, check, all);
                    return all;
                })
                .toList();
    }

    private static void collect(CheckGraph graph, Node.Check check, Set<Integer> gates) {
        for (int number : check.after()) {
            Node.Check gate = graph.checks().get(number);
            if (gates.add(number) && gate.when() == null) {
                collect(graph, gate, gates);
            }
        }
    }

    /** The code of a formula cannot be compared; its kind, its words and its parts tell what it computes. */
    private static boolean same(@Nullable Formula one, @Nullable Formula other) {
        if (one == null || other == null) {
            return one == other;
        }
        return one.getClass() == other.getClass()
                && one.words().equals(other.words())
                && all(one.parts(), other.parts(), SameGraph::same);
    }

    private static <T> boolean all(List<T> these, List<T> those, BiPredicate<T, T> alike) {
        return these.size() == those.size()
                && IntStream.range(0, these.size()).allMatch(i -> alike.test(these.get(i), those.get(i)));
    }
}
