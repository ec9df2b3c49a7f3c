package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * The order of steps held against all orders there are, on small procedures of every make: stages, gates of several
 * observations and before each other, what decides whether something is asked for, and a bench that is not as it starts. What
 * may come when is worked out here once more, from the words of docs/order.md alone.
 */
class FewestChangesTest {

    private static final int MOST = 6;

    @Provide
    Arbitrary<Integer> procedures() {
        return Arbitraries.integers().between(0, Integer.MAX_VALUE);
    }

    /** A procedure by chance. Gates may stand in a later stage than what waits for them. */
    private static CheckGraph graph(Random random) {
        int size = 2 + random.nextInt(MOST - 1);
        StringBuilder text = new StringBuilder("""
                setup covers starts fitted {
                  fitted -> off "Lift the covers" hazard eyes
                  off -> fitted "Refit the covers"
                }
                setup plug starts fitted { fitted -> out "Unscrew the plug"   out -> fitted "Refit the plug" }
                """);
        int stage = 0;
        text.append("stage \"S0\" {\n");
        for (int i = 0; i < size; i++) {
            if (random.nextInt(3) == 0 && i > 0) {
                stage++;
                text.append("}\nstage \"S").append(stage).append("\" {\n");
            }
            text.append("observe o").append(i).append(" : yes/no");
            if (random.nextInt(4) == 0 && i > 0) {
                text.append(" when o").append(random.nextInt(i));
            }
            text.append(setup(random)).append(" ask \"?\"\n");
        }
        text.append("}\n");
        int checks = 1 + random.nextInt(size);
        for (int c = 0; c < checks; c++) {
            text.append("check c").append(c).append(" \"It\" major gate { ");
            if (c > 0 && random.nextBoolean()) {
                text.append("after c").append(random.nextInt(c)).append(" ");
            }
            text.append("require o").append(random.nextInt(size));
            if (random.nextInt(3) == 0) {
                text.append(" and o").append(random.nextInt(size));
            }
            text.append(" }\n");
        }
        return Workshop.of(text.toString()).compiled().graph();
    }

    private static String setup(Random random) {
        String covers = List.of("", "covers off", "covers fitted").get(random.nextInt(3));
        String plug = List.of("", "plug out", "plug fitted").get(random.nextInt(3));
        String both = covers.isEmpty() || plug.isEmpty() ? covers + plug : covers + ", " + plug;
        return both.isEmpty() ? "" : " setup " + both;
    }

    /** What may come next, and what it costs, by nothing but the words of the page. */
    private record Rules(CheckGraph graph, List<Node.Observation> asked) {

        boolean isLooked(Node.Check gate, BitSet done) {
            return graph.needsOf(gate).observations().stream().allMatch(each -> isDone(each, done))
                    && gate.after().stream()
                            .allMatch(before -> isLooked(graph.checks().get(before), done));
        }

        boolean isDone(Node.Observation observation, BitSet done) {
            int at = asked.indexOf(observation);
            return at < 0 || done.get(at);
        }

        boolean mayCome(Node.Observation observation, BitSet done) {
            List<Node.Check> resting = graph.checks().stream()
                    .filter(check -> graph.needsOf(check).observations().contains(observation))
                    .toList();
            boolean isWorthIt = resting.isEmpty()
                    || resting.stream()
                            .anyMatch(check -> check.after().stream()
                                    .allMatch(gate -> isLooked(graph.checks().get(gate), done)));
            return isWorthIt && graph.decidingOn(observation).stream().allMatch(each -> isDone(each, done));
        }

        /** In the earliest stage that has any. */
        List<Integer> next(BitSet done) {
            List<Integer> next = new ArrayList<>();
            String stage = "";
            for (int i = 0; i < asked.size(); i++) {
                Node.Observation observation = asked.get(i);
                if (!done.get(i)
                        && mayCome(observation, done)
                        && (next.isEmpty() || observation.stage().equals(stage))) {
                    stage = observation.stage();
                    next.add(i);
                }
            }
            return next;
        }

        int fewest(BitSet done, Map<String, String> bench, Map<String, Integer> known) {
            if (done.cardinality() == asked.size()) {
                return 0;
            }
            String key = done + " " + bench.get("covers") + " " + bench.get("plug");
            Integer found = known.get(key);
            if (found != null) {
                return found;
            }
            int fewest = Integer.MAX_VALUE;
            for (int step : next(done)) {
                BitSet then = (BitSet) done.clone();
                then.set(step);
                Map<String, String> brought = new HashMap<>(bench);
                int changes = bring(brought, asked.get(step));
                fewest = Math.min(fewest, changes + fewest(then, brought, known));
            }
            known.put(key, fewest);
            return fewest;
        }

        int bring(Map<String, String> bench, Node.Observation observation) {
            int changes = 0;
            for (BenchState.Need need : observation.needs()) {
                changes += need.state().equals(bench.put(need.name(), need.state())) ? 0 : 1;
            }
            return changes;
        }
    }

    @Property(seed = "1", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void no_order_that_may_be_gone_has_fewer_changes_than_the_one_that_is_called_exact(
            @ForAll("procedures") int chance) {
        Random random = new Random(chance);
        CheckGraph graph = graph(random);
        List<Node.Observation> asked = graph.observations().stream()
                .filter(each -> random.nextInt(5) > 0)
                .toList();
        Map<String, String> bench = new HashMap<>(Map.of(
                "covers", random.nextBoolean() ? "fitted" : "off", "plug", random.nextBoolean() ? "fitted" : "out"));
        Rules rules = new Rules(graph, asked);

        StepOrder order = graph.stepOrder(asked, bench);

        assertThat(order.method()).isEqualTo(StepOrder.Method.EXACT);
        BitSet done = new BitSet();
        Map<String, String> stands = new HashMap<>(bench);
        int changes = 0;
        for (Node.Observation observation : order.observations()) {
            int step = asked.indexOf(observation);
            assertThat(rules.next(done)).as("what may come next").contains(step);
            changes += rules.bring(stands, observation);
            done.set(step);
        }
        assertThat(done.cardinality()).isEqualTo(asked.size());
        assertThat(order.changes()).isEqualTo(changes).isEqualTo(rules.fewest(new BitSet(), bench, new HashMap<>()));
    }
}
