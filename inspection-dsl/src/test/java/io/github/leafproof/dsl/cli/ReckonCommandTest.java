package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bench calculator at the command line; docs/reckon.md shows it at work. */
class ReckonCommandTest {

    private static final Path HERE = Path.of("nowhere");

    @Test
    void words_are_put_together_and_a_minus_sign_is_no_option() {
        assertThat(Terminal.run("reckon", "4.5", "thou", "in", "mm").out()).isEqualTo("0.1143 mm\n");
        assertThat(Terminal.run("reckon", "-40 °C in °F").out()).isEqualTo("-40 °F\n");
        assertThat(Terminal.run("reckon", "--units", "inch", "-0.0254", "mm").out())
                .isEqualTo("-1 thou\n");
    }

    @Test
    void every_line_is_answered_and_the_exit_code_says_that_one_was_refused() {
        Terminal said = Terminal.typing("""
                lash = 4.5 thou

                // a comment
                lash + 3 °C
                sqrt(-1)
                lash in mm
                """, "reckon");

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/reckon-lines", said.whole(HERE));
    }

    @Test
    void all_lines_answered_is_good() {
        assertThat(Terminal.typing("1 mm\n2 mm", "reckon").exit()).isZero();
        assertThat(Terminal.typing("", "reckon")).isEqualTo(new Terminal(0, "", ""));
    }

    @Test
    void the_functions_are_listed_by_subject() {
        Golden.hold("cli/reckon-list", Terminal.run("reckon", "--list").whole(HERE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--list nonsense", "--unit inch", "--card missing.json 1 mm", "--units furlong 1 mm"})
    void what_cannot_be_done_is_told_with_its_remedy(String line) {
        String[] words = ("reckon " + line).split(" ");
        Terminal said = Terminal.run(words);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("help: ").doesNotContain("Exception");
    }
}
