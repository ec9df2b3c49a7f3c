package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.draw.DotText;
import io.github.leafproof.dsl.draw.MermaidText;
import io.github.leafproof.dsl.draw.Picture;
import io.github.leafproof.dsl.draw.SvgDrawing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The first look of the bench, drawn; a person has looked at each of these. */
class DrawingsTest {
    private static final Path EXPECTED = Project.BENCH.resolve("expected/drawn");

    @Test
    void the_procedure_is_drawn_as_a_person_has_seen_it() throws IOException {
        Picture picture = Picture.of(Bench.FIRST_LOOK.graph());

        Golden.holds(EXPECTED.resolve("first_look.svg"), SvgDrawing.of(picture));
        Golden.holds(EXPECTED.resolve("first_look.dot"), DotText.of(picture));
        Golden.holds(EXPECTED.resolve("first_look.mmd"), MermaidText.of(picture));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0412-trap", "0413-warm"})
    void with_a_sheet_the_outcomes_are_drawn_as_a_person_has_seen_them(String sheet) throws IOException {
        Picture picture = Picture.of(Bench.judgement(sheet + ".json"));

        Golden.holds(EXPECTED.resolve(sheet + ".svg"), SvgDrawing.of(picture));
        Golden.holds(EXPECTED.resolve(sheet + ".dot"), DotText.of(picture));
        Golden.holds(EXPECTED.resolve(sheet + ".mmd"), MermaidText.of(picture));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0411-clean", "0414-leak", "0415-unfinished", "0416-contradiction", "0418-plastic-arm"})
    void whoever_sees_no_colour_reads_the_outcome_in_letters_and_words(String sheet) {
        Picture picture = Picture.of(Bench.judgement(sheet + ".json"));
        String svg = SvgDrawing.of(picture);

        Bench.judgement(sheet + ".json")
                .verdicts()
                .forEach(verdict -> assertThat(svg)
                        .contains(
                                ">" + verdict.outcome().word().replace('_', ' ').toUpperCase(Locale.ROOT) + "</text>")
                        .contains(">" + verdict.outcome().name().charAt(0) + "</text>"));
    }
}
