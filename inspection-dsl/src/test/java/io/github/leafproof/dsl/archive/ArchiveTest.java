package io.github.leafproof.dsl.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchiveTest {

    @TempDir
    private Path here = Path.of("");

    private Path write(String name, String text) throws IOException {
        Path file = here.resolve(name);
        Files.createDirectories(file.resolveSibling(""));
        return Files.writeString(file, text);
    }

    private List<String> places(Path... sources) {
        try (Stream<Filed> sheets = Archive.at(List.of(sources)).sheets()) {
            return sheets.map(filed -> filed.place().toString().replace(Filed.named(here) + "/", ""))
                    .toList();
        }
    }

    @Test
    void a_folder_is_gone_through_by_names_and_its_lines_are_sheets() throws IOException {
        write("b.json", "{}");
        write("a/2.json", "{}");
        write("a/1.jsonl", "{}\n\n{}\n");
        write("a/notes.txt", "no sheet");
        write("c/deep/er.json", "{}");
        write("B.json", "{}");

        assertThat(places(here))
                .containsExactly("B.json", "a/1.jsonl:1", "a/1.jsonl:3", "a/2.json", "b.json", "c/deep/er.json");
    }

    @Test
    void sources_come_in_the_order_in_which_they_are_named_and_a_file_may_be_called_anything() throws IOException {
        Path first = write("z.sheet", "{}");
        Path second = write("a.json", "{}");

        assertThat(places(first, second, first)).containsExactly("z.sheet", "a.json", "z.sheet");
        assertThat(places()).isEmpty();
    }

    @Test
    void a_link_to_a_folder_is_not_followed_in_a_folder() throws IOException {
        write("a/1.json", "{}");
        Files.createSymbolicLink(here.resolve("a/again"), here.resolve("a"));

        assertThat(places(here)).containsExactly("a/1.json");
        assertThat(places(here.resolve("a/again"))).containsExactly("a/again/1.json");
    }

    @Test
    void what_is_not_there_is_a_sheet_that_cannot_be_read() {
        try (Stream<Filed> sheets = Archive.at(List.of(here.resolve("none.jsonl"), here.resolve("none.json")))
                .sheets()) {
            assertThat(sheets.map(filed -> filed.sheet().problems().get(0).code()))
                    .containsExactly("LP603", "LP601");
        }
    }

    @Test
    void lines_that_come_in_name_their_files_from_the_folder_they_are_said_to_be_of() {
        Archive.Source.Lines lines = new Archive.Source.Lines(
                "standard input", new ByteArrayInputStream(Kept.bytes("{}\n{}")), Path.of("shop"));

        try (Stream<Filed> sheets = Archive.of(List.of(lines)).sheets()) {
            List<Filed> all = sheets.toList();
            assertThat(all)
                    .extracting(filed -> filed.place().toString())
                    .containsExactly("standard input:1", "standard input:2");
            assertThat(all).extracting(Filed::folder).containsOnly(Path.of("shop"));
            assertThat(all.get(0).reached()).isNaN();
        }
    }

    @Test
    void how_much_is_behind_only_grows_and_ends_with_all() throws IOException {
        write("a/1.json", "{}");
        write("a/2.jsonl", "{}\n{}\n{}\n{}");
        write("b.json", "{}");

        try (Stream<Filed> sheets =
                Archive.at(List.of(here, here.resolve("b.json"))).sheets()) {
            List<Double> reached = sheets.map(Filed::reached).toList();
            assertThat(reached).isSorted().hasSize(7);
            assertThat(reached.get(0)).isEqualTo(0.125);
            assertThat(reached.get(6)).isEqualTo(1.0);
        }
    }

    @Test
    void cards_and_reports_that_lie_among_the_sheets_are_told_from_them() throws IOException {
        write("card.json", "{\"model\": \"Quillan Q15-4\"}");
        write("report.json", "{\"format\": \"leafproof-report/1\", \"sheet\": {}}");
        write("list.json", "[]");
        write("sheet.json", "{\"entries\": 7}");
        write("torn.json", "{\"model\": ");
        write("void.json", "");

        try (Stream<Filed> sheets = Archive.at(List.of(here)).sheets()) {
            assertThat(sheets.filter(Filed::isSomethingElse)
                            .map(filed -> filed.place().file().replace(Filed.named(here) + "/", "")))
                    .containsExactly("card.json", "list.json", "report.json");
        }
        assertThat(Filed.of(here.resolve("card.json")).isSomethingElse()).isFalse();
    }
}
