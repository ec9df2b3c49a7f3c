package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Workshop;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a compiled procedure answers to those who ask it. */
class CheckGraphTest {

    private static final CheckGraph GRAPH = Workshop.of("""
            applies when engine.displacement at most 35 cm3
            gauge infrared : reading of temperature
            observe unused : yes/no ask "Unused?"
            observe head : temperature with infrared ask "Head"
            observe room : temperature with infrared ask "Room"
            observe shown : yes/no ask "Shown?"
            let over = head - room
            let twice = over * 2
            check last "Last" minor { after first, cold  require shown }
            check first "First" minor gate { after cold  when shown  require twice at most 6 K }
            check cold "Cold" minor gate { require over at most 3 K and unused or unused }
            """).compiled().graph();

    private static Node.Check check(String name) {
        return (Node.Check) GRAPH.node(name).orElseThrow();
    }

    @Test
    void gates_are_judged_before_what_waits_for_them_wherever_they_are_written() {
        assertThat(GRAPH.checkOrder()).containsExactly(2, 1, 0);
        assertThat(GRAPH.checks()).extracting(Node.Check::name).containsExactly("last", "first", "cold");
    }

    @Test
    void a_check_rests_on_what_its_values_are_made_of_and_on_what_decides_whether_it_applies() {
        assertThat(GRAPH.observationsOf(check("first")))
                .extracting(Node.Observation::name)
                .containsExactly("head", "room", "shown");
        assertThat(GRAPH.observationsOf(check("last")))
                .extracting(Node.Observation::name)
                .containsExactly("shown");
    }

    @Test
    void every_node_is_found_by_its_name() {
        assertThat(GRAPH.node("head").orElseThrow()).isInstanceOf(Node.Observation.class);
        assertThat(GRAPH.node("over").orElseThrow()).isInstanceOf(Node.Derived.class);
        assertThat(GRAPH.node("engine.displacement").orElseThrow()).isInstanceOf(Node.Fact.class);
        assertThat(GRAPH.node("nothing")).isEmpty();
        assertThat(GRAPH.slots()).isEqualTo(GRAPH.facts().size() + 4 + 2);
    }

    @Test
    void a_graph_made_by_hand_has_no_name_twice_and_no_circle_of_gates() {
        Node.Check waits = waitingFor(check("cold"), 0);
        assertThatThrownBy(() -> CheckGraph.of(GRAPH.identity(), withChecks(List.of(waits))))
                .hasMessage("gates wait for each other in a circle");
        Node.Check one = waitingFor(check("cold"));
        assertThatThrownBy(() -> CheckGraph.of(GRAPH.identity(), withChecks(List.of(one, one))))
                .hasMessage("two nodes are named cold");
    }

    private static Node.Check waitingFor(Node.Check check, Integer... gates) {
        return new Node.Check(
                0,
                check.name(),
                check.title(),
                check.stage(),
                check.severity(),
                check.gate(),
                List.of(gates),
                check.when(),
                check.requirement(),
                check.rule(),
                check.advice(),
                check.because());
    }

    private static CheckGraph.Parts withChecks(List<Node.Check> checks) {
        return new CheckGraph.Parts(
                GRAPH.states(),
                GRAPH.gauges(),
                GRAPH.facts(),
                GRAPH.observations(),
                GRAPH.derived(),
                new ArrayList<>(checks),
                GRAPH.applies().orElse(null),
                GRAPH.rule(),
                GRAPH.release());
    }
}
