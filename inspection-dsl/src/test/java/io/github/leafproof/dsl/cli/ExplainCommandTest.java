package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplainCommandTest {

    @TempDir
    private Path here = Path.of("");

    private static Terminal explain(String check, String... more) {
        String procedure = Terminal.BENCH.resolve("first_look.inspection").toString();
        return Terminal.run(Stream.concat(Stream.of("explain", procedure, check), Stream.of(more))
                .toArray(String[]::new));
    }

    private static String sheet(String name) {
        return Terminal.BENCH.resolve("sheets").resolve(name).toString();
    }

    @Test
    void a_check_is_explained_without_an_engine_and_with_one() {
        Terminal general = explain("cold");
        Terminal judged = explain("cold", "--sheet", sheet("0413-warm.json"));

        assertThat(general.exit()).isZero();
        assertThat(general.out())
                .startsWith("The engine is at room temperature  (cold)\n")
                .doesNotContain("FAILS");
        assertThat(judged.exit()).isZero();
        assertThat(judged.out()).contains("FAILS\n  head - room is 20.400 K (u 0.041 K), above 3 K\n");
        assertThat(judged.err()).isEmpty();
    }

    @Test
    void numbers_are_shown_in_the_units_asked_for_and_programs_get_json() {
        assertThat(explain("cold", "--sheet", sheet("0413-warm.json"), "--units", "inch")
                        .out())
                .contains("head: 105.8 °F (u 1.0 Δ°F)");
        assertThat(explain("cold", "--json").out()).startsWith("{\n  \"format\" : \"leafproof-explanation/1\",");
    }

    @Test
    void colour_only_repeats_what_the_words_say() {
        String[] arguments = {
            "explain",
            Terminal.BENCH.resolve("first_look.inspection").toString(),
            "cold",
            "--sheet",
            sheet("0413-warm.json")
        };

        Terminal plain = Terminal.run(false, arguments);
        Terminal coloured = Terminal.run(true, arguments);

        assertThat(coloured.out()).isNotEqualTo(plain.out());
        assertThat(coloured.out().replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain.out());
    }

    @ParameterizedTest
    @CsvSource({
        "lash_withn[intake], misspelt",
        "lash_within, loop",
        "head, observation",
        "datum, value",
        "engine.choke, fact"
    })
    void what_is_no_check_is_told_with_what_was_probably_meant(String name, String golden) {
        Terminal said = explain(name);

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/explain-" + golden, said.whole(here));
    }

    @Test
    void everything_that_is_wrong_is_told_at_once() {
        Terminal said = explain(
                "lash_withn[intake]", "--sheet", here.resolve("none.json").toString());

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/explain-all-wrong", said.whole(here));
    }

    @Test
    void a_card_without_a_sheet_explains_nothing() {
        Terminal said = explain("cold", "--card", "x.json");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/explain-card-alone", said.whole(here));
    }

    @Test
    void a_sheet_of_another_procedure_is_refused() {
        Terminal said = Terminal.run("explain", procedureOfAnotherName(), "fits", "--sheet", sheet("0413-warm.json"));

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("LP671");
    }

    private String procedureOfAnotherName() {
        Path file = here.resolve("other.inspection");
        try {
            Files.writeString(file, """
                    procedure other "Other" revision 1
                    observe fit : yes/no ask "Fits?"
                    check fits "It fits" minor { require fit }
                    """);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return file.toString();
    }
}
