package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The order of the steps that changes the bench least. */
class StepOrderTest {

    private static final String BENCH = """
            setup covers starts fitted { fitted -> off "Lift the covers"   off -> fitted "Refit the covers" }
            setup plug starts fitted { fitted -> out "Unscrew the plug"   out -> fitted "Refit the plug" }
            """;

    private static CheckGraph graph(String declarations) {
        return Workshop.of(BENCH + declarations).compiled().graph();
    }

    private static String observe(String name, String setup) {
        return "observe " + name + " : yes/no " + (setup.isEmpty() ? "" : "setup " + setup) + " ask \"" + name + "?\"\n"
                + "check c_" + name + " \"" + name + "\" minor { require " + name + " }\n";
    }

    /** As a person would say it. */
    private static List<String> told(StepOrder order) {
        return order.steps().stream()
                .map(step -> step instanceof StepOrder.Change change
                        ? change.change().how()
                        : ((StepOrder.Observe) step).observation().name())
                .toList();
    }

    @Test
    void what_needs_the_bench_alike_is_done_together() {
        StepOrder order = graph(observe("rockers", "covers off")
                        + observe("marks", "covers fitted")
                        + observe("springs", "covers off")
                        + observe("box", ""))
                .stepOrder();

        assertThat(told(order)).containsExactly("marks", "box", "Lift the covers", "rockers", "springs");
        assertThat(order.changes()).isEqualTo(1);
        assertThat(order.method()).isEqualTo(StepOrder.Method.EXACT);
    }

    @Test
    void it_looks_further_than_the_next_step() {
        // The nearest first would go to the covers with the plug fitted, and come back for a second time.
        StepOrder order = graph(observe("a", "covers off, plug fitted")
                        + observe("b", "covers off, plug out")
                        + observe("c", "covers fitted, plug out")
                        + observe("d", "covers fitted, plug fitted"))
                .stepOrder();

        assertThat(order.changes()).isEqualTo(3).isEqualTo(order.atLeast());
        assertThat(told(order))
                .containsExactly("d", "Lift the covers", "a", "Unscrew the plug", "b", "Refit the covers", "c");
    }

    @Test
    void an_earlier_stage_comes_first_although_the_bench_is_changed_more_often() {
        StepOrder order = graph("stage \"One\" {\n" + observe("a", "covers off") + observe("b", "covers fitted")
                        + "}\nstage \"Two\" {\n" + observe("c", "covers off") + "}\n")
                .stepOrder();

        assertThat(told(order)).containsExactly("b", "Lift the covers", "a", "c");
        StepOrder back = graph("stage \"One\" {\n" + observe("a", "covers off") + "}\nstage \"Two\" {\n"
                        + observe("b", "covers fitted") + observe("c", "covers off") + "}\n")
                .stepOrder();
        assertThat(told(back)).containsExactly("Lift the covers", "a", "c", "Refit the covers", "b");
    }

    @Test
    void what_waits_for_a_gate_comes_behind_what_the_gate_looks_at() {
        StepOrder order = graph("""
                observe lash : yes/no setup covers off ask "Lash?"
                observe head : yes/no setup covers fitted, plug out ask "Cold?"
                check cold "Cold" major gate { require head }
                check inside "Lash" major { after cold require lash }
                """).stepOrder();

        assertThat(told(order)).containsExactly("Unscrew the plug", "head", "Lift the covers", "lash");
    }

    @Test
    void what_decides_whether_something_is_asked_comes_before_it() {
        StepOrder order = graph("""
                observe oiled : yes/no when gear is dry ask "Oiled now?"
                observe gear : one of wet, dry setup covers off ask "Gear?"
                check fine "Fine" major { require oiled }
                """).stepOrder();

        assertThat(told(order)).containsExactly("Lift the covers", "gear", "oiled");
    }

    @Test
    void what_is_entered_already_is_not_asked_again() {
        Workshop bench = Workshop.of(BENCH + observe("a", "covers off") + observe("b", "plug out") + observe("c", ""));

        assertThat(told(bench.observe("a", "true").judged().stepOrder())).containsExactly("c", "Unscrew the plug", "b");
    }

    @Test
    void the_first_look_of_the_bench_is_written_in_an_order_that_no_other_beats() {
        CheckGraph graph = Procedure.read(Path.of("..", "examples", "bench", "first_look.inspection"))
                .orElseThrow()
                .graph();
        StepOrder order = graph.stepOrder();

        assertThat(order.method()).isEqualTo(StepOrder.Method.EXACT);
        assertThat(order.changes())
                .isEqualTo(changes(graph, graph.observations()))
                .isEqualTo(10);
        assertThat(observed(order)).containsExactlyInAnyOrderElementsOf(graph.observations());
    }

    @Test
    void a_large_procedure_is_put_in_order_too_and_never_worse_than_it_is_written() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 600; i++) {
            text.append(observe("o" + i, i % 3 == 0 ? "covers off" : i % 3 == 1 ? "plug out" : "covers fitted"));
        }
        CheckGraph graph = graph(text.toString());

        StepOrder order = graph.stepOrder();

        assertThat(order.method()).isEqualTo(StepOrder.Method.NEAREST_FIRST);
        assertThat(order.changes()).isEqualTo(2).isLessThan(changes(graph, graph.observations()));
        assertThat(order.atLeast()).isEqualTo(2);
        assertThat(observed(order)).containsExactlyInAnyOrderElementsOf(graph.observations());
    }

    @Test
    void the_lead_comes_off_before_the_plug_comes_out_and_fuel_comes_last_of_all() {
        StepOrder order = graph("""
                setup lead starts on { on -> off "Take the lead off"  off -> on "Put the lead on"  while on hazard electric }
                setup tank starts empty { empty -> filled "Fill the tank"  while filled hazard fuel, fire }
                observe thread : yes/no setup tank filled, plug out, lead off ask "?"
                check c "It" minor { require thread }
                """).stepOrder();

        assertThat(told(order)).containsExactly("Take the lead off", "Unscrew the plug", "Fill the tank", "thread");
    }

    @Test
    void a_step_that_an_earlier_stage_waits_for_is_not_rushed_though_it_costs_nothing() {
        // Done at once, the gate would call for the box with the covers off, and the marks would want them back on.
        CheckGraph graph = graph("""
                stage "One" { observe inside : yes/no setup covers off ask "?" }
                stage "Two" {
                  observe gate : yes/no ask "?"
                  observe marks : yes/no setup plug out, covers fitted ask "?"
                  observe springs : yes/no setup covers off ask "?"
                }
                check looked "Looked" major gate { require gate }
                check c1 "It" minor { after looked require inside }
                check c2 "It" minor { require marks and springs }
                """);

        assertThat(told(graph.stepOrder()))
                .containsExactly("Unscrew the plug", "marks", "gate", "Lift the covers", "inside", "springs");
    }

    @Test
    void up_to_four_hundred_observations_are_compared_in_every_order_that_matters() {
        String four =
                IntStream.range(0, 400).mapToObj(i -> observe("o" + i, "")).collect(Collectors.joining());

        assertThat(graph(four).stepOrder().method()).isEqualTo(StepOrder.Method.EXACT);
        assertThat(graph(four + observe("more", "")).stepOrder().method()).isEqualTo(StepOrder.Method.NEAREST_FIRST);
    }

    private static List<Node.Observation> observed(StepOrder order) {
        List<Node.Observation> observed = new ArrayList<>();
        for (StepOrder.Step step : order.steps()) {
            if (step instanceof StepOrder.Observe observe) {
                observed.add(observe.observation());
            }
        }
        return observed;
    }

    private static int changes(CheckGraph graph, List<Node.Observation> order) {
        Map<String, String> bench = new HashMap<>();
        graph.states().forEach(state -> bench.put(state.name(), state.starts()));
        int changes = 0;
        for (Node.Observation observation : order) {
            for (BenchState.Need need : observation.needs()) {
                String from = String.valueOf(bench.put(need.name(), need.state()));
                changes += graph.state(need.name())
                        .way(from, need.state())
                        .orElseThrow()
                        .size();
            }
        }
        return changes;
    }

    @Provide
    Arbitrary<List<Integer>> benches() {
        return Arbitraries.integers().between(0, 53).list().ofMinSize(1).ofMaxSize(6);
    }

    /** An observation for each number: how it wants the covers and the plug, and whether it waits for the one before. */
    private static CheckGraph graph(List<Integer> numbers) {
        String[] covers = {"", "covers off", "covers fitted"};
        String[] plug = {"", "plug out", "plug fitted"};
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < numbers.size(); i++) {
            int number = numbers.get(i);
            String setup =
                    covers[number % 3] + (number % 3 > 0 && number / 3 % 3 > 0 ? ", " : "") + plug[number / 3 % 3];
            int waits = number / 9 % 3;
            text.append("observe o" + i + " : yes/no " + (setup.isEmpty() ? "" : "setup " + setup) + " ask \"?\"\n")
                    .append("check c" + i + " \"It\" major gate { "
                            + (waits > 0 && i >= waits ? "after c" + (i - waits) + " " : "") + "require o" + i
                            + " }\n");
        }
        return graph(text.toString());
    }

    @Property(seed = "1", tries = 60, edgeCases = EdgeCasesMode.NONE)
    void no_other_order_that_may_be_gone_has_fewer_changes(@ForAll("benches") List<Integer> numbers) {
        CheckGraph graph = graph(numbers);
        StepOrder order = graph.stepOrder();

        assertThat(isAllowed(graph, observed(order))).isTrue();
        assertThat(order.changes()).isEqualTo(changes(graph, observed(order)));
        assertThat(order.changes()).isEqualTo(fewest(graph, new ArrayList<>()));
    }

    /** Of all orders there are. */
    private static int fewest(CheckGraph graph, List<Node.Observation> begun) {
        if (begun.size() == graph.observations().size()) {
            return changes(graph, begun);
        }
        int fewest = Integer.MAX_VALUE;
        for (Node.Observation next : graph.observations()) {
            List<Node.Observation> longer = new ArrayList<>(begun);
            longer.add(next);
            if (!begun.contains(next) && isAllowed(graph, longer)) {
                fewest = Math.min(fewest, fewest(graph, longer));
            }
        }
        return fewest;
    }

    /** Each check here rests on one observation, so what it looks at comes after what all gates before it look at. */
    private static boolean isAllowed(CheckGraph graph, List<Node.Observation> order) {
        Set<String> seen = new HashSet<>();
        for (Node.Observation observation : order) {
            for (Node.Check check : graph.affectedBy(observation).checks()) {
                for (Node.Check gate : graph.needsOf(check).gates()) {
                    if (!seen.contains(graph.observationsOf(gate).get(0).name())) {
                        return false;
                    }
                }
            }
            seen.add(observation.name());
        }
        return true;
    }
}
