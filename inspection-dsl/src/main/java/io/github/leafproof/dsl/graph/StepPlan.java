package io.github.leafproof.dsl.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Observations to be made, numbered, and what each has to wait for.
 *
 * @param states the states of the bench
 * @param stands for each state of the bench how it stands before the first step
 * @param needs for each observation how it wants the bench
 * @param stages for each observation the number of its stage
 * @param checksOf for each observation the checks that rest on it
 * @param observationsOf for each check the observations that it rests on
 * @param decidedBy for each observation how many others decide whether it is asked for
 * @param decides for each observation those for which it decides that
 * @param gates for each check how many gates it waits for
 * @param waiting for each check those that wait for it
 * @param reachesBack the observations that something of an earlier stage may wait for
 */
record StepPlan(
        List<BenchState> states,
        List<String> stands,
        List<List<Wanted>> needs,
        List<Integer> stages,
        List<List<Integer>> checksOf,
        List<List<Integer>> observationsOf,
        List<Integer> decidedBy,
        List<List<Integer>> decides,
        List<Integer> gates,
        List<List<Integer>> waiting,
        BitSet reachesBack) {

    /** A state of the bench, by its number, and how it has to stand. */
    record Wanted(int state, String as) {}

    /** The number of an observation that is not among them. */
    private static final int NONE = -1;

    int size() {
        return needs.size();
    }

    List<Wanted> needs(int step) {
        return needs.get(step);
    }

    /** The bench before the first step. */
    StepSearch.Bench start() {
        return new StepSearch.Bench(states, stands);
    }

    /**
     * So many changes at least are still to come: a state of the bench has to be brought once into each way that it still
     * has to stand and does not stand now.
     */
    int changesAtLeast(BitSet done, StepSearch.Bench bench) {
        Set<Wanted> ahead = new HashSet<>();
        for (int step = done.nextClearBit(0); step < size(); step = done.nextClearBit(step + 1)) {
            needs.get(step).stream()
                    .filter(wanted -> !bench.stands(wanted.state()).equals(wanted.as()))
                    .forEach(ahead::add);
        }
        return ahead.size();
    }

    static StepPlan of(CheckGraph graph, List<Node.Observation> observations, Map<String, String> stands) {
        int size = observations.size();
        Ties ties = graph.ties();
        int[] numbers = new int[graph.slots()];
        Arrays.fill(numbers, NONE);
        for (int number = 0; number < size; number++) {
            numbers[observations.get(number).slot()] = number;
        }
        Map<String, Integer> states = new HashMap<>();
        graph.states().forEach(state -> states.put(state.name(), states.size()));

        List<List<Integer>> checksOf = lists(size);
        List<List<Integer>> observationsOf = new ArrayList<>();
        List<Integer> gates = new ArrayList<>();
        List<List<Integer>> waiting = lists(graph.checks().size());
        for (Node.Check check : graph.checks()) {
            List<Integer> rests = numbered(ties.observations(check), numbers);
            rests.forEach(number -> checksOf.get(number).add(check.number()));
            observationsOf.add(rests);
            Set<Integer> after = new HashSet<>(check.after());
            gates.add(after.size());
            after.forEach(gate -> waiting.get(gate).add(check.number()));
        }
        List<Integer> decidedBy = new ArrayList<>(Collections.nCopies(size, 0));
        List<List<Integer>> decides = lists(size);
        for (int number = 0; number < size; number++) {
            List<Integer> deciding = numbered(ties.deciding(observations.get(number)), numbers);
            decidedBy.set(number, deciding.size());
            for (int each : deciding) {
                decides.get(each).add(number);
            }
        }
        List<Integer> stages = stages(observations);
        return new StepPlan(
                graph.states(),
                graph.states().stream()
                        .map(state -> stands.getOrDefault(state.name(), state.starts()))
                        .toList(),
                observations.stream()
                        .map(observation -> wanted(observation, states))
                        .toList(),
                stages,
                checksOf,
                observationsOf,
                decidedBy,
                decides,
                gates,
                waiting,
                reachesBack(stages, checksOf, observationsOf, decides, waiting));
    }

    /** Once one of these is done, something of an earlier stage may come first that could not come before. */
    private static BitSet reachesBack(
            List<Integer> stages,
            List<List<Integer>> checksOf,
            List<List<Integer>> observationsOf,
            List<List<Integer>> decides,
            List<List<Integer>> waiting) {
        int[] earliestBehind = earliestBehind(stages, observationsOf, waiting);
        BitSet reachesBack = new BitSet();
        for (int step = 0; step < stages.size(); step++) {
            int stage = stages.get(step);
            boolean decidesEarlier = decides.get(step).stream().anyMatch(other -> stages.get(other) < stage);
            boolean opensEarlier = checksOf.get(step).stream().anyMatch(check -> earliestBehind[check] < stage);
            reachesBack.set(step, decidesEarlier || opensEarlier);
        }
        return reachesBack;
    }

    /** For each check the earliest stage of what waits for it, near or far. */
    private static int[] earliestBehind(
            List<Integer> stages, List<List<Integer>> observationsOf, List<List<Integer>> waiting) {
        int[] behind = new int[waiting.size()];
        Arrays.fill(behind, Integer.MAX_VALUE);
        int[] waitingFor = new int[waiting.size()];
        waiting.forEach(checks -> checks.forEach(check -> waitingFor[check]++));
        List<Integer> gatesFirst = new ArrayList<>();
        for (int check = 0; check < waitingFor.length; check++) {
            if (waitingFor[check] == 0) {
                gatesFirst.add(check);
            }
        }
        for (int i = 0; i < gatesFirst.size(); i++) {
            for (int check : waiting.get(gatesFirst.get(i))) {
                if (--waitingFor[check] == 0) {
                    gatesFirst.add(check);
                }
            }
        }
        Collections.reverse(gatesFirst);
        for (int gate : gatesFirst) {
            for (int check : waiting.get(gate)) {
                behind[gate] = Math.min(behind[gate], behind[check]);
                for (int step : observationsOf.get(check)) {
                    behind[gate] = Math.min(behind[gate], stages.get(step));
                }
            }
        }
        return behind;
    }

    private static List<Wanted> wanted(Node.Observation observation, Map<String, Integer> states) {
        return observation.needs().stream()
                .filter(need -> states.containsKey(need.name()))
                .map(need -> new Wanted(states.getOrDefault(need.name(), 0), need.state()))
                .toList();
    }

    private static List<Integer> numbered(List<Node.Observation> observations, int[] numbers) {
        List<Integer> found = new ArrayList<>(observations.size());
        for (Node.Observation observation : observations) {
            int number = numbers[observation.slot()];
            if (number != NONE) {
                found.add(number);
            }
        }
        return found;
    }

    /** What stands between two stages is a stage of its own. */
    private static List<Integer> stages(List<Node.Observation> observations) {
        List<Integer> stages = new ArrayList<>();
        int stage = 0;
        for (int i = 0; i < observations.size(); i++) {
            boolean goesOn = i == 0
                    || observations
                            .get(i)
                            .stage()
                            .equals(observations.get(i - 1).stage());
            stage += goesOn ? 0 : 1;
            stages.add(stage);
        }
        return stages;
    }

    private static List<List<Integer>> lists(int size) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }
}
