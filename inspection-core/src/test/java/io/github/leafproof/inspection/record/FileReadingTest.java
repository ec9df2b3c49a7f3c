package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FileReadingTest {
    private static final String SMALLEST = "{ \"model\": \"Q\", \"maker\": \"Quillan\" }";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(Format.class)
    void a_sound_file_is_read_without_a_word(Format format) throws IOException {
        assertThat(format.parse("good.json", Files.readAllBytes(Good.file(format)))
                        .problems())
                .isEmpty();
    }

    @Test
    void the_digest_is_that_of_the_files_bytes() {
        // FIPS 180-4's example for "abc" begins ba7816bf (from memory); here sha256sum of these 36 bytes.
        Document<?> document =
                CardFile.parse("q.json", SMALLEST.getBytes(UTF_8)).orElseThrow();

        assertThat(FileBytes.sha256("abc".getBytes(UTF_8)))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(document.sha256()).isEqualTo(FileBytes.sha256(SMALLEST.getBytes(UTF_8)));
        assertThat(document.name()).isEqualTo("q.json");
    }

    @Test
    void a_byte_order_mark_is_no_mistake_and_counts_in_the_digest() {
        byte[] marked = ("\uFEFF" + SMALLEST).getBytes(UTF_8);

        Document<?> document = CardFile.parse("q.json", marked).orElseThrow();

        assertThat(document.sha256()).isEqualTo(FileBytes.sha256(marked));
    }

    @Test
    void a_file_is_named_as_it_was_asked_for() {
        assertThat(CardFile.read(Good.CARD).orElseThrow().name())
                .isEqualTo("src/test/resources/record/good/cards/quillan-15.json");
    }

    @Test
    void a_missing_file_is_told_with_the_nearest_name_beside_it() throws IOException {
        Files.writeString(folder.resolve("quillan-15.json"), SMALLEST);

        assertThat(CardFile.read(folder.resolve("quilan-15.json")).problems())
                .singleElement()
                .asString()
                .endsWith(
                        "quilan-15.json: error LP601: there is no such file\n   help: did you mean \"quillan-15.json\"?");
        assertThat(CardFile.read(folder.resolve("other.json")).problems())
                .singleElement()
                .asString()
                .endsWith("help: check its name and its folder");
        assertThat(CardFile.read(folder.resolve("none").resolve("other.json")).problems())
                .singleElement()
                .asString()
                .endsWith("help: check its name and its folder");
        assertThat(CardFile.read(Path.of("")).problems()).hasSize(1);
    }

    @Test
    void a_folder_is_no_file() {
        assertThat(SheetFile.read(folder).problems())
                .singleElement()
                .asString()
                .contains("error LP602: this is a folder, not a file");
    }

    @Test
    void a_file_behind_a_file_cannot_be_read() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), SMALLEST);

        assertThat(TrayFile.read(file.resolve("b.json")).problems())
                .singleElement()
                .asString()
                .contains("error LP603: the file cannot be read");
    }

    @Test
    void a_file_of_more_than_sixteen_mebibytes_is_refused_unread() throws IOException {
        byte[] large = new byte[FileBytes.MOST + 1];
        Path file = Files.write(folder.resolve("large.json"), large);

        assertThat(ReportFile.read(file).problems()).extracting(Problem::code).containsExactly("LP604");
        assertThat(ReportFile.parse("large.json", large).problems())
                .extracting(Problem::code)
                .containsExactly("LP604");
    }

    @Test
    void a_file_of_nothing_but_blanks_is_empty() {
        for (String nothing : new String[] {"", " \n\t", "\uFEFF", "\uFEFF\n"}) {
            assertThat(CardFile.parse("e.json", nothing.getBytes(UTF_8)).problems())
                    .extracting(Problem::toString)
                    .containsExactly("e.json: error LP605: the file is empty\n"
                            + "   help: an interrupted copy leaves such files; copy it again");
        }
    }

    @Test
    void bytes_that_are_no_text_are_told_with_their_place() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("{ \"model\": \"Quillan\",\n  \"maker\": \"µ€😀 ".getBytes(UTF_8));
        bytes.write("grün\" }".getBytes(ISO_8859_1));

        assertThat(CardFile.parse("l.json", bytes.toByteArray()).problems())
                .extracting(Problem::toString)
                .containsExactly("l.json:2:19: error LP606: the bytes here are not UTF-8 text\n"
                        + "   help: save the file as UTF-8; every editor can, and JSON is always UTF-8");
    }

    @Test
    void a_file_that_ends_within_a_character_was_cut_off() {
        byte[] cut = {'{', '"', (byte) 0xE2, (byte) 0x82};

        assertThat(CardFile.parse("l.json", cut).problems())
                .extracting(Problem::code)
                .containsExactly("LP606");
    }

    @Test
    void utf_16_is_called_by_its_name() {
        byte[] littleEndian = ("\uFEFF" + SMALLEST).getBytes(UTF_16LE);

        assertThat(CardFile.parse("w.json", SMALLEST.getBytes(UTF_16)).problems())
                .singleElement()
                .asString()
                .startsWith("w.json: error LP606: the file is UTF-16, not UTF-8");
        assertThat(CardFile.parse("w.json", littleEndian).problems())
                .extracting(Problem::message)
                .containsExactly("the file is UTF-16, not UTF-8");
    }

    @Test
    void lines_may_end_as_any_machine_ends_them() {
        for (String end : new String[] {"\n", "\r\n", "\r"}) {
            String text = "{ \"model\": \"😀\"," + end + end + " \"wheels\": 4, \"maker\": \"Quillan\" }";

            assertThat(CardFile.parse("q.json", text.getBytes(UTF_8)).problems())
                    .extracting(Problem::place)
                    .containsExactly("3:2 $.wheels");
        }
    }

    @Test
    void columns_count_characters_as_a_person_does() {
        String text = "{ \"model\": \"😀😀\", \"maker\": \"ğ😀\", \"wheels\": 4 }";

        assertThat(CardFile.parse("q.json", text.getBytes(UTF_8)).problems())
                .extracting(Problem::place)
                .containsExactly("1:33 $.wheels");
    }

    @Test
    void keys_that_would_confuse_a_path_are_quoted_and_kept_short() {
        String text = "{ \"model\": \"Q\", \"maker\": \"Quillan\", \"it's\": 1, \"a\\\\b\": 1, \"\\u001b[2J\": 1, \""
                + "x".repeat(100) + "\": 1 }";

        assertThat(CardFile.parse("q.json", text.getBytes(UTF_8)).problems())
                .extracting(problem -> problem.place().replaceFirst("^\\S+ ", ""))
                .containsExactly("$['it\\'s']", "$['a\\\\b']", "$['\uFFFD[2J']", "$['" + "x".repeat(60) + "…']");
    }

    @Test
    void text_that_turns_the_direction_of_what_follows_is_refused() {
        String text = "{ \"model\": \"Q \\u202e15\", \"maker\": \"Quillan \\u2066\" }";

        assertThat(CardFile.parse("q.json", text.getBytes(UTF_8)).problems())
                .extracting(Problem::code)
                .containsExactly("LP616", "LP616");
    }

    @Test
    void letters_of_every_script_and_joiners_are_welcome() {
        String text = "{ \"model\": \"İĞ 日本 👨\u200D🔧\", \"maker\": \"Quillan\" }";

        assertThat(CardFile.parse("q.json", text.getBytes(UTF_8))
                        .orElseThrow()
                        .content()
                        .model())
                .isEqualTo("İĞ 日本 👨\u200D🔧");
    }

    @Test
    void a_word_too_long_to_show_is_shown_in_part() {
        String text = "{ \"model\": \"Q\", \"maker\": \"Quillan\", \"throttle_arm\": \"" + "wood".repeat(50) + "\" }";

        assertThat(CardFile.parse("q.json", text.getBytes(UTF_8)).problems())
                .extracting(Problem::message)
                .containsExactly("\"" + "wood".repeat(15) + "…\" is not a word for throttle_arm");
    }
}
