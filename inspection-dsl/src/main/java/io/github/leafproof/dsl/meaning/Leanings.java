package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
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
    /** The observations behind each slot; none behind a fact of the engine. */
    private final int[][] behind;

    private long all;

    private Leanings(Names names, List<Node.Observation> observations) {
        this.sizes = names.sizes();
        this.behind = new int[names.slots()][];
        Arrays.fill(behind, new int[0]);
        observations.forEach(observation -> behind[observation.slot()] = new int[] {observation.slot()});
    }

    /**
     * Says where it becomes too much.
     *
     * @param names what every value stands for
     */
    static void look(
            Problems problems,
            Outline outline,
            Names names,
            List<Node.Observation> observations,
            List<Node.Check> checks) {
        Leanings leanings = new Leanings(names, observations);
        for (Node.Derived value : names.derived()) {
            int[] leaning = leanings.of(value.formula());
            if (leanings.isTooMuch(leaning, leanings.steps(value.formula()))) {
                report(problems, outline.lets.get(value.name()));
                return;
            }
            leanings.behind[value.slot()] = leaning;
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
            if (behind[slot].length > 0) {
                read.add(behind[slot]);
            }
        });
        // A long chain of values that lean on the same few shares one list of them.
        return read.size() == 1
                ? read.iterator().next()
                : read.stream().flatMapToInt(Arrays::stream).distinct().toArray();
    }
}
