package io.github.leafproof.dsl.meaning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds what leads back to itself. */
final class Circles {

    private Circles() {}

    /**
     * The circles among steps from name to name, each as the path round it, its first name again at its end. Walks without
     * recursion, since a file from a stranger may chain any number of steps.
     */
    static List<List<String>> among(Map<String, ? extends Collection<String>> steps) {
        List<List<String>> circles = new ArrayList<>();
        Set<String> done = new HashSet<>();
        for (String start : steps.keySet()) {
            Map<String, Iterator<String>> path = new LinkedHashMap<>();
            Deque<String> stack = new ArrayDeque<>();
            if (done.add(start)) {
                stack.push(start);
                path.put(start, from(steps, start));
            }
            while (!stack.isEmpty()) {
                Iterator<String> next = path.getOrDefault(stack.element(), from(steps, ""));
                if (!next.hasNext()) {
                    path.remove(stack.pop());
                    continue;
                }
                String step = next.next();
                if (path.containsKey(step)) {
                    circles.add(circle(new ArrayList<>(path.keySet()), step));
                } else if (done.add(step)) {
                    stack.push(step);
                    path.put(step, from(steps, step));
                }
            }
        }
        return circles;
    }

    private static Iterator<String> from(Map<String, ? extends Collection<String>> steps, String name) {
        Collection<String> next = steps.get(name);
        return next == null ? List.<String>of().iterator() : next.iterator();
    }

    private static List<String> circle(List<String> path, String step) {
        List<String> circle = new ArrayList<>(path.subList(path.indexOf(step), path.size()));
        circle.add(step);
        return circle;
    }
}
