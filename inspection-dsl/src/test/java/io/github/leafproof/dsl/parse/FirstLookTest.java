package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Declaration;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The first sketch of the language that was ever made still reads without a word of complaint. */
class FirstLookTest {

    @Test
    void the_first_look_is_read_without_complaint() throws IOException {
        Parsed parsed = ProcedureParser.parse(firstLook());

        assertThat(parsed.problems()).isEmpty();
        assertThat(parsed.tree().declarations())
                .extracting(declaration -> declaration.getClass().getSimpleName())
                .containsExactly(
                        "Header",
                        "Decide",
                        "Setup",
                        "Setup",
                        "Setup",
                        "Setup",
                        "Gauge",
                        "Gauge",
                        "Gauge",
                        "Stage",
                        "Stage",
                        "Rehearse");
    }

    @Test
    void a_setup_tells_the_way_from_state_to_state_and_what_is_dangerous_about_it() throws IOException {
        Declaration.Setup fuel = (Declaration.Setup)
                ProcedureParser.parse(firstLook()).tree().declarations().get(5);

        assertThat(fuel.name()).hasToString("fuel");
        assertThat(fuel.starts()).hasToString("none");
        assertThat(fuel.changes()).singleElement().satisfies(change -> {
            assertThat(change.how().plain()).isEqualTo("Bring a tank with a little fuel to the inlet");
            assertThat(change.hazards()).map(Object::toString).containsExactly("fuel");
        });
        assertThat(fuel.whiles())
                .singleElement()
                .satisfies(state ->
                        assertThat(state.hazards()).map(Object::toString).containsExactly("fuel", "fire"));
    }

    private static SourceText firstLook() throws IOException {
        try (InputStream file = FirstLookTest.class.getResourceAsStream("/first-look.inspection")) {
            return SourceText.of("first-look.inspection", new String(file.readAllBytes(), StandardCharsets.UTF_8));
        }
    }
}
