package io.github.leafproof.dsl.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.mechanism.Mechanism;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person reckons at the bench. */
class ReckonerTest {

    private static final Path CARD = Path.of("..", "examples", "bench", "cards", "quillan-15.json");

    private Reckoner reckoner = Reckoner.in(UnitSystem.METRIC);
    private int line;

    /** The answer to a line, or what is said instead. */
    private String reckon(String text) {
        line++;
        Reckoned reckoned = reckoner.reckon(SourceText.fromLine(line, "lines", text));
        if (reckoned instanceof Reckoned.Answer answer) {
            reckoner = answer.after();
            return answer.words();
        }
        return reckoned instanceof Reckoned.Refused refused
                ? String.join(
                        "; ",
                        refused.diagnostics().stream().map(Diagnostic::message).toList())
                : ((Reckoned.Unanswered) reckoned).why();
    }

    /**
     * Factors: the inch is exactly 25.4 mm, the pound-force exactly 4.448 221 615 260 5 N, the degree Fahrenheit 5/9 K with
     * 32 °F at 0 °C (NIST SP 811, appendix B; to six digits).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.5 thou in mm | 0.1143 mm",
                "1 in in mm | 25.4 mm",
                "0.10 mm in thou | 3.93701 thou",
                "1 in\u00B7lbf in N\u00B7m | 0.112985 N\u00B7m",
                "1 psi in kPa | 6.89476 kPa",
                "98.6 \u00B0F in \u00B0C | 37 \u00B0C",
                "-40 \u00B0C in \u00B0F | -40 \u00B0F",
                "1 in / 16 in mm | 1.5875 mm"
            })
    void units_are_turned_into_each_other(String line, String answer) {
        assertThat(reckon(line)).isEqualTo(answer);
    }

    @Test
    void a_length_minus_itself_is_nothing_and_minus_its_like_is_uncertain() {
        // Two sources of 0.001 mm each: √2 of one (JCGM 100, 5.1.2).
        assertThat(reckon("a = 0.05 mm (u 0.001 mm)")).isEqualTo("a = 0.0500 mm (u 0.0010 mm)");
        assertThat(reckon("b = 0.05 mm (u 0.001 mm)")).isEqualTo("b = 0.0500 mm (u 0.0010 mm)");
        assertThat(reckon("a - a")).isEqualTo("0 mm");
        assertThat(reckon("a - b")).isEqualTo("0.0000 mm (u 0.0014 mm)");
    }

    @Test
    void a_rectangular_limit_counts_as_its_root_of_three() {
        // JCGM 100, 4.3.7: u = a/√3.
        assertThat(reckon("0.05 mm ± 0.01 mm")).isEqualTo("0.0500 mm (u 0.0058 mm)");
    }

    @Test
    void a_condition_near_its_limit_is_open_and_says_why() {
        assertThat(reckon("2 mm at least 1 mm")).isEqualTo("yes: 2 mm is 2 mm, inside the limits");
        assertThat(reckon("0.05 mm ± 0.01 mm at least 0.05 mm"))
                .startsWith("open: ")
                .contains("50 %");
        assertThat(reckon("0.05 mm at most 0.04 mm")).startsWith("no: ").endsWith("above 0.04 mm");
    }

    @Test
    void a_name_given_again_has_its_new_value() {
        assertThat(reckon("gap = 0.05 mm")).isEqualTo("gap = 0.05 mm");
        assertThat(reckon("gap = gap + 0.04 mm")).isEqualTo("gap = 0.09 mm");
        assertThat(reckon("gap in thou")).isEqualTo("3.54331 thou");
    }

    @Test
    void a_name_that_has_no_value_is_told_and_its_like_suggested() {
        assertThat(reckon("lash = 4.5 thou")).isEqualTo("lash = 0.1143 mm");

        Reckoned.Refused refused = (Reckoned.Refused) reckoner.reckon(SourceText.fromLine(7, "lines", "1 mm + lahs"));

        Diagnostic only = refused.diagnostics().get(0);
        assertThat(only.message()).isEqualTo("nothing is called lahs");
        assertThat(only.help()).isEqualTo("did you mean lash?");
        assertThat(only.source().at(only.span().start())).hasToString("7:8");
    }

    @Test
    void the_facts_of_an_engine_come_from_its_card() {
        assertThat(reckon("engine.stroke / 2")).isEqualTo("engine.stroke is not known without an engine card");
        EngineCard card = CardFile.read(CARD).orElseThrow().content();
        reckoner = reckoner.with(card, "early cam");

        assertThat(reckon("engine.stroke / 2")).isEqualTo("12.4 mm");
        assertThat(reckon("engine.lash_max")).isEqualTo("0.06 mm");
        assertThat(reckon("engine.serial")).isEqualTo("engine.serial stands on no engine card");
    }

    @Test
    void days_and_words_are_reckoned_too() {
        assertThat(reckon("2026-02-27 + 2 d")).isEqualTo("2026-03-01");
        assertThat(reckon("if 3 mm > 2 mm then \"tight\" else \"loose\"")).isEqualTo("tight");
        assertThat(reckon("\"{1 in in mm} wide\"")).isEqualTo("25.4 mm wide");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.5 thou mm | `mm` does not belong here",
                "4.5 thou foo | nothing joins `foo` to what stands before it",
                "mm | nothing is called mm",
                "piston_travel | piston_travel is a function and needs its values",
                "0.05 mm + 3 \u00B0C | this adds a temperature to a length",
                "1/2 in in mm | this shows a per length in a unit of length",
                "sqrt(-1) | sqrt(-1) cannot be computed: no square root can be taken of -1"
            })
    void what_makes_no_sense_is_told_in_words(String line, String said) {
        assertThat(reckon(line)).isEqualTo(said);
    }

    @Test
    void no_line_whatever_ends_in_an_exception() {
        String deep = "(".repeat(200) + "1" + ")".repeat(200);
        String chain = "1" + " + 1".repeat(5_000);
        for (String text :
                List.of("", " ", "\u0000", "= 3", "a =", "a = = 3", "}{", "\"{", "//", deep, chain, "choose x {")) {
            assertThat(reckon(text)).as(text).isNotEmpty();
        }
    }

    @Test
    void every_calculation_is_listed_and_its_example_is_answered() {
        String all = FunctionList.all();
        for (Mechanism mechanism : Mechanisms.all()) {
            assertThat(all).contains("  " + mechanism.name() + "(");
            assertThat(FunctionList.about(mechanism.name()).orElseThrow())
                    .startsWith(mechanism.name() + "(")
                    .contains("  example: ");
        }
        assertThat(FunctionList.about("no such thing")).isEmpty();
    }
}
