package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.verdict.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Facts that a shop adds to its cards mean what the procedure declares them to be. */
class ShopFactTest {

    private static final Workshop BENCH = Workshop.of("""
            card tank_offset : length
            card share : number
            card plugs : count
            card pressurised : yes/no
            card tank_kind : one of round, "saddle tank"
            card wear : grade none < some < much
            card shelf : text
            card tools : items
            card bought : date
            observe drop : length ask "Drop; the tank is on shelf {engine.shelf}"
            observe found : items ask "Found"
            check level "Level" minor { require drop within 10 mm of engine.tank_offset }
            check few "Few" minor { require engine.plugs at most 2 and engine.share at most 0.5 }
            check open_vent "Open" minor { require not engine.pressurised and engine.tank_kind is round }
            check kept "Kept" minor { require engine.wear at most some and found has all of engine.tools }
            check shelved "Shelved" minor { require engine.shelf is "8 mm" and engine.bought is before 2026-01-01 }
            """);

    private static Workshop stating(String shop) {
        return BENCH.card("\"choke\": false", "\"choke\": false, \"shop\": { " + shop + " }");
    }

    private static final String ALL =
            "\"tank_offset\": \"8 mm\", \"share\": 0.25, \"plugs\": 2, \"pressurised\": false,"
                    + " \"tank_kind\": \"round\", \"wear\": \"some\", \"shelf\": \"8 mm\", \"tools\": [\"key\"], \"bought\": \"2024-05-01\", \"other\": 1";

    @Test
    void each_kind_of_fact_is_read_as_it_is_declared() {
        Workshop bench =
                stating(ALL).observe("drop", "\"12 mm\"").enter("{\"observe\": \"found\", \"items\": [\"key\"]}");

        assertThat(bench.problems()).isEmpty();
        assertThat(bench.judged().verdicts())
                .extracting(Verdict::outcome)
                .hasSize(5)
                .containsOnly(Outcome.PASSES);
    }

    @Test
    void a_fact_that_the_card_does_not_state_leaves_untested_what_needs_it_and_is_named() {
        Workshop bench =
                stating("\"shelf\": \"8 mm\", \"bought\": \"2024-05-01\"").observe("drop", "\"12 mm\"");

        assertThat(bench.outcome("level")).isEqualTo(Outcome.UNTESTED);
        assertThat(bench.check("level").missing())
                .containsExactly("engine.tank_offset is not stated on the engine card");
        assertThat(bench.outcome("shelved")).isEqualTo(Outcome.PASSES);
    }

    @Test
    void a_variant_overrides_what_the_shop_says_of_the_model() {
        Workshop bench = stating(ALL)
                .card(
                        "\"early cam\": { \"lash_max\": \"0.06 mm\" }",
                        "\"early cam\": { \"shop\": { \"tank_offset\": \"30 mm\" } }")
                .observe("drop", "\"12 mm\"");

        assertThat(bench.engine("{ \"variant\": \"early cam\" }").outcome("level"))
                .isEqualTo(Outcome.FAILS);
        assertThat(bench.engine("{ \"variant\": \"unknown\" }").outcome("level"))
                .isEqualTo(Outcome.PASSES);
    }

    @Test
    void a_wrong_word_of_a_variant_is_pointed_at_in_the_variant() {
        Workshop bench = stating(ALL)
                .card(
                        "\"early cam\": { \"lash_max\": \"0.06 mm\" }",
                        "\"early cam\": { \"shop\": { \"tank_offset\": \"low\" } }");

        assertThat(bench.engine("{ \"variant\": \"early cam\" }").problems())
                .startsWith("card.json:$.variants['early cam'].shop.tank_offset: error LP668: the procedure declares"
                        + " engine.tank_offset as a length: \"low\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"tank_offset\": \"8 mm\" | \"tank_offset\": \"tall\" | engine.tank_offset as a length: \"tall\" does not start with a number | write a number and a unit, such as 0.05 mm",
                "\"tank_offset\": \"8 mm\" | \"tank_offset\": \"8 kPa\" | engine.tank_offset as a length, and the card says \"8 kPa\" | write it as a number and its unit: \"8 mm\"",
                "\"tank_offset\": \"8 mm\" | \"tank_offset\": 8 | engine.tank_offset as a length, and the card says 8 | write it as a number and its unit: \"8 mm\"",
                "\"tank_offset\": \"8 mm\" | \"tank_offset\": true | engine.tank_offset as a length, and the card says yes (true) | write it as a number and its unit: \"8 mm\"",
                "\"share\": 0.25 | \"share\": \"3 mm\" | engine.share as number, and the card says \"3 mm\" | write it as a plain number: 0.25",
                "\"plugs\": 2 | \"plugs\": 2.5 | engine.plugs as count, and the card says 2.5 | write it as a whole number without quotes: 3",
                "\"plugs\": 2 | \"plugs\": -2 | engine.plugs as count, and the card says -2 | write it as a whole number without quotes: 3",
                "\"plugs\": 2 | \"plugs\": \"two\" | engine.plugs as count, and the card says \"two\" | write it as a whole number without quotes: 3",
                "\"pressurised\": false | \"pressurised\": \"no\" | engine.pressurised as yes/no, and the card says \"no\" | write it as true or false",
                "\"tank_kind\": \"round\" | \"tank_kind\": \"rond\" | engine.tank_kind as one of round, saddle tank, not rond | did you mean round?",
                "\"tank_kind\": \"round\" | \"tank_kind\": false | engine.tank_kind as one of round, saddle tank, and the card says no (false) | write it as a text in quotes: \"…\"",
                "\"wear\": \"some\" | \"wear\": \"brown\" | engine.wear as grade none < some < much, not brown | write one of these",
                "\"shelf\": \"8 mm\" | \"shelf\": 8 | engine.shelf as text, and the card says 8 | write it as a text in quotes: \"…\"",
                "\"tools\": [\"key\"] | \"tools\": \"key\" | engine.tools as items, and the card says \"key\" | write it as a list: [ \"…\", \"…\" ]",
                "\"bought\": \"2024-05-01\" | \"bought\": \"May 2024\" | engine.bought as date, and the card says \"May 2024\" | write it as year, month and day: \"2026-03-04\"",
                "\"bought\": \"2024-05-01\" | \"bought\": 2024 | engine.bought as date, and the card says 2024 | write it as year, month and day: \"2026-03-04\"",
                "\"shelf\": \"8 mm\" | \"shelf\": [\"a\"] | engine.shelf as text, and the card says a list of texts | write it as a text in quotes: \"…\"",
            })
    void what_is_no_such_thing_is_refused_with_its_place(String good, String bad, String message, String help) {
        String name = bad.substring(1, bad.indexOf('"', 1));

        assertThat(stating(ALL.replace(good, bad)).problems())
                .isEqualTo("card.json:$.shop." + name + ": error LP668: the procedure declares " + message
                        + "\n   help: " + help);
    }

    @Test
    void all_wrong_facts_are_told_at_once() {
        assertThat(stating(ALL.replace("\"8 mm\", \"share\"", "3, \"share\"").replace("\"plugs\": 2", "\"plugs\": 0.5"))
                        .problems()
                        .lines())
                .filteredOn(line -> line.contains("LP668"))
                .hasSize(2);
    }

    @Test
    void whether_a_procedure_is_for_an_engine_may_hang_on_what_the_shop_added() {
        Workshop bench = Workshop.of("""
                applies when engine.tank_kind is round
                card tank_kind : one of round, square
                observe a : yes/no ask "a"
                check c "c" minor { require a }
                """);

        assertThat(bench.problems()).contains("LP670", "engine.tank_kind is not stated on the engine card");
        assertThat(bench.card("\"choke\": false", "\"choke\": false, \"shop\": { \"tank_kind\": \"rond\" }")
                        .problems())
                .contains("LP668", "did you mean round?");
        assertThat(bench.card("\"choke\": false", "\"choke\": false, \"shop\": { \"tank_kind\": \"square\" }")
                        .problems())
                .contains("LP669");
        assertThat(bench.card("\"choke\": false", "\"choke\": false, \"shop\": { \"tank_kind\": \"round\" }")
                        .problems())
                .isEmpty();
    }
}
