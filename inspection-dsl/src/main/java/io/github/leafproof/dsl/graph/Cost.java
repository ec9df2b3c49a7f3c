package io.github.leafproof.dsl.graph;

import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.LimitsHeld;
import java.util.IdentityHashMap;
import java.util.List;

/**
 * What it takes to judge one engine, known before any engine is on the bench. A step is one value read, computed or
 * compared; limits are read twice, once to see whether they are known and once to compare with them. There are no loops
 * and no recursion, so that the most steps are a sum over the procedure:
 *
 * <ul>
 *   <li>of each derived value, of each {@code when} and of each requirement, once;
 *   <li>of an {@code if} or a {@code choose} only the longer, or longest, of its arms.
 * </ul>
 *
 * An engine that was adjusted is judged as found and as left, and one felt with leaves that nobody measured once more as
 * if they had been: each time within the same bound.
 *
 * @param steps the most steps of one judging; at most {@link Long#MAX_VALUE}
 */
public record Cost(int checks, int observations, long steps) {

    /** The cost of a graph. */
    public static Cost of(CheckGraph graph) {
        Counting counting = new Counting();
        long steps = 0;
        for (Node node : graph.settlingOrder()) {
            steps = plus(steps, counting.steps(SettlingOrder.read(node)));
        }
        for (Node.Check check : graph.checks()) {
            steps = plus(steps, counting.steps(check.requirement()));
            if (check.when() != null) {
                steps = plus(steps, counting.steps(check.when()));
            }
        }
        return new Cost(graph.checks().size(), graph.observations().size(), steps);
    }

    private static long plus(long one, long other) {
        return one > Long.MAX_VALUE - other ? Long.MAX_VALUE : one + other;
    }

    /** In words: {@code 23 checks, 14 observations; judging takes at most 412 steps}. */
    public String words() {
        return counted(checks, "check") + ", " + counted(observations, "observation") + "; judging takes at most "
                + counted(steps, "step");
    }

    private static String counted(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /** Counts the bodies of functions once, however often they are applied. */
    private static final class Counting {

        private final IdentityHashMap<Formula, Long> bodies = new IdentityHashMap<>();

        long steps(Formula formula) {
            if (formula instanceof IfElse either) {
                return all(List.of(either.condition()), Math.max(steps(either.then()), steps(either.otherwise())));
            }
            if (formula instanceof Chosen chosen) {
                long longest =
                        chosen.arms().stream().mapToLong(this::steps).max().orElse(0);
                return all(List.of(chosen.subject()), longest);
            }
            if (formula instanceof Applied applied) {
                Long known = bodies.get(applied.body());
                long body = known != null ? known : steps(applied.body());
                bodies.put(applied.body(), body);
                return all(applied.arguments(), body);
            }
            if (formula instanceof LimitsHeld held) {
                List<Formula> limits = held.parts().subList(1, held.parts().size());
                return all(held.parts(), all(limits, 0) - 1);
            }
            return all(formula.parts(), 0);
        }

        private long all(List<Formula> parts, long more) {
            long sum = plus(1, more);
            for (Formula part : parts) {
                sum = plus(sum, steps(part));
            }
            return sum;
        }
    }
}
