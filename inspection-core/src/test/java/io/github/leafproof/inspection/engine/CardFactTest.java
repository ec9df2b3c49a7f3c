package io.github.leafproof.inspection.engine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CardFactTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "model",
                "maker",
                "years",
                "displacement",
                "bore",
                "stroke",
                "rod_length",
                "lash_min",
                "lash_max",
                "lash_tolerated",
                "lash_limit_kind",
                "adjuster_pitch",
                "rocker_ratio",
                "rocker_side_of_adjuster",
                "materials.cylinder",
                "materials.push_rod",
                "materials.valve",
                "throttle_arm",
                "throttle_stop",
                "choke",
                "carb_bore",
                "low_needle_pitch",
                "high_needle_start",
                "idle_opening_min",
                "idle_opening_max",
                "box"
            })
    void every_fact_of_the_card_format_is_known(String name) {
        assertThat(CardFact.named(name).orElseThrow().keeper()).isEqualTo(Keeper.CARD);
    }

    @Test
    void the_sheet_states_what_is_true_of_one_engine_only() {
        for (String name : List.of("serial", "condition", "owner", "variant")) {
            CardFact fact = CardFact.named(name).orElseThrow();
            assertThat(fact.keeper()).isEqualTo(Keeper.SHEET);
            assertThat(fact.kind().words()).isEqualTo("a text");
            assertThat(fact.kind().complaintAbout(new Fact.Flag(true))).contains("must be a text");
            assertThat(fact.kind().complaintAbout(new Fact.Word("Q15-20417"))).isEmpty();
        }
    }

    @Test
    void the_dimension_of_a_fact_is_known_before_any_card_is_read() {
        assertThat(kind("lash_min")).isEqualTo(new FactKind.Measure(Dimension.LENGTH));
        assertThat(kind("adjuster_pitch")).isEqualTo(new FactKind.Measure(Dimension.LENGTH_PER_TURN));
        assertThat(kind("high_needle_start")).isEqualTo(new FactKind.Measure(Dimension.ANGLE));
        assertThat(kind("rocker_side_of_adjuster")).isEqualTo(new FactKind.OneOf(List.of("push rod", "valve")));
    }

    private static FactKind kind(String name) {
        return CardFact.named(name).orElseThrow().kind();
    }

    @Test
    void every_fact_has_a_meaning_and_a_name_of_its_own() {
        assertThat(CardFact.all()).extracting(CardFact::name).doesNotHaveDuplicates();
        assertThat(CardFact.all()).allSatisfy(fact -> assertThat(fact.meaning()).isNotBlank());
        assertThat(CardFact.named("boar")).isEmpty();
    }
}
