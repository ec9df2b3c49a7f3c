package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.engine.Fact;
import io.github.leafproof.inspection.quantity.Quantity;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class CardFileTest {
    private final EngineCard card = CardFile.read(Good.CARD).orElseThrow().content();

    @Test
    void a_card_states_whose_model_it_is_and_from_when() {
        assertThat(card.model()).isEqualTo("Quillan Q15-4");
        assertThat(card.maker()).isEqualTo("Quillan");
        assertThat(card.years()).isEqualTo("1994-2003");
    }

    @Test
    void amounts_words_and_answers_are_kept_as_written() {
        assertThat(card.facts())
                .containsEntry("bore", amount("27.7 mm"))
                .containsEntry("adjuster_pitch", amount("0.45 mm per turn"))
                .containsEntry("high_needle_start", amount("3 turns"))
                .containsEntry("rocker_ratio", amount("1.0"))
                .containsEntry("throttle_arm", new Fact.Word("metal"))
                .containsEntry("throttle_stop", new Fact.Flag(false))
                .containsEntry("materials.valve", new Fact.Word("austenitic steel"))
                .containsEntry(
                        "box",
                        new Fact.Words(
                                List.of("engine", "exhaust", "glow plug", "feeler leaf", "open-end wrench", "manual")));
    }

    @Test
    void an_early_cam_has_limits_of_its_own_and_takes_the_rest_from_the_card() {
        assertThat(card.fact("lash_max", "early cam")).contains(amount("0.03 mm"));
        assertThat(card.fact("bore", "early cam")).contains(amount("27.7 mm"));
        assertThat(card.fact("lash_min", "unknown")).contains(amount("0.03 mm"));
    }

    @Test
    void the_shops_own_facts_are_taken_as_they_are_written() {
        assertThat(card.shop())
                .containsEntry("tank_offset", new Fact.Word("8 mm"))
                .containsEntry("batch", new Fact.Word("1994"))
                .containsEntry("shelf", new Fact.Word("B 3"))
                .containsEntry("plug_share", amount("0.25"))
                .containsEntry("checked", new Fact.Flag(true))
                .containsEntry("tools", new Fact.Words(List.of("key", "bar")));
    }

    @Test
    void a_variant_may_differ_in_the_shops_own_facts() {
        String text = """
                { "model": "Q", "maker": "Quillan", "shop": { "tank_offset": "8 mm", "shelf": "B 3" },
                  "variants": { "early cam": { "shop": { "tank_offset": "5 mm" } }, "late cam": {} } }
                """;

        EngineCard read = CardFile.parse("q.json", text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow()
                .content();

        assertThat(read.fact("tank_offset", "early cam")).contains(new Fact.Word("5 mm"));
        assertThat(read.fact("shelf", "early cam")).contains(new Fact.Word("B 3"));
        assertThat(read.fact("tank_offset", "late cam")).contains(new Fact.Word("8 mm"));
        assertThat(read.fact("tank_offset", null)).contains(new Fact.Word("8 mm"));
    }

    @Test
    void model_and_maker_are_enough_for_a_card() {
        String smallest = "{ \"model\": \"Q\", \"maker\": \"Quillan\" }";

        EngineCard read = CardFile.parse("q.json", smallest.getBytes(StandardCharsets.UTF_8))
                .orElseThrow()
                .content();

        assertThat(read.facts()).isEmpty();
        assertThat(read.years()).isNull();
    }

    @Test
    void lash_may_be_nothing_at_all_but_a_bore_may_not() {
        String text = "{ \"model\": \"Q\", \"maker\": \"Quillan\", \"lash_min\": \"0 mm\", \"lash_max\": \"0.05 mm\" }";

        assertThat(CardFile.parse("q.json", text.getBytes(StandardCharsets.UTF_8))
                        .problems())
                .isEmpty();
    }

    @Test
    void an_engine_whose_printed_class_is_a_little_rounded_is_no_surprise() {
        // 27.7 mm bore and 24.8 mm stroke sweep 14.945 cm³, sold as 15.
        assertThat(CardFile.read(Good.CARD).problems()).isEmpty();
    }

    private static Fact amount(String text) {
        return new Fact.Amount(Quantity.parse(text));
    }
}
