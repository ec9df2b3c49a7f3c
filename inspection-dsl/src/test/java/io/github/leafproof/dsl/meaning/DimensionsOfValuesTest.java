package io.github.leafproof.dsl.meaning;

import static io.github.leafproof.dsl.meaning.Bench15.assertJudged;
import static io.github.leafproof.dsl.meaning.Bench15.diagnostics;
import static io.github.leafproof.dsl.meaning.Bench15.typeOf;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What kind of quantity an expression is follows from what it is made of, as on paper. */
class DimensionsOfValuesTest {

    private static final String GIVEN = """
                observe bore : length
                observe stroke : length
                observe head : temperature
                observe room : temperature
                observe hold : time
                observe turned : angle
                observe flips : count
                observe play : gap with leaves
                gauge leaves : leaf set
                observe share : number
                observe feel : grade none < soft < firm
                observe arm : one of metal, plastic
                observe free : yes/no
                """;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bore + stroke | length",
                "bore * stroke | area",
                "bore ^ 2 * stroke | volume",
                "bore ^ 3 / stroke ^ 2 | length",
                "bore / stroke | number",
                "bore ^ -1 * stroke | number",
                "bore ^ 0 | number",
                "bore / hold | speed",
                "bore * stroke * bore / hold | volume flow",
                "bore / turned | length per turn",
                "0.45 mm per turn * turned | length",
                "head - room | temperature difference",
                "(head - room) * 2 | temperature difference",
                "head + 3 K | temperature",
                "3 K + head | temperature",
                "head - 3 K | temperature",
                "-5 degC | temperature",
                "-(head - room) | temperature difference",
                "flips * 2 | number",
                "flips + share | number",
                "play + 0.01 mm | length",
                "play | gap",
                "flips | count",
                "feel | grade none < soft < firm",
                "engine.bore * engine.bore | area",
                "min(bore, stroke, 3 mm) | length",
                "max(head, room) | temperature",
                "abs(head - room) | temperature difference",
                "abs(-bore) | length",
                "sqrt(bore * stroke) | length",
                "sqrt(2) | number",
                "sin(30 deg) * bore | length",
                "cos(turned) + tan(turned) | number",
                "bore in thou | length",
                "2 * (bore in thou) | length",
                "if free then bore else play | length",
                "choose arm { metal: flips   otherwise: 0.5 } | number",
                "choose feel { none: head   soft, firm: 21 degC } | temperature",
                "if free then feel else feel | grade none < soft < firm",
                "bore at most 3 mm | yes/no",
                "free and not (bore at most 3 mm or arm is metal) | yes/no",
                "\"bore {bore}\" | text",
            })
    void a_value_has_the_dimension_of_what_it_is_computed_from(String expression, String words) {
        assertThat(typeOf("it", GIVEN + "let it = " + expression)).isEqualTo(words);
    }

    @Test
    void minus_five_degrees_is_a_temperature_below_the_freezing_point() {
        String text = """
                observe room : temperature
                let frost = -5 degC
                check above "A" { require room at least frost }
                check warm "W" { require room at least 5 degC }""";

        assertJudged(text, "room -4 degC", "above passes, warm fails");
        assertJudged(text, "room -6 degC", "above fails");
    }

    @Test
    void twenty_eight_degrees_less_twenty_one_are_seven_kelvin() {
        String text = """
                observe head : temperature
                observe room : temperature
                let off = head - room
                check near "N" { require off between 6.999 K and 7.001 K }
                check same "S" { require head is_warm }""";

        assertJudged(
                text.replace("head is_warm", "off + room at most 28.001 degC"),
                "head 28 degC, room 21 degC",
                "near passes, same passes");
    }

    /** A bore of 27.7 mm and a stroke of 24.8 mm sweep π/4 · 27.7² · 24.8 mm³ = 14.945 cm³ (by hand). */
    @Test
    void the_swept_volume_follows_from_bore_and_stroke() {
        String text = """
                observe bore : length
                observe stroke : length
                define swept(d : length, s : length) = 3.14159265 / 4 * d ^ 2 * s
                check size "S" { require swept(bore, stroke) between 14.94 cm3 and 14.95 cm3 }""";

        assertJudged(text, "bore 27.7 mm, stroke 24.8 mm", "size passes");
        assertJudged(text, "bore 28.7 mm, stroke 24.8 mm", "size fails");
    }

    /** sin 30° = 1/2, cos 60° = 1/2, tan 45° = 1 (any table); √2 lies between 1.41421 and 1.41422. */
    @Test
    void the_functions_give_what_a_table_gives() {
        String text = """
                observe a : angle
                check s "S" { require sin(a) between 0.4999999 and 0.5000001 }
                check k "K" { require cos(2 * a) between 0.4999999 and 0.5000001 }
                check t "T" { require tan(1.5 * a) between 0.9999999 and 1.0000001 }
                check r "R" { require sqrt(4 * sin(a)) between 1.41421 and 1.41422 }
                check m "M" { require min(a, 20 deg, 40 deg) at most 20 deg and max(a, 20 deg) at least 30 deg }
                check b "B" { require abs(a - 40 deg) between 9.999 deg and 10.001 deg }""";

        assertJudged(text, "a 30 deg", "s passes, k passes, t passes, r passes, m passes, b passes");
        assertJudged(text, "a 31 deg", "s fails, k fails, t fails, r fails, b fails");
    }

    @Test
    void a_yes_may_be_compared_with_yes_and_no_and_says_no_more_than_itself() {
        String text = """
                observe free : yes/no
                check a "A" { require free is yes }
                check b "B" { require free is not no }
                check c "C" { require free is no }
                check d "D" { require free }""";

        assertJudged(text, "free yes", "a passes, b passes, c fails, d passes");
        assertJudged(text, "free no", "a fails, b fails, c passes, d fails");
    }

    @Test
    void what_is_counted_and_what_is_written_may_be_equal() {
        String text = """
                observe flips : count
                observe word : text
                check a "A" { require flips is 8 }
                check b "B" { require flips is not 8 }
                check c "C" { require word is "dry" }
                check d "D" { require word is not "dry" }
                check e "E" { require word is one of wet, dry }
                check f "F" { require flips < 8 }
                check g "G" { require flips > 7 }""";

        assertJudged(
                text, "flips 8, word \"dry\"", "a passes, b fails, c passes, d fails, e passes, f fails, g passes");
        assertJudged(
                text, "flips 7, word \"oily\"", "a fails, b passes, c fails, d passes, e fails, f passes, g fails");
    }

    @Test
    void grades_compare_by_their_order_and_options_by_their_name() {
        String text = """
                observe feel : grade none < soft < firm < hard
                observe arm : one of metal, "glass filled"
                check a "A" { require feel at least soft }
                check b "B" { require feel at most soft }
                check c "C" { require feel between soft and firm }
                check d "D" { require feel > soft }
                check e "E" { require feel < soft }
                check f "F" { require arm is "glass filled" }
                check g "G" { require arm is one of metal, "glass filled" }
                check h "H" { require arm is not metal }""";

        assertJudged(
                text,
                "feel firm, arm \"glass filled\"",
                "a passes, b fails, c passes, d passes, e fails, f passes, g passes, h passes");
        assertJudged(text, "feel none, arm metal", "a fails, b passes, c fails, d fails, e passes, f fails, h fails");
        assertJudged(text, "feel hard, arm metal", "c fails");
    }

    @Test
    void what_was_promised_in_the_box_must_be_found_in_it() {
        String text = "observe box : items\ncheck all \"All\" { require box has all of engine.box }";

        assertJudged(
                text,
                "box items \"engine\", \"exhaust\", \"glow plug\", \"feeler leaf\", \"open-end wrench\", \"manual\"",
                "all passes");
        assertJudged(text, "box items \"engine\"", "all fails");
    }

    @Test
    void a_name_that_is_an_option_and_a_value_means_the_option_where_an_option_is_wanted() {
        String text = """
                observe arm : one of metal, plastic
                observe metal : length
                check a "A" { require arm is metal and metal at most 3 mm }""";

        assertThat(diagnostics(text)).isEmpty();
        assertJudged(text, "arm metal, metal 1 mm", "a passes");
    }
}
