package io.github.leafproof.dsl.workcard;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.StepOrder;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.gauge.GaugeTray;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.TrayFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkCardTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static CheckGraph graph(String procedure) {
        return Procedure.read(BENCH.resolve(procedure + ".inspection"))
                .orElseThrow()
                .graph();
    }

    private static Document<EngineCard> engine(String name) {
        return CardFile.read(BENCH.resolve("cards/" + name + ".json")).orElseThrow();
    }

    private static Document<GaugeTray> tray() {
        return TrayFile.read(BENCH.resolve("trays/bench-one.json")).orElseThrow();
    }

    private static WorkCard card(String procedure, String engine) {
        return WorkCard.of(graph(procedure), engine(engine), tray(), null, UnitSystem.METRIC)
                .orElseThrow();
    }

    private static WorkCard.Step step(WorkCard card, String name) {
        return card.steps().stream()
                .filter(step -> step.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first_look", "tank", "used_engine", "stand_and_first_start", "running_in"})
    void every_caution_stands_in_full_before_all_that_it_holds_for_and_once(String procedure) {
        Set<Integer> told = new HashSet<>();
        for (WorkCard.Line line : card(procedure, "quillan-15").lines()) {
            if (line instanceof WorkCard.Caution caution) {
                assertThat(told.add(caution.number())).isTrue();
                assertThat(caution.words()).isNotBlank();
            } else if (line instanceof WorkCard.Change change) {
                assertThat(told).containsAll(change.cautions());
            } else if (line instanceof WorkCard.Step step) {
                assertThat(told).containsAll(step.cautions());
            }
        }
        assertThat(told).isNotEmpty();
    }

    @Test
    void the_steps_are_all_there_in_bench_order_with_the_changes_between_them() {
        CheckGraph graph = graph("tank");
        WorkCard card = card("tank", "quillan-15");
        List<String> expected = new ArrayList<>();
        int changes = 0;
        for (StepOrder.Step step : graph.stepOrder().steps()) {
            if (step instanceof StepOrder.Observe observe) {
                expected.add(observe.observation().name());
            } else {
                changes++;
            }
        }

        assertThat(card.steps()).extracting(WorkCard.Step::name).containsExactlyElementsOf(expected);
        assertThat(card.lines()).filteredOn(WorkCard.Change.class::isInstance).hasSize(changes);
        assertThat(card.steps()).extracting(WorkCard.Step::number).startsWith(1, 2, 3);
    }

    @Test
    void an_engine_without_a_throttle_stop_is_not_asked_for_it() {
        WorkCard without = card("first_look", "quillan-15");
        WorkCard with = card("first_look", "quillan-10");

        assertThat(without.steps())
                .extracting(WorkCard.Step::name)
                .contains("idle_opening")
                .doesNotContain("stop_holds");
        assertThat(with.steps())
                .extracting(WorkCard.Step::name)
                .contains("stop_holds")
                .doesNotContain("idle_opening");
    }

    @Test
    void limits_are_those_of_the_engines_card_and_stand_where_the_last_thing_to_tell_is_observed() {
        assertThat(step(card("first_look", "quillan-15"), "lash[intake]").wanted())
                .containsExactly("between 0.03 mm (engine.lash_min) and 0.10 mm (engine.lash_max)");
        WorkCard card = card("first_look", "quillan-15");
        assertThat(step(card, "head").wanted()).isEmpty();
        assertThat(step(card, "room").wanted()).containsExactly("head - room within 3 K of 0 K");
    }

    @Test
    void a_variant_brings_its_own_limits() {
        WorkCard early = WorkCard.of(graph("first_look"), engine("quillan-15"), tray(), "early cam", UnitSystem.METRIC)
                .orElseThrow();

        assertThat(step(early, "lash[intake]").wanted())
                .isNotEqualTo(
                        step(card("first_look", "quillan-15"), "lash[intake]").wanted());
    }

    @Test
    void the_page_has_a_row_for_each_leaf_of_the_tray_with_what_it_measures() {
        String page = WorkCardPage.of(card("first_look", "quillan-15"));

        assertThat(page).contains("0.10 mm</th>").contains("0.1100 mm</td>");
        assertThat(page.split("<th scope=\"row\">0.10 mm</th>", -1)).hasSize(3);
    }

    @Test
    void the_foot_of_every_sheet_names_procedure_revision_and_digest() {
        WorkCard card = card("tank", "quillan-15");
        String page = WorkCardPage.of(card);

        assertThat(page)
                .contains("@bottom-left { content: \"tank revision 1 \\b7  "
                        + card.procedure().sha256().substring(0, 12) + "\"")
                .contains("counter(page)");
        assertThat(page).contains(card.tray().sha256().substring(0, 12));
    }

    @Test
    void what_does_not_go_together_is_told_as_when_an_engine_is_judged() {
        assertThat(WorkCard.of(graph("first_look"), engine("quillan-15"), tray(), "no such cam", UnitSystem.METRIC)
                        .problems())
                .extracting(problem -> problem.code())
                .contains("LP675");
    }

    @Test
    void numbers_are_written_down_in_the_units_that_the_gauge_shows_or_the_shop_likes() {
        String metric = WorkCardPage.of(card("first_look", "quillan-15"));
        String inch =
                WorkCardPage.of(WorkCard.of(graph("first_look"), engine("quillan-15"), tray(), null, UnitSystem.INCH)
                        .orElseThrow());

        assertThat(metric).contains(" °C, with infrared").contains(" turn, with needle_turns");
        assertThat(inch).contains(" °F, with infrared").contains(" thou, with caliper");
    }
}
