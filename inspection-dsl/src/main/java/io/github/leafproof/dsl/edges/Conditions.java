package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.OfReadings;
import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The single conditions that a check is made of, and the observations that each rests on. */
final class Conditions {

    private Conditions() {}

    /** Those of its requirement and of when it applies, without the words that join them. */
    static List<Formula> of(Node.Check check) {
        List<Formula> conditions = new ArrayList<>();
        Stream.concat(Stream.of(check.requirement()), Stream.ofNullable(check.when()))
                .forEach(formula -> collect(formula, conditions));
        return conditions;
    }

    private static void collect(Formula formula, List<Formula> conditions) {
        if (formula instanceof Joined || formula instanceof Not) {
            formula.parts().forEach(part -> collect(part, conditions));
        } else {
            conditions.add(formula);
        }
    }

    /** What is observed for a condition: first what bears on the fewest checks, so that little else changes with it. */
    static List<Node.Observation> observations(CheckGraph graph, Formula condition) {
        Set<Node.Observation> found = new HashSet<>();
        reach(graph, condition, found, new HashSet<>());
        return found.stream()
                .sorted(Comparator.<Node.Observation>comparingInt(
                                each -> graph.affectedBy(each).checks().size())
                        .thenComparing(
                                Comparator.comparingInt(Node.Observation::slot).reversed()))
                .toList();
    }

    private static void reach(CheckGraph graph, Formula formula, Set<Node.Observation> found, Set<String> seen) {
        for (Node node : graph.readBy(formula)) {
            if (node instanceof Node.Observation observation) {
                found.add(observation);
            } else if (node instanceof Node.Derived derived && seen.add(derived.name())) {
                reach(graph, derived.formula(), found, seen);
            }
        }
    }

    /** What a condition computes of the readings of a series. */
    static Set<Statistic> statistics(CheckGraph graph, Formula condition, Node.Observation series) {
        Set<Statistic> used = EnumSet.noneOf(Statistic.class);
        statistics(graph, condition, series, used, new HashSet<>());
        return used;
    }

    private static void statistics(
            CheckGraph graph, Formula formula, Node.Observation series, Set<Statistic> used, Set<String> seen) {
        if (formula instanceof OfReadings of && graph.readBy(of).contains(series)) {
            used.add(of.statistic());
        }
        formula.parts().forEach(part -> statistics(graph, part, series, used, seen));
        for (Node node : graph.readBy(formula)) {
            if (node instanceof Node.Derived derived && seen.add(derived.name())) {
                statistics(graph, derived.formula(), series, used, seen);
            }
        }
    }
}
