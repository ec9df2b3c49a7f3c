package io.github.leafproof.dsl.mutants;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * In which checks two procedures decide otherwise, as far as that can be read off their graphs: another requirement, other
 * gates, other values on the way. What they say on the way does not count.
 */
final class SameGraph {

    /** Stands for the release among the names of checks; no check is called so, since it is a word of the language. */
    static final String RELEASE = "release";

    private final CheckGraph one;
    private final CheckGraph other;
    private final Set<String> changed = new HashSet<>();

    private SameGraph(CheckGraph one, CheckGraph other) {
        this.one = one;
        this.other = other;
    }

    /** The names of the checks that may come out otherwise, and {@link #RELEASE}; none where both decide alike. */
    static Set<String> differences(CheckGraph one, CheckGraph other) {
        return new SameGraph(one, other).differences();
    }

    private Set<String> differences() {
        int before = -1;
        // What is asked for may hang on a value, and that on what was observed, so that one change shows another.
        while (changed.size() > before) {
            before = changed.size();
            Stream.concat(one.observations().stream(), one.derived().stream())
                    .filter(node -> isOther(node, other.node(node.name()).orElse(null)))
                    .forEach(node -> changed.add(node.name()));
        }
        Set<String> names = new HashSet<>();
        for (Node.Check check : one.checks()) {
            Node.Check now = other.node(check.name()).orElse(null) instanceof Node.Check found ? found : check;
            if (isOther(check, now)) {
                names.add(check.name());
            }
            if (check.severity() != now.severity()) {
                names.add(RELEASE);
            }
        }
        if (!one.release().equals(other.release())) {
            names.add(RELEASE);
        }
        return names;
    }

    private boolean isOther(Node before, @Nullable Node now) {
        if (before instanceof Node.Observation was && now instanceof Node.Observation is) {
            return was.optional() != is.optional() || !same(was.when(), is.when()) || reads(was.when());
        }
        return !(before instanceof Node.Derived was && now instanceof Node.Derived is)
                || !same(was.formula(), is.formula())
                || reads(was.formula());
    }

    private boolean isOther(Node.Check was, Node.Check is) {
        return !one.rule().equals(other.rule())
                || !was.rule().equals(is.rule())
                || !same(was.when(), is.when())
                || !same(was.requirement(), is.requirement())
                || !gates(one, was).equals(gates(other, is))
                || reads(was.when())
                || reads(was.requirement());
    }

    private boolean reads(@Nullable Formula formula) {
        return formula != null && one.readBy(formula).stream().anyMatch(node -> changed.contains(node.name()));
    }

    /**
     * All gates that can hold a check back: those it waits for, and those that these wait for. A gate that may not apply lets
     * through then, whatever it waits for itself, so that nothing is known of those.
     */
    private static Set<String> gates(CheckGraph graph, Node.Check check) {
        Set<String> gates = new HashSet<>();
        collect(graph, check, gates);
        return gates;
    }

    private static void collect(CheckGraph graph, Node.Check check, Set<String> gates) {
        for (int number : check.after()) {
            Node.Check gate = graph.checks().get(number);
            if (gates.add(gate.name()) && gate.when() == null) {
                collect(graph, gate, gates);
            }
        }
    }

    /** The code of a formula cannot be compared; its kind, its words and its parts tell what it computes. */
    private static boolean same(@Nullable Formula one, @Nullable Formula other) {
        if (one == null || other == null) {
            return one == other;
        }
        List<Formula> these = one.parts();
        List<Formula> those = other.parts();
        return one.getClass() == other.getClass()
                && one.words().equals(other.words())
                && these.size() == those.size()
                && IntStream.range(0, these.size()).allMatch(i -> same(these.get(i), those.get(i)));
    }
}
