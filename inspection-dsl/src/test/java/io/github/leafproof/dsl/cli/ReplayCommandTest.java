package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.archive.Kept;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayCommandTest {

    private static final String STIFF = Kept.felt("3", "0.04", "0.05")
            .replace("}]}]}", "}]}, {\"observe\": \"turning\", \"value\": \"stiffly\"}]}");

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void aShop() throws IOException {
        write("old.inspection", Kept.OLD);
        write("new.inspection", Kept.NEW);
        write("sheets/card.json", Workshop.of("").card());
        write("sheets/tray.json", Workshop.of("").tray());
        write("sheets/1.json", Kept.felt("1", "0.04", "0.05"));
        write("sheets/2.json", Kept.felt("2", "0.05", "0.08"));
        write("sheets/3.json", STIFF);
        write("sheets/4.json", Kept.felt("4", "0.08", "0.10"));
        write(
                "sheets/5.json",
                Kept.felt("5", "0.05", "0.08").replace("\"lash\", \"revision\"", "\"tank\", \"revision\""));
    }

    private void write(String name, String text) throws IOException {
        Path file = here.resolve(name);
        Files.createDirectories(file.resolveSibling(""));
        Files.writeString(file, text);
    }

    private String path(String name) {
        return name.startsWith("-") ? name : here.resolve(name).toString();
    }

    private Terminal replay(String... sheetsAndOptions) {
        return revisions("old.inspection", "new.inspection", sheetsAndOptions);
    }

    private Terminal revisions(String old, String now, String... sheetsAndOptions) {
        List<String> arguments = new ArrayList<>(List.of("replay", path(old), path(now)));
        boolean value = false;
        for (String each : sheetsAndOptions) {
            arguments.add(value || each.startsWith("-") ? each : path(each));
            value = each.equals("--show");
        }
        return Terminal.run(arguments.toArray(String[]::new));
    }

    /** The digest of a test's own procedure says nothing to a reader. */
    private void hold(String name, Terminal said) {
        Golden.hold("cli/" + name, said.whole(here));
    }

    @Test
    void engines_that_come_out_otherwise_are_shown_with_the_limit_that_changed() {
        Terminal said = replay("sheets");

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).isEmpty();
        hold("replay-text", said);
    }

    @Test
    void programs_get_a_line_for_every_sheet() {
        Terminal said = replay("sheets", "--json");

        assertThat(said.exit()).isEqualTo(1);
        hold("replay-json", said);
        assertThat(said.out().lines()).hasSize(1 + 7 + 1).allMatch(line -> line.startsWith("{"));
    }

    @Test
    void nothing_differs_between_a_revision_and_itself() {
        Terminal said = revisions("old.inspection", "old.inspection", "sheets");

        assertThat(said.exit()).isZero();
        assertThat(said.out()).endsWith("""
                5 sheets: 4 judged, 4 the same, 0 differing, 1 of other procedures
                passed over: 2 files that are no sheets
                """);
    }

    @Test
    void damaged_sheets_in_the_middle_are_listed_and_the_others_go_on() throws IOException {
        String lines = String.join(
                "\n",
                Kept.felt("1", "0.05", "0.08"),
                Kept.felt("2", "0.05", "0.08").substring(0, 150),
                "",
                Kept.felt("4", "0.05", "0.08").replace("\"date\"", "\"day\""),
                Kept.felt("5", "0.05", "0.08").replace("card.json", "none.json"),
                Kept.felt("6", "0.05", "0.08").replace("card.json", "none.json"),
                Kept.felt("7", "0.05", "0.08").replace("\"lash\", \"trials\"", "\"lsah\", \"trials\""),
                Kept.felt("8", "0.04", "0.05"));
        write("sheets/kept.jsonl", lines);

        Terminal said = replay("sheets/kept.jsonl");

        assertThat(said.exit()).isEqualTo(1);
        hold("replay-damaged", said);
    }

    @Test
    void a_clean_result_with_damaged_sheets_is_not_called_clean() throws IOException {
        write("sheets/9.json", "{");

        Terminal said = revisions("old.inspection", "old.inspection", "sheets");

        assertThat(said.exit()).isEqualTo(3);
        assertThat(said.out())
                .contains("6 sheets: 4 judged, 4 the same, 0 differing, 1 damaged, 1 of other procedures");
    }

    @Test
    void an_archive_of_which_nothing_is_judged_is_bad_input() throws IOException {
        write("none.jsonl", "\n");
        write("torn.jsonl", "{\n");
        Files.createDirectories(here.resolve("empty"));

        assertThat(replay("none.jsonl").exit()).isEqualTo(2);
        assertThat(replay("empty").err()).isEqualTo("""
                leafproof: no sheet was judged
                   help: name job sheets of this procedure, or a folder that they lie in
                """);
        assertThat(replay("sheets/5.json").exit()).isEqualTo(2);
        assertThat(replay("torn.jsonl").err()).endsWith("""
                leafproof: no sheet was judged
                   help: mend what is listed above
                """);
    }

    @Test
    void what_is_not_there_is_told_before_anything_is_judged() {
        Terminal said = replay("sheets", "sheets/11.json", "nowhere");

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        hold("replay-missing", said);
    }

    @Test
    void two_procedures_and_broken_ones_are_not_compared() throws IOException {
        write("tank.inspection", Kept.OLD.replace("procedure lash", "procedure tank"));
        write("broken.inspection", Kept.OLD.replace("require free", "require fere"));

        Terminal two = revisions("old.inspection", "tank.inspection", "sheets");
        Terminal broken = revisions("old.inspection", "broken.inspection", "sheets");

        assertThat(two.exit()).isEqualTo(2);
        hold("replay-two-procedures", two);
        assertThat(broken.exit()).isEqualTo(2);
        assertThat(broken.err()).contains("LP301");
    }

    @Test
    void only_so_many_are_shown_and_all_are_counted() {
        Terminal one = replay("sheets", "--show", "1");
        Terminal none = replay("sheets", "--show", "0");

        assertThat(one.out())
                .contains("serial Q15-2")
                .doesNotContain("serial Q15-4")
                .contains("""
                And 1 engine more differs; --show 2 shows all, --json lists every sheet.
                """);
        assertThat(none.out()).contains("And 2 engines more differ").contains("2 differing");
        assertThat(replay("sheets", "--show", "few").err()).isEqualTo("""
                leafproof: invalid value for option '--show': it is a number of engines, such as 20, and not few
                   help: leafproof replay --help shows what it takes
                """);
    }

    @Test
    void a_sheet_in_the_place_of_a_revision_is_told_from_one() {
        Terminal said = revisions("old.inspection", "sheets/1.json", "sheets");

        assertThat(said.exit()).isEqualTo(2);
        hold("replay-sheet-for-revision", said);
    }

    @Test
    void sheets_come_in_on_standard_input_and_name_their_files_from_this_folder() throws IOException {
        InputStream before = System.in;
        try {
            System.setIn(
                    new ByteArrayInputStream((Kept.felt("2", "0.05", "0.08") + "\n").getBytes(StandardCharsets.UTF_8)));
            Terminal said = replay(
                    "-", "--card=" + path("sheets/card.json"), "--tray=" + path("sheets/tray.json"), "--units=inch");
            assertThat(said.exit()).isEqualTo(1);
            assertThat(said.out())
                    .contains("standard input:1, sheet 2, 2026-03-04")
                    .contains("thou");
        } finally {
            System.setIn(before);
        }
        assertThat(replay("-", "-").err()).startsWith("leafproof: standard input can be read once");
    }

    @Test
    void colour_only_repeats_what_the_words_say() {
        String[] arguments = {"replay", path("old.inspection"), path("new.inspection"), path("sheets")};

        Terminal coloured = Terminal.run(true, arguments);

        assertThat(coloured.out()).isNotEqualTo(replay("sheets").out());
        assertThat(coloured.out().replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(replay("sheets").out());
    }

    @Test
    void what_a_revision_no_longer_observes_or_cannot_read_is_shown() throws IOException {
        write(
                "new.inspection",
                Kept.OLD
                        .replace("observe turning : one of freely, stiffly ask \"How does it turn?\" optional\n", "")
                        .replace("check turns \"It turns freely\" { require turning is freely }\n", "")
                        .replace("free : yes/no", "free : count")
                        .replace("require free", "require free at least 1"));
        Terminal unreadable = replay("sheets/3.json");
        write(
                "new.inspection",
                Kept.OLD
                        .replace("observe turning : one of freely, stiffly ask \"How does it turn?\" optional\n", "")
                        .replace("check turns \"It turns freely\" { require turning is freely }\n", ""));
        Terminal dropped = replay("sheets/3.json");

        hold("replay-unreadable", unreadable);
        hold("replay-dropped", dropped);
    }
}
