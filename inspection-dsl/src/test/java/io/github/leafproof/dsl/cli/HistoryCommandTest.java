package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryCommandTest {

    private static final List<String> SHEETS =
            List.of("0501-received.json", "0502-after-first-runs.json", "0503-run-in.json", "0504-a-year-later.json");

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void aBenchToSpoil() {
        Terminal.copyBench(here);
    }

    private String path(String name) {
        return here.resolve("history").resolve(name).toString();
    }

    private Terminal history(List<String> sheets, String... more) {
        List<String> arguments = new ArrayList<>(List.of("history"));
        sheets.forEach(sheet -> arguments.add(path(sheet)));
        arguments.addAll(List.of(more));
        return Terminal.run(arguments.toArray(String[]::new));
    }

    private void replace(String file, String written, String instead) throws IOException {
        Path spoilt = here.resolve("history").resolve(file);
        String text = Files.readString(spoilt);
        assertThat(text).contains(written);
        Files.writeString(spoilt, text.replace(written, instead));
    }

    @Test
    void the_exit_code_tells_what_is_left_to_do() {
        assertThat(history(SHEETS).exit()).isEqualTo(1);
        assertThat(history(SHEETS.subList(0, 1)).exit()).isZero();
        assertThat(history(SHEETS.subList(0, 3)).exit()).isEqualTo(1);
        assertThat(history(List.of(SHEETS.get(0), SHEETS.get(3))).exit()).isEqualTo(3);
        assertThat(history(SHEETS).err()).isEmpty();
    }

    @Test
    void the_order_in_which_sheets_are_named_makes_no_difference() {
        List<String> backwards = List.of(SHEETS.get(3), SHEETS.get(1), SHEETS.get(0), SHEETS.get(2));

        assertThat(history(backwards)).isEqualTo(history(SHEETS));
    }

    @Test
    void programs_get_json_and_people_the_text_beside_it() throws IOException {
        Path json = here.resolve("history.json");

        Terminal said = history(SHEETS, "--json", json.toString());

        assertThat(said).isEqualTo(history(SHEETS));
        assertThat(Files.readString(json))
                .startsWith("{\n  \"format\" : \"leafproof-history/1\",")
                .endsWith("}\n");
    }

    @Test
    void numbers_are_shown_in_the_units_asked_for() {
        assertThat(history(SHEETS, "--units", "inch").out())
                .contains("rises by 0.79 thou (u 0.17 thou) in 0.7 h of running, 1.12 thou (u 0.24 thou) in");
    }

    @Test
    void colour_only_repeats_what_the_words_say() {
        String[] arguments = Stream.concat(Stream.of("history"), SHEETS.stream().map(this::path))
                .toArray(String[]::new);

        Terminal coloured = Terminal.run(true, arguments);

        assertThat(coloured.out()).isNotEqualTo(history(SHEETS).out());
        assertThat(coloured.out().replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(history(SHEETS).out());
    }

    @Test
    void everything_that_keeps_the_sheets_from_being_a_history_is_told_at_once() throws IOException {
        replace("0501-received.json", "\"serial\": \"Q15-30977\", ", "");
        replace("0502-after-first-runs.json", "Q15-30977", "Q15-30971");
        replace("0503-run-in.json", "between_runs", "after_runs");
        replace("0504-a-year-later.json", "\"compression\"", "\"compresion\"");

        Terminal said = history(List.of(SHEETS.get(0), SHEETS.get(1), SHEETS.get(2), SHEETS.get(3), "none.json"));

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        Golden.hold("cli/history-all-wrong", said.whole(here));
    }

    @Test
    void an_engine_that_would_have_run_less_is_refused() throws IOException {
        replace("0503-run-in.json", "2.1 h", "0.5 h");

        Terminal said = history(SHEETS);

        assertThat(said.exit()).isEqualTo(2);
        Golden.hold("cli/history-running-less", said.whole(here));
    }

    @Test
    void a_sheet_of_an_older_revision_is_judged_by_the_revision_that_was_kept() throws IOException {
        Path now = here.resolve("history/between_runs.inspection");
        Files.copy(now, here.resolve("history/between_runs-1.inspection"));
        replace("between_runs.inspection", "revision 1", "revision 2");

        Terminal kept = history(SHEETS);
        Files.delete(here.resolve("history/between_runs-1.inspection"));
        Terminal gone = history(SHEETS);

        assertThat(kept.exit()).isEqualTo(1);
        assertThat(kept.err()).isEmpty();
        assertThat(gone.exit()).isEqualTo(2);
        assertThat(gone.err()).contains("LP672");
    }

    @Test
    void the_procedures_may_lie_elsewhere() throws IOException {
        Path shelf = Files.createDirectories(here.resolve("shelf/parts"));
        for (String file : List.of("cold_look.inspection", "between_runs.inspection", "parts/lash.inspection")) {
            Files.move(here.resolve("history").resolve(file), shelf.resolveSibling(file));
        }

        assertThat(history(SHEETS).err()).contains("LP688");
        assertThat(history(SHEETS, "--procedures", here.resolve("shelf").toString())
                        .exit())
                .isEqualTo(1);
    }

    @Test
    void a_sheet_that_names_a_way_out_of_the_folder_finds_no_procedure_there() throws IOException {
        replace("0501-received.json", "\"cold_look\"", "\"../first_look\"");

        assertThat(history(SHEETS.subList(0, 1)).err()).contains("LP688");
    }

    @Test
    void a_broken_procedure_is_told_once_however_many_sheets_name_it() throws IOException {
        replace("between_runs.inspection", "peak_rpm", "peak");
        replace("between_runs.inspection", "require joint_dry", "require joint_wet");

        Terminal said = history(SHEETS);

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err().split("joint_wet", -1)).hasSizeLessThan(5);
    }

    @Test
    void what_is_odd_about_a_tray_is_told_once_however_many_sheets_name_it() throws IOException {
        replace("trays/bench-2025.json", "\"measured\": \"0.030 mm\"", "\"measured\": \"0.300 mm\"");

        assertThat(history(SHEETS).err().lines().filter(line -> line.contains("LP682")))
                .hasSize(1);
    }

    @Test
    void nothing_that_a_history_is_made_from_is_written_over() throws IOException {
        for (String input : List.of(
                "0502-after-first-runs.json",
                "between_runs.inspection",
                "parts/lash.inspection",
                "trays/bench-2025.json",
                "cards/quillan-15.json")) {
            String before = Files.readString(here.resolve("history").resolve(input));

            Terminal said = history(SHEETS, "--json", path(input));

            assertThat(said.exit()).as(input).isEqualTo(2);
            assertThat(said.err()).contains("--json would write the history over ");
            assertThat(here.resolve("history").resolve(input)).hasContent(before);
        }
    }
}
