package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How many observations values and checks lean on, all together. A value carries the uncertainty of each with it, and the
 * report of a check shows each: a thousand checks of a sum of a thousand readings come to a million lines, and a file from a
 * stranger could ask for very many more.
 */
final class Leanings {

    /** Steps of computing and lines of a report that take some seconds. */
    private static final long MOST = 5_000_000;

    /** How many steps of computing a line of a report is worth. */
    private static final int LINE = 20;

    private final Sizes sizes;
    /** The observations behind each slot that has some. */
    private final Map<Integer, int[]> behind = new HashMap<>();

    private long all;

    private Leanings(Sizes sizes, List<Node.Observation> observations) {
        this.sizes = sizes;
        observations.forEach(observation -> behind.put(observation.slot(), new int[] {observation.slot()}));
    }

    /**
     * Says where it becomes too much.
     *
     * @param derived derived values, each after all that it reads
     */
    static void look(
            Problems problems,
            Outline outline,
            Sizes sizes,
            List<Node.Observation> observations,
            List<Node.Derived> derived,
            List<Node.Check> checks) {
        Leanings leanings = new Leanings(sizes, observations);
        for (Node.Derived value : derived) {
            int[] leaning = leanings.of(value.formula());
            if (leanings.isTooMuch(leaning, leanings.steps(value.formula()))) {
                report(problems, outline.lets.get(value.name()));
                return;
            }
            leanings.behind.put(value.slot(), leaning);
        }
        for (Node.Check check : checks) {
            int[] leaning = leanings.of(check.requirement());
            if (leanings.isTooMuch(leaning, leanings.steps(check.requirement()) + LINE)) {
                report(problems, outline.checks.get(check.name()));
                return;
            }
        }
    }

    private static void report(Problems problems, @Nullable Item<?> item) {
        if (item != null && item.declaration() instanceof Declaration.Let let) {
            problems.add(StructureDiagnostics.leansOnTooMuch(let.target().span()));
        } else if (item != null && item.declaration() instanceof Declaration.Check check) {
            problems.add(StructureDiagnostics.leansOnTooMuch(check.target().span()));
        }
    }

    private long steps(Formula formula) {
        return sizes.formulas(formula);
    }

    private boolean isTooMuch(int[] leaning, long times) {
        all += leaning.length * times;
        return all > MOST;
    }

    private int[] of(Formula formula) {
        Set<int[]> read = Collections.newSetFromMap(new IdentityHashMap<>(8));
        formula.slots(slot -> {
            int[] leaning = behind.get(slot);
            if (leaning != null) {
                read.add(leaning);
            }
        });
        // A long chain of values that lean on the same few shares one list of them.
        return read.size() == 1
                ? read.iterator().next()
                : read.stream().flatMapToInt(Arrays::stream).distinct().toArray();
    }
}
