package io.github.leafproof.dsl.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Searches for the order of steps with the fewest changes of the bench: the cheapest way first (A*, which is Dijkstra's way
 * with an eye on what is still ahead) through what is done and how the bench stands.
 *
 * <p>What needs no change is done at once, which never costs more: it moves nothing, whatever waits for it waits no longer,
 * and it has to come before all later stages anyway. So only the changes branch. The one exception is a step that something
 * of an earlier stage waits for: once it is done that has to come next, which may cost more than to go on with this stage, so
 * that both are tried.
 *
 * <p>What is still ahead takes, of each state of the bench, at least one change for every way it still has to stand and does
 * not stand now.
 */
final class StepSearch {

    /** More observations than this are put in order by the nearest first. */
    private static final int MOST_OBSERVATIONS = 400;

    /** So many states of the work are looked at before the search gives up. */
    private static final int MOST_STATES = 4_000;

    private final StepPlan plan;

    private StepSearch(StepPlan plan) {
        this.plan = plan;
    }

    /**
     * An order, and how it was found.
     *
     * @param atLeast so many changes are in any order
     */
    record Found(List<Node.Observation> order, int atLeast, StepOrder.Method method) {}

    static Found search(CheckGraph graph, List<Node.Observation> observations, Map<String, String> stands) {
        StepPlan plan = StepPlan.of(graph, observations, stands);
        StepSearch search = new StepSearch(plan);
        Optional<List<Integer>> best =
                observations.size() > MOST_OBSERVATIONS ? Optional.empty() : search.cheapestFirst();
        List<Integer> order = best.orElseGet(search::nearestOrAsWritten);
        return new Found(
                order.stream().map(observations::get).toList(),
                plan.changesAtLeast(new BitSet(), plan.start()),
                best.isPresent() ? StepOrder.Method.EXACT : StepOrder.Method.NEAREST_FIRST);
    }

    /** Where the work stands: what is done, in which order, and how the bench is. */
    private record Reached(
            int cost,
            int atLeast,
            int born,
            BitSet done,
            Bench bench,
            List<Integer> steps,
            @Nullable Reached before) {}

    private record Key(BitSet done, Bench bench) {}

    private Optional<List<Integer>> cheapestFirst() {
        PriorityQueue<Reached> open =
                new PriorityQueue<>(Comparator.comparingInt(Reached::atLeast).thenComparingInt(Reached::born));
        Set<Key> seen = new HashSet<>();
        int born = 0;
        open.add(new Reached(0, 0, born, new BitSet(), plan.start(), List.of(), null));
        while (!open.isEmpty() && born < MOST_STATES) {
            Reached reached = open.remove();
            StepProgress progress = StepProgress.after(plan, reached.done());
            List<Integer> free = new ArrayList<>(reached.steps());
            doWhatIsFree(progress, reached.bench(), free);
            if (!seen.add(new Key(progress.done(), reached.bench()))) {
                continue;
            }
            Reached settled = new Reached(
                    reached.cost(),
                    reached.atLeast(),
                    reached.born(),
                    progress.done(),
                    reached.bench(),
                    free,
                    reached.before());
            List<Integer> next = progress.firstOfEachKind();
            if (next.isEmpty()) {
                return Optional.of(path(settled));
            }
            for (int step : next) {
                born++;
                BitSet done = (BitSet) settled.done().clone();
                done.set(step);
                Bench bench = settled.bench().broughtTo(plan.needs(step));
                int cost = settled.cost() + settled.bench().changesTo(plan.needs(step));
                int atLeast = cost + plan.changesAtLeast(done, bench);
                open.add(new Reached(cost, atLeast, born, done, bench, List.of(step), settled));
            }
        }
        return Optional.empty();
    }

    private void doWhatIsFree(StepProgress progress, Bench bench, List<Integer> order) {
        boolean any = true;
        while (any) {
            any = false;
            for (int step : progress.firstOfEachKind()) {
                if (bench.changesTo(plan.needs(step)) == 0
                        && !plan.reachesBack().get(step)) {
                    progress.finish(step);
                    order.add(step);
                    any = true;
                    // What was waiting for it may belong to an earlier stage than the rest.
                    break;
                }
            }
        }
    }

    private static List<Integer> path(Reached last) {
        List<List<Integer>> hops = new ArrayList<>();
        for (Reached at = last; at != null; at = at.before()) {
            hops.add(at.steps());
        }
        Collections.reverse(hops);
        return hops.stream().flatMap(List::stream).toList();
    }

    private List<Integer> nearestOrAsWritten() {
        Walk nearest = walk(true);
        if (nearest.cost() == 0) {
            return nearest.order();
        }
        Walk asWritten = walk(false);
        return nearest.cost() < asWritten.cost() ? nearest.order() : asWritten.order();
    }

    private record Walk(List<Integer> order, int cost) {}

    /** One step after the other: the nearest next, or the one that the procedure writes first. */
    private Walk walk(boolean nearestFirst) {
        StepProgress progress = StepProgress.after(plan, new BitSet());
        Bench bench = plan.start();
        List<Integer> order = new ArrayList<>();
        int cost = 0;
        for (List<Integer> next = progress.firstOfEachKind(); !next.isEmpty(); next = progress.firstOfEachKind()) {
            Bench here = bench;
            Comparator<Integer> asWritten = Comparator.naturalOrder();
            int step = Collections.min(
                    next,
                    nearestFirst
                            ? Comparator.<Integer>comparingInt(each -> here.changesTo(plan.needs(each)))
                                    .thenComparing(asWritten)
                            : asWritten);
            cost += bench.changesTo(plan.needs(step));
            bench = bench.broughtTo(plan.needs(step));
            progress.finish(step);
            order.add(step);
        }
        return new Walk(order, cost);
    }

    /** How every state of the bench stands, by its number. */
    static final class Bench {

        private final List<BenchState> states;
        private final List<String> stands;

        Bench(List<BenchState> states, List<String> stands) {
            this.states = states;
            this.stands = stands;
        }

        int changesTo(List<StepPlan.Wanted> wanted) {
            int changes = 0;
            for (StepPlan.Wanted want : wanted) {
                String from = stands.get(want.state());
                if (!from.equals(want.as())) {
                    changes += states.get(want.state())
                            .way(from, want.as())
                            .map(List::size)
                            .orElse(0);
                }
            }
            return changes;
        }

        /** How a state stands, by its number. */
        String stands(int state) {
            return stands.get(state);
        }

        Bench broughtTo(List<StepPlan.Wanted> wanted) {
            List<String> brought = new ArrayList<>(stands);
            wanted.forEach(want -> brought.set(want.state(), want.as()));
            return new Bench(states, List.copyOf(brought));
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Bench bench && bench.stands.equals(stands);
        }

        @Override
        public int hashCode() {
            return Objects.hashCode(stands);
        }
    }
}
