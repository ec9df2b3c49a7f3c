package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds checks that wait for each other in a circle, and says so with the path. */
final class GateCircle {

    private GateCircle() {}

    /** Walks without recursion, since a file from a stranger may chain any number of gates. */
    static boolean look(Problems problems, Outline outline, Map<String, Set<String>> gates) {
        Set<String> done = new HashSet<>();
        boolean any = false;
        for (String start : gates.keySet()) {
            Map<String, Iterator<String>> path = new LinkedHashMap<>();
            Deque<String> stack = new ArrayDeque<>();
            if (done.add(start)) {
                stack.push(start);
                path.put(start, gates.getOrDefault(start, Set.of()).iterator());
            }
            while (!stack.isEmpty()) {
                String here = stack.element();
                Iterator<String> next =
                        path.getOrDefault(here, List.<String>of().iterator());
                if (!next.hasNext()) {
                    stack.pop();
                    path.remove(here);
                    continue;
                }
                String gate = next.next();
                if (path.containsKey(gate)) {
                    report(problems, outline, new ArrayList<>(path.keySet()), gate);
                    any = true;
                } else if (done.add(gate)) {
                    stack.push(gate);
                    path.put(gate, gates.getOrDefault(gate, Set.of()).iterator());
                }
            }
        }
        return any;
    }

    private static void report(Problems problems, Outline outline, List<String> path, String gate) {
        List<String> circle = new ArrayList<>(path.subList(path.indexOf(gate), path.size()));
        circle.add(gate);
        Item<Declaration.Check> check = outline.checks.get(gate);
        if (check != null) {
            problems.add(
                    StructureDiagnostics.gateCircle(check.declaration().target().span(), circle));
        }
    }
}
