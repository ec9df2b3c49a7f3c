package io.github.leafproof.dsl.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;

/** How far the work has come, and what could be done next. Each step is looked at once, so that a large plan is quick. */
final class StepProgress {

    /** Of more kinds of steps than this none looks further. */
    private static final int MOST_KINDS = 1_000;

    private final StepPlan plan;
    private final BitSet done = new BitSet();
    private final BitSet offered = new BitSet();
    private final int[] gates;
    private final int[] unseen;
    private final int[] undecided;
    private final BitSet worthwhile = new BitSet();
    /** By stage, and in it by kind. */
    private final TreeMap<Integer, Map<Kind, PriorityQueue<Integer>>> open = new TreeMap<>();

    /**
     * Steps of one kind cost the same, and it makes no difference which of them comes first. After one that reaches back to
     * an earlier stage other steps may come, so that it is of a kind of its own.
     *
     * @param alone the number of a step that reaches back; less than 0 for all others
     */
    private record Kind(List<StepPlan.Wanted> needs, int alone) {}

    private StepProgress(StepPlan plan) {
        this.plan = plan;
        this.gates = plan.gates().stream().mapToInt(Integer::intValue).toArray();
        this.unseen = plan.observationsOf().stream().mapToInt(List::size).toArray();
        this.undecided = plan.decidedBy().stream().mapToInt(Integer::intValue).toArray();
        for (int check = 0; check < gates.length; check++) {
            if (plan.gates().get(check) == 0) {
                reach(check);
            }
        }
        for (int step = 0; step < plan.size(); step++) {
            if (plan.checksOf().get(step).isEmpty()) {
                worthwhile.set(step);
                offer(step);
            }
        }
    }

    /** The progress once these are done. */
    static StepProgress after(StepPlan plan, BitSet steps) {
        StepProgress progress = new StepProgress(plan);
        steps.stream().forEach(progress::finish);
        return progress;
    }

    BitSet done() {
        return (BitSet) done.clone();
    }

    /** Of the steps that need not wait, in the earliest stage that has any, the first of each kind. */
    List<Integer> firstOfEachKind() {
        while (!open.isEmpty()) {
            Map<Kind, PriorityQueue<Integer>> kinds = open.firstEntry().getValue();
            List<Integer> first = new ArrayList<>();
            kinds.values().removeIf(steps -> !skipsDone(steps));
            kinds.values().stream().limit(MOST_KINDS).forEach(steps -> first.add(steps.element()));
            if (!first.isEmpty()) {
                return first;
            }
            open.pollFirstEntry();
        }
        int waiting = done.nextClearBit(0);
        if (waiting >= plan.size()) {
            return List.of();
        }
        // Only a graph made by hand can have steps that wait for each other; somebody has to begin.
        return List.of(waiting);
    }

    private boolean skipsDone(PriorityQueue<Integer> steps) {
        while (!steps.isEmpty() && done.get(steps.element())) {
            steps.remove();
        }
        return !steps.isEmpty();
    }

    void finish(int step) {
        done.set(step);
        for (int check : plan.checksOf().get(step)) {
            if (--unseen[check] == 0 && gates[check] == 0) {
                open(check);
            }
        }
        for (int other : plan.decides().get(step)) {
            undecided[other]--;
            offer(other);
        }
    }

    /** A check that no longer waits makes its observations worth while. */
    private void reach(int check) {
        for (int step : plan.observationsOf().get(check)) {
            worthwhile.set(step);
            offer(step);
        }
        if (unseen[check] == 0) {
            open(check);
        }
    }

    /** A gate that was looked at lets what waits for it go on; whether it does is known at the bench only. */
    private void open(int gate) {
        List<Integer> looked = new ArrayList<>(List.of(gate));
        for (int i = 0; i < looked.size(); i++) {
            for (int check : plan.waiting().get(looked.get(i))) {
                if (--gates[check] == 0) {
                    plan.observationsOf().get(check).forEach(step -> {
                        worthwhile.set(step);
                        offer(step);
                    });
                    if (unseen[check] == 0) {
                        looked.add(check);
                    }
                }
            }
        }
    }

    private void offer(int step) {
        if (worthwhile.get(step) && undecided[step] == 0 && !done.get(step) && !offered.get(step)) {
            offered.set(step);
            open.computeIfAbsent(plan.stages().get(step), stage -> new LinkedHashMap<>())
                    .computeIfAbsent(
                            new Kind(plan.needs(step), plan.reachesBack().get(step) ? step : -1),
                            kind -> new PriorityQueue<>())
                    .add(step);
        }
    }
}
