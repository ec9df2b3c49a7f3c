package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.graph.BenchState.Change;
import io.github.leafproof.dsl.graph.BenchState.While;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a bench is brought into the state that a step needs. */
class BenchStateTest {

    private static final Hazard HOT = Hazard.Usual.HOT.hazard();
    private static final Hazard FUEL = Hazard.Usual.FUEL.hazard();
    private static final Hazard FIRE = Hazard.Usual.FIRE.hazard();

    private static final Change UNSCREW = new Change("fitted", "out", "Unscrew the plug", List.of(HOT));
    private static final Change CLEAN = new Change("out", "cleaned", "Clean its seat", List.of());
    private static final Change REFIT = new Change("cleaned", "fitted", "Refit the plug", List.of());
    private static final Change BLANK = new Change("fitted", "blanked", "Screw a blank in", List.of());
    private static final Change PULL = new Change("blanked", "cleaned", "Pull the blank through", List.of());
    private static final Change BREAK = new Change("cleaned", "broken", "Break it off", List.of());

    private static final BenchState PLUG = new BenchState(
            "plug",
            "fitted",
            List.of(UNSCREW, CLEAN, REFIT, BLANK, PULL, BREAK),
            List.of(
                    new While("out", List.of(FUEL)),
                    new While("cleaned", List.of(HOT)),
                    new While("out", List.of(FIRE))));

    @Test
    void a_state_is_reached_by_the_fewest_changes_and_the_first_written_of_equals() {
        assertThat(PLUG.way("fitted", "out")).hasValue(List.of(UNSCREW));
        assertThat(PLUG.way("fitted", "cleaned")).hasValue(List.of(UNSCREW, CLEAN));
        assertThat(PLUG.way("out", "blanked")).hasValue(List.of(CLEAN, REFIT, BLANK));
    }

    @Test
    void nothing_has_to_be_done_where_the_bench_is_already() {
        assertThat(PLUG.way("out", "out")).hasValue(List.of());
    }

    @Test
    void from_some_states_there_is_no_way_back() {
        assertThat(PLUG.way("broken", "fitted")).isEmpty();
        assertThat(PLUG.way("fitted", "elsewhere")).isEmpty();
    }

    @Test
    void one_change_leads_only_from_its_own_state_to_its_own_state() {
        assertThat(PLUG.change("fitted", "out")).hasValue(UNSCREW);
        assertThat(PLUG.change("out", "fitted")).isEmpty();
        assertThat(PLUG.change("fitted", "cleaned")).isEmpty();
    }

    @Test
    void all_hazards_of_a_state_last_while_it_lasts_and_no_others() {
        assertThat(PLUG.hazardsWhile("out")).containsExactly(FUEL, FIRE);
        assertThat(PLUG.hazardsWhile("cleaned")).containsExactly(HOT);
        assertThat(PLUG.hazardsWhile("fitted")).isEmpty();
    }

    @Test
    void a_procedure_keeps_its_states_as_they_are_written() {
        CheckGraph graph = Workshop.of("""
                hazard solvent "It burns."
                setup covers starts fitted {
                  fitted -> off "Lift them" hazard solvent, hot
                  off -> fitted "Refit them"
                  while off hazard eyes
                }
                observe dry : yes/no setup covers off hazard propeller ask "Dry?" note "Look twice."
                check is_dry "Dry" minor { require dry }
                """).compiled().graph();

        BenchState covers = graph.states().get(0);
        assertThat(covers.starts()).isEqualTo("fitted");
        assertThat(covers.change("fitted", "off").orElseThrow().how()).isEqualTo("Lift them");
        assertThat(covers.change("fitted", "off").orElseThrow().hazards())
                .extracting(Hazard::name)
                .containsExactly("solvent", "hot");
        assertThat(covers.hazardsWhile("off")).extracting(Hazard::name).containsExactly("eyes");
        Node.Observation dry = graph.observations().get(0);
        assertThat(dry.needs()).containsExactly(new BenchState.Need("covers", "off"));
        assertThat(dry.hazards()).extracting(Hazard::name).containsExactly("propeller");
        assertThat(dry.notes()).containsExactly("Look twice.");
    }

    @Test
    void nine_hazards_are_known_everywhere_by_their_words() {
        for (Hazard.Usual usual : Hazard.Usual.values()) {
            assertThat(Hazard.Usual.named(usual.hazard().name())).hasValue(usual.hazard());
        }
        assertThat(Hazard.Usual.values()).hasSize(9);
        assertThat(Hazard.Usual.named("dragons")).isEmpty();
        // Under a Turkish locale an i has to stay an i.
        assertThat(Hazard.Usual.named("fire").orElseThrow().caution()).startsWith("Methanol burns");
    }
}
