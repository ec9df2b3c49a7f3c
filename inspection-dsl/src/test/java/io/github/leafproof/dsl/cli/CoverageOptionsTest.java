package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code rehearse --coverage}: what a person sees, and what a program that started it is told. */
class CoverageOptionsTest {

    @TempDir
    private Path here;

    private String procedure = "";

    @BeforeEach
    void write_a_procedure_that_is_half_rehearsed() throws IOException {
        procedure = Files.writeString(here.resolve("dry.inspection"), """
                        procedure dry "Dry" revision 1
                        observe dry : yes/no ask "Dry inside?"
                        check no_liquid "No liquid" critical { require dry if fails advise "Let it run out" }
                        release { reject when any critical fails   ready otherwise }
                        rehearse "a wet engine" {
                          engine "BENCH/cards/quillan-15.json" gauges "BENCH/trays/bench-one.json"
                          enter dry no
                          expect no_liquid fails, release reject
                        }
                        """.replace(
                                "BENCH", Terminal.BENCH.toAbsolutePath().toString()))
                .toString();
    }

    @Test
    void it_tells_how_much_is_shown_and_what_is_not() {
        Golden.hold(
                "cli/coverage",
                Terminal.run("rehearse", "--coverage", procedure).whole(here));
    }

    @ParameterizedTest
    @CsvSource({"50, 0", "50 %, 0", "51%, 1", "100, 1", "0, 0", "50.1, 1"})
    void less_than_was_asked_for_ends_with_one(String least, int exit) {
        // Three of six: fails, its advice, and the first line of the release.
        assertThat(Terminal.run("rehearse", "--min", least, procedure).exit()).isEqualTo(exit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ninety", "-1", "101", "", "9 0", "1e9"})
    void what_is_no_percentage_is_refused_with_what_is_meant(String least) {
        Terminal said = Terminal.run("rehearse", "--min", least, procedure);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("is not a percentage from 0 to 100, such as 90");
    }

    @Test
    void each_procedure_has_to_show_enough_by_itself() {
        String whole = Terminal.BENCH.resolve("first_look.inspection").toString();

        assertThat(Terminal.run("rehearse", "--min", "55", whole).exit()).isZero();
        assertThat(Terminal.run("rehearse", "--min", "55", procedure, whole).exit())
                .isEqualTo(1);
        assertThat(Terminal.run("rehearse", "--min", "55", whole, procedure).exit())
                .isEqualTo(1);
    }

    @Test
    void pages_and_files_are_written_beside_what_is_printed_even_for_programs() throws IOException {
        Path json = here.resolve("cover.json");
        Path html = here.resolve("cover.html");

        Terminal said = Terminal.run(
                "rehearse",
                "--json",
                "--min",
                "90",
                "--coverage-json",
                json.toString(),
                "--coverage-html",
                html.toString(),
                procedure);

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.out()).startsWith("{").doesNotContain("things that it can say");
        assertThat(said.err()).endsWith("its rehearsals show 50 %, less than the 90 % asked for\n");
        assertThat(Files.readString(json)).startsWith("{\n  \"format\" : \"leafproof-coverage/1\"");
        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>");
    }

    @Test
    void a_procedure_is_never_written_over_by_its_coverage() throws IOException {
        String before = Files.readString(Path.of(procedure));

        Terminal said = Terminal.run("rehearse", "--coverage-html", procedure, procedure);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("--coverage-html would write the coverage over");
        assertThat(Files.readString(Path.of(procedure))).isEqualTo(before);
    }

    @Test
    void a_place_where_nothing_can_be_written_is_bad_input() {
        Terminal said = Terminal.run(
                "rehearse", "--coverage-json", here.resolve("none/cover.json").toString(), procedure);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("none/cover.json");
    }

    @Test
    void nobody_is_told_who_does_not_ask() {
        assertThat(Terminal.run("rehearse", procedure).out()).doesNotContain("%");
    }
}
