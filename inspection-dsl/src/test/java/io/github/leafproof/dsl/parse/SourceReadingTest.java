package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceReadingTest {

    @TempDir
    private Path folder;

    @Test
    void a_file_is_known_by_the_name_it_was_asked_for_by() throws IOException {
        Path file = write("shop.inspection", "language 1\n".getBytes(StandardCharsets.UTF_8));

        assertThat(SourceReading.read(file, "shop.inspection").source()).hasValueSatisfying(source -> {
            assertThat(source.name()).isEqualTo("shop.inspection");
            assertThat(source.text()).isEqualTo("language 1\n");
        });
        assertThat(SourceReading.read(file).source()).map(SourceText::name).hasValue(file.toString());
    }

    /** The digest is what {@code printf 'abc' | sha256sum} says; "abc" is also the first example of FIPS 180-4's test vectors (from memory). */
    @Test
    void a_file_is_recognised_by_its_bytes() throws IOException {
        Path file = write("a.inspection", "abc".getBytes(StandardCharsets.UTF_8));

        assertThat(SourceReading.read(file).source())
                .map(SourceText::sha256)
                .hasValue("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_text_but_of_the_file() throws IOException {
        Path file = write("a.inspection", "\uFEFFlanguage 1".getBytes(StandardCharsets.UTF_8));

        SourceText source = SourceReading.read(file).source().orElseThrow();

        assertThat(source.text()).isEqualTo("language 1");
        assertThat(source.sha256())
                .isNotEqualTo(SourceText.of("a", "language 1").sha256());
    }

    @Test
    void a_file_that_is_not_there_is_said_to_be_missing() {
        SourceReading reading = SourceReading.read(folder.resolve("none.inspection"), "none.inspection");

        assertThat(reading.source()).isEmpty();
        assertThat(DiagnosticPrinter.print(reading.problems(), false)).isEqualTo("""
                        none.inspection: error LP101: there is no such file
                           help: look at the name and the folder; a procedure's name ends in .inspection
                        """);
    }

    @Test
    void a_folder_is_no_procedure() {
        assertThat(code(SourceReading.read(folder))).isEqualTo(Code.LP102);
    }

    @Test
    void an_empty_file_and_one_of_blanks_hold_nothing() throws IOException {
        assertThat(code(SourceReading.read(write("a", new byte[0])))).isEqualTo(Code.LP105);
        assertThat(code(SourceReading.read(write("b", "\uFEFF \n\t\n".getBytes(StandardCharsets.UTF_8)))))
                .isEqualTo(Code.LP105);
    }

    @Test
    void a_sheet_a_card_or_a_tray_in_the_place_of_a_procedure_is_told_from_one() throws IOException {
        for (String json : List.of("{\"sheet\": \"0412\"}", "\uFEFF\n { \n\t\"tray\": 1", "{}")) {
            assertThat(code(SourceReading.read(write("a.json", json.getBytes(StandardCharsets.UTF_8)))))
                    .isEqualTo(Code.LP147);
        }
        // A brace alone is a procedure with a mistake in it.
        assertThat(SourceReading.read(write("b", "{ language 1 }".getBytes(StandardCharsets.UTF_8)))
                        .source())
                .isPresent();
    }

    @Test
    void what_is_not_utf8_is_shown_with_its_line() throws IOException {
        Path file = write("a.inspection", "language 1\n// Schl\u00FCssel\n".getBytes(StandardCharsets.ISO_8859_1));

        SourceReading reading = SourceReading.read(file, "a.inspection");

        assertThat(DiagnosticPrinter.print(reading.problems(), false)).isEqualTo("""
                        a.inspection:2:8: error LP104: the file is not UTF-8: the byte FC cannot stand here
                            2 | // Schl\uFFFDssel
                              |        ^
                           help: save it as UTF-8; most editors ask for the encoding when saving under a name
                        """);
    }

    @Test
    void a_file_in_utf16_is_said_to_be_so() throws IOException {
        Path file = write("a.inspection", "language 1".getBytes(StandardCharsets.UTF_16));

        assertThat(SourceReading.read(file).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("UTF-16"));
    }

    @Test
    void a_letter_cut_in_two_by_the_end_is_not_utf8() throws IOException {
        Path file = write("a.inspection", new byte[] {'/', '/', (byte) 0xC3});

        assertThat(code(SourceReading.read(file))).isEqualTo(Code.LP104);
    }

    @Test
    void sixteen_mebibytes_are_read_and_one_byte_more_is_not() {
        byte[] most = new byte[16 << 20];
        java.util.Arrays.fill(most, (byte) '/');

        assertThat(SourceReading.of("a", most).source()).isPresent();
        assertThat(code(SourceReading.of("a", java.util.Arrays.copyOf(most, most.length + 1))))
                .isEqualTo(Code.LP701);
    }

    @Test
    void a_text_from_elsewhere_has_the_same_bound() {
        assertThat(ProcedureParser.parse(SourceText.of("a", "/".repeat((16 << 20) + 1)))
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.LP701));
    }

    private Path write(String name, byte[] bytes) throws IOException {
        return Files.write(folder.resolve(name), bytes);
    }

    private static Code code(SourceReading reading) {
        assertThat(reading.source()).isEmpty();
        assertThat(reading.problems()).hasSize(1);
        return reading.problems().get(0).code();
    }
}
