package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a graph answers about a check and about an observation, and a judgement about what is left to do. */
class GraphQuestionsTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            gauge infrared : reading of temperature
            setup covers starts fitted { fitted -> off "Lift the covers" }
            setup piston starts free { free -> at_top "Turn it to the top" }
            stage "Cold" {
              observe head : temperature with infrared ask "Head"
              observe room : temperature with infrared ask "Room"
              let warmer = head - room
              check cold "It is cold" major gate { require warmer within 3 K of 0 K }
            }
            stage "Lash" {
              observe gear : one of oiled, dry setup covers off ask "Gear"
              observe oiled_now : yes/no when gear is dry setup covers off ask "Oiled?"
              check gear_oiled "Gear is oiled" major gate { require oiled_now }
              observe lash : gap with leaves setup covers off, piston at_top ask "Lash"
              let aim = (engine.lash_min + engine.lash_max) / 2
              check inside "Lash" critical gate {
                after cold, gear_oiled
                require lash between engine.lash_min and engine.lash_max
                if open advise "The head was {head}: measure on"
                if high advise adjuster_turn(lash, aim, engine.adjuster_pitch, engine.rocker_ratio)
              }
              observe drawn : yes/no ask "Drawn?"
              check draws "It draws" critical { after inside require drawn }
            }
            """);
    private static final CheckGraph GRAPH = BENCH.compiled().graph();

    private static Node.Check check(String name) {
        return (Node.Check) GRAPH.node(name).orElseThrow();
    }

    private static Node.Observation observation(String name) {
        return (Node.Observation) GRAPH.node(name).orElseThrow();
    }

    private static List<String> names(List<? extends Node> nodes) {
        return nodes.stream().map(Node::name).toList();
    }

    @Test
    void a_check_needs_facts_observations_gauges_states_of_the_bench_and_every_gate_before_it() {
        Needs needs = GRAPH.needsOf(check("inside"));

        assertThat(names(needs.facts())).containsExactly("engine.lash_min", "engine.lash_max");
        assertThat(names(needs.observations())).containsExactly("lash");
        assertThat(needs.values()).isEmpty();
        assertThat(needs.gauges()).extracting(GaugeNeed::name).containsExactly("leaves");
        assertThat(needs.states())
                .containsExactly(new BenchState.Need("covers", "off"), new BenchState.Need("piston", "at_top"));
        assertThat(names(needs.gates())).containsExactly("cold", "gear_oiled");
        assertThat(names(GRAPH.needsOf(check("draws")).gates())).containsExactly("cold", "gear_oiled", "inside");
    }

    @Test
    void what_is_computed_on_the_way_is_needed_and_so_is_what_decides_whether_something_is_asked() {
        assertThat(names(GRAPH.needsOf(check("cold")).values())).containsExactly("warmer");
        assertThat(names(GRAPH.needsOf(check("cold")).observations())).containsExactly("head", "room");
        assertThat(names(GRAPH.needsOf(check("gear_oiled")).observations())).containsExactly("gear", "oiled_now");
    }

    @Test
    void an_observation_bears_on_values_checks_what_waits_for_these_and_what_is_said() {
        Affected head = GRAPH.affectedBy(observation("head"));

        assertThat(names(head.values())).containsExactly("warmer");
        assertThat(names(head.checks())).containsExactly("cold");
        assertThat(names(head.waiting())).containsExactly("inside", "draws");
        assertThat(head.advice())
                .extracting(said -> said.check().name() + " " + said.advice().occasion())
                .containsExactly("inside OPEN");
        Affected gear = GRAPH.affectedBy(observation("gear"));
        assertThat(names(gear.observations())).containsExactly("oiled_now");
        assertThat(names(gear.checks())).containsExactly("gear_oiled");
        Affected drawn = GRAPH.affectedBy(observation("drawn"));
        assertThat(names(drawn.checks())).containsExactly("draws");
        assertThat(drawn.waiting()).isEmpty();
        assertThat(drawn.advice()).isEmpty();
    }

    @Test
    void a_formula_reads_each_node_once() {
        assertThat(names(GRAPH.readBy(check("inside").requirement())))
                .containsExactlyInAnyOrder("lash", "engine.lash_min", "engine.lash_max");
    }

    @Test
    void what_failed_comes_before_what_nobody_entered_yet_and_what_is_blocked_waits() {
        Judgement warm = BENCH.observe("head", "\"41 °C\"")
                .observe("room", "\"21 °C\"")
                .observe("gear", "\"dry\"")
                .judged();

        List<Work> work = warm.worthDoing();

        assertThat(work).hasSize(2);
        assertThat(work.get(0)).isInstanceOf(Work.Attend.class);
        assertThat(work.get(0).verdict().outcome()).isEqualTo(Outcome.FAILS);
        assertThat(((Work.Observe) work.get(1)).observation().name()).isEqualTo("oiled_now");
    }

    @Test
    void what_the_card_lacks_is_to_be_found_out() {
        Judgement judgement = BENCH.card("\"lash_min\": \"0.03 mm\",", "")
                .observe("head", "\"21 °C\"")
                .observe("room", "\"21 °C\"")
                .observe("gear", "\"oiled\"")
                .feel("lash", "passes 0.05 mm")
                .judged();

        assertThat(judgement.worthDoing())
                .singleElement()
                .isInstanceOfSatisfying(
                        Work.FindOut.class,
                        find -> assertThat(find.lack())
                                .hasToString("engine.lash_min is not stated on the engine card"));
    }
}
