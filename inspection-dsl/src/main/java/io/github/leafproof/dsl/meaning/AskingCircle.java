package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds observations that are asked for only after themselves, by way of what their {@code when} reads. */
final class AskingCircle {

    private final Map<Integer, String> names = new HashMap<>();
    private final Map<String, Set<String>> steps = new LinkedHashMap<>();

    private AskingCircle(List<Node.Observation> observations, List<Node.Derived> derived) {
        observations.forEach(observation -> names.put(observation.slot(), observation.name()));
        derived.forEach(value -> names.put(value.slot(), value.name()));
        for (Node.Observation observation : observations) {
            if (observation.when() != null) {
                steps.put(observation.name(), readBy(observation.when()));
            }
        }
        // A value cannot rest on itself, so that every circle goes through an observation.
        derived.forEach(value -> steps.put(value.name(), readBy(value.formula())));
    }

    private Set<String> readBy(Formula formula) {
        Set<String> read = new LinkedHashSet<>();
        formula.slots(slot -> {
            String name = names.get(slot);
            if (name != null) {
                read.add(name);
            }
        });
        return read;
    }

    static void look(
            Problems problems, Outline outline, List<Node.Observation> observations, List<Node.Derived> derived) {
        if (observations.stream().allMatch(observation -> observation.when() == null)) {
            return;
        }
        for (List<String> circle : Circles.among(new AskingCircle(observations, derived).steps)) {
            report(problems, outline, circle);
        }
    }

    /** At the first observation of the circle whose asking is a condition. */
    private static void report(Problems problems, Outline outline, List<String> circle) {
        for (int i = 0; i < circle.size(); i++) {
            Item<Declaration.Observe> item = outline.observations.get(circle.get(i));
            Expression when = item == null ? null : item.declaration().when();
            if (when != null) {
                problems.add(StructureDiagnostics.askingCircle(when.span(), turned(circle, i)));
                return;
            }
        }
    }

    /** The same circle, begun at another place. */
    private static List<String> turned(List<String> circle, int start) {
        Set<String> turned = new LinkedHashSet<>(circle.subList(start, circle.size()));
        turned.addAll(circle);
        List<String> path = new ArrayList<>(turned);
        path.add(circle.get(start));
        return path;
    }
}
