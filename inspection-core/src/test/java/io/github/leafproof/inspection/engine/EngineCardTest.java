package io.github.leafproof.inspection.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.inspection.engine.Fact.Amount;
import io.github.leafproof.inspection.engine.Fact.Flag;
import io.github.leafproof.inspection.engine.Fact.Word;
import io.github.leafproof.inspection.engine.Fact.Words;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EngineCardTest {
    private static final EngineCard QUILLAN = new EngineCard(
            "Quillan Q15-4",
            "Quillan",
            "1994-2003",
            Map.of(
                    "lash_min", amount("0.03 mm"),
                    "lash_max", amount("0.10 mm"),
                    "throttle_arm", new Word("metal"),
                    "choke", new Flag(false),
                    "materials.valve", new Word("austenitic steel"),
                    "box", new Words(List.of("engine", "glow plug"))),
            Map.of("early cam", Map.of("lash_min", amount("0.01 mm"), "lash_max", amount("0.03 mm"))),
            Map.of("tank_offset", amount("8 mm")));

    private static Amount amount(String quantity) {
        return new Amount(Quantity.parse(quantity));
    }

    private static EngineCard withFact(String name, Fact stated) {
        return new EngineCard("Q", "Quillan", null, Map.of(name, stated), Map.of(), Map.of());
    }

    @Test
    void a_card_answers_with_what_it_states_and_with_nothing_else() {
        assertThat(QUILLAN.fact("lash_max", null)).contains(amount("0.10 mm"));
        assertThat(QUILLAN.fact("bore", null)).isEmpty();
        assertThat(QUILLAN.fact("materials.valve", null)).contains(new Word("austenitic steel"));
    }

    // Common practice: the early cam of one family wanted much less lash than the later one.
    @Test
    void the_vintage_selects_the_limits() {
        assertThat(QUILLAN.fact("lash_max", "early cam")).contains(amount("0.03 mm"));
        assertThat(QUILLAN.fact("throttle_arm", "early cam")).contains(new Word("metal"));
    }

    @Test
    void unknown_is_a_legal_answer_to_which_variant_an_engine_is() {
        assertThat(QUILLAN.knowsVariant("unknown")).isTrue();
        assertThat(QUILLAN.fact("lash_min", "unknown")).contains(amount("0.03 mm"));
        EngineCard careful = new EngineCard(
                "Q", "Quillan", null, Map.of(), Map.of("unknown", Map.of("lash_min", amount("0.02 mm"))), Map.of());
        assertThat(careful.fact("lash_min", "unknown")).contains(amount("0.02 mm"));
    }

    @Test
    void a_variant_the_card_does_not_know_gets_no_limits_at_all() {
        assertThat(QUILLAN.knowsVariant("late cam")).isFalse();
        assertThatThrownBy(() -> QUILLAN.fact("lash_min", "late cam"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the card of Quillan Q15-4 knows no variant late cam; it knows early cam and unknown");
        assertThatThrownBy(() -> withFact("choke", new Flag(true)).fact("choke", "late cam"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the card of Q knows no variant late cam; it knows unknown");
    }

    @Test
    void model_maker_and_years_are_facts_too() {
        assertThat(QUILLAN.fact("model", "early cam")).contains(new Word("Quillan Q15-4"));
        assertThat(QUILLAN.fact("maker", null)).contains(new Word("Quillan"));
        assertThat(QUILLAN.fact("years", null)).contains(new Word("1994-2003"));
        assertThat(withFact("choke", new Flag(true)).fact("years", null)).isEmpty();
    }

    @Test
    void what_a_shop_added_to_its_cards_is_found_last() {
        assertThat(QUILLAN.fact("tank_offset", "early cam")).contains(amount("8 mm"));
        assertThatThrownBy(
                        () -> new EngineCard("Q", "Quillan", null, Map.of(), Map.of(), Map.of("bore", amount("27 mm"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("bore is a fact every card knows; the shop's own facts need other names");
    }

    @Test
    void what_a_variant_differs_in_may_be_a_fact_of_the_shop() {
        EngineCard card = new EngineCard(
                "Q",
                "Quillan",
                null,
                Map.of(),
                Map.of("early cam", Map.of()),
                Map.of("tank_offset", amount("8 mm")),
                Map.of("early cam", Map.of("tank_offset", amount("5 mm"))));

        assertThat(card.fact("tank_offset", "early cam")).contains(amount("5 mm"));
        assertThat(card.fact("tank_offset", "unknown")).contains(amount("8 mm"));
        assertThatThrownBy(() -> new EngineCard(
                        "Q", "Quillan", null, Map.of(), Map.of(), Map.of(), Map.of("early cam", Map.of())))
                .hasMessage("the card of Q has no variant early cam");
        assertThatThrownBy(() -> new EngineCard(
                        "Q",
                        "Quillan",
                        null,
                        Map.of(),
                        Map.of("early cam", Map.of()),
                        Map.of(),
                        Map.of("early cam", Map.of("bore", amount("27 mm")))))
                .hasMessage("bore is a fact every card knows; the shop's own facts need other names");
    }

    @Test
    void a_fact_of_the_wrong_kind_is_refused_in_words() {
        assertThatThrownBy(() -> withFact("bore", amount("27.7 kPa")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the card of Q: bore must be of the kind length; 27.7 kPa is of the kind pressure");
        assertThatThrownBy(() -> withFact("bore", new Word("wide")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the card of Q: bore must be an amount of the kind length");
        assertThatThrownBy(() -> withFact("throttle_arm", new Word("wood")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the card of Q: throttle_arm must be one of metal, plastic, not wood");
        assertThatThrownBy(() -> withFact("throttle_arm", new Flag(true)))
                .hasMessage("the card of Q: throttle_arm must be one of metal, plastic");
        assertThatThrownBy(() -> withFact("choke", new Word("yes")))
                .hasMessage("the card of Q: choke must be yes or no");
        assertThatThrownBy(() -> withFact("box", new Word("engine")))
                .hasMessage("the card of Q: box must be a list of texts");
    }

    @Test
    void a_fact_no_card_can_state_is_refused() {
        assertThat(EngineCard.complaintAbout("boar", amount("27 mm"))).contains("boar is no fact of a card");
        assertThat(EngineCard.complaintAbout("serial", new Word("Q15-1"))).contains("serial is no fact of a card");
        assertThat(EngineCard.complaintAbout("model", new Word("Q15"))).contains("model is no fact of a card");
        assertThat(EngineCard.complaintAbout("bore", amount("27 mm"))).isEmpty();
        assertThatThrownBy(() -> new EngineCard(
                        "Q", "Quillan", null, Map.of(), Map.of("late", Map.of("boar", amount("1 mm"))), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the variant late of Q: boar is no fact of a card");
    }

    @Test
    void a_card_names_its_engine() {
        assertThatThrownBy(() -> new EngineCard(" ", "Quillan", null, Map.of(), Map.of(), Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a card needs a model and a maker");
        assertThatThrownBy(() -> new EngineCard("Q", "", null, Map.of(), Map.of(), Map.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
