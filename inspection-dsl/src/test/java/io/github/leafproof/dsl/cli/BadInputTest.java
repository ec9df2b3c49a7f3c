package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is wrong with a file: it is said with place, reason and remedy, the exit code is 2, and nothing is lost. */
class BadInputTest {

    private static final int TEN_MEGABYTES = 10_000_000;

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void aBenchToSpoil() {
        Terminal.copyBench(here);
    }

    private String path(String name) {
        return here.resolve(name).toString();
    }

    /** Judges the trap with a spoilt bench; an older report stays as it was. */
    private Terminal inspect() throws IOException {
        Path report = Files.writeString(here.resolve("report.json"), "an older report");
        Terminal said = Terminal.run(
                "inspect",
                path("first_look.inspection"),
                "--sheet",
                path("sheets/0412-trap.json"),
                "--json",
                report.toString());
        assertThat(said.exit()).isEqualTo(2);
        assertThat(report).hasContent("an older report");
        return said;
    }

    private void replace(String file, String written, String instead) throws IOException {
        Path spoilt = here.resolve(file);
        String text = Files.readString(spoilt);
        assertThat(text).contains(written);
        Files.writeString(spoilt, text.replace(written, instead));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
                    unknown-key            | sheets/0412-trap.json | "sheet":         | "colour": "red", "sheet":
                    unknown-unit           | sheets/0412-trap.json | 21.4 °C          | 21.4 degX
                    unknown-leaf           | sheets/0412-trap.json | "0.10 mm"        | "0.07 mm"
                    unknown-observation    | sheets/0412-trap.json | "head"           | "heat"
                    other-dimension        | sheets/0412-trap.json | 21.4 °C          | 21.4 mm
                    not-a-number           | sheets/0412-trap.json | 21.4 °C          | NaN °C
                    overflow               | sheets/0412-trap.json | 21.4 °C          | 1e999 °C
                    other-procedure        | sheets/0412-trap.json | "first_look"     | "last_look"
                    other-revision         | sheets/0412-trap.json | "revision": 5    | "revision": 3
                    a-key-twice            | sheets/0412-trap.json | "revision": 5    | "revision": 5, "revision": 5
                    zero-uncertainty       | trays/bench-one.json  | "u": "0.001 mm"  | "u": "0 mm"
                    below-zero             | trays/bench-one.json  | "u": "0.001 mm"  | "u": "-0.001 mm"
                    a-leaf-twice           | trays/bench-one.json  | "0.03 mm"        | "0.05 mm"
                    a-gauge-lacking        | trays/bench-one.json  | "infrared"       | "thermometer"
                    """)
    void what_is_wrong_in_a_file_is_told(String name, String file, String written, String instead) throws IOException {
        replace(file, written, instead);

        Golden.hold("cli/bad-input/" + name, inspect().whole(here));
    }

    @ParameterizedTest
    @CsvSource({"first_look.inspection", "cards/quillan-15.json", "trays/bench-one.json", "sheets/0412-trap.json"})
    void a_file_that_is_missing_a_folder_empty_cut_off_or_noise_is_refused(String file) throws IOException {
        Path spoilt = here.resolve(file);
        byte[] whole = Files.readAllBytes(spoilt);
        byte[] noise = new byte[TEN_MEGABYTES];
        new Random(1).nextBytes(noise);

        Files.write(spoilt, Arrays.copyOf(whole, whole.length / 2));
        assertThat(inspect().err()).contains(": error LP");
        Files.write(spoilt, new byte[0]);
        assertThat(inspect().err()).contains("the file is empty");
        Files.write(spoilt, noise);
        assertThat(inspect().err()).contains("UTF-8");
        Files.delete(spoilt);
        assertThat(inspect().err()).contains("there is no such file");
        Files.createDirectory(spoilt);
        assertThat(inspect().err()).contains("folder");
    }

    @ParameterizedTest
    @CsvSource({"first_look.inspection", "cards/quillan-15.json", "trays/bench-one.json", "sheets/0412-trap.json"})
    void a_byte_order_mark_does_no_harm(String file) throws IOException {
        Path marked = here.resolve(file);
        Files.writeString(marked, "\uFEFF" + Files.readString(marked));

        Terminal said =
                Terminal.run("inspect", path("first_look.inspection"), "--sheet", path("sheets/0412-trap.json"));

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err()).isEmpty();
    }

    @Test
    void what_nests_ten_thousand_deep_is_refused_and_not_followed() throws IOException {
        String deep = "(".repeat(10_000) + "yes" + ")".repeat(10_000);
        Files.writeString(
                here.resolve("first_look.inspection"),
                "procedure x \"X\" revision 1\ncheck a \"A\" { require " + deep + " }\n");
        assertThat(inspect().err()).contains("LP702");
        Files.writeString(
                here.resolve("first_look.inspection"),
                "procedure x \"X\" revision 1\n" + "stage \"a\" { ".repeat(10_000));
        assertThat(inspect().err()).contains("LP702");
        Files.writeString(here.resolve("sheets/0412-trap.json"), "[".repeat(10_000) + "]".repeat(10_000));
        assertThat(inspect().err()).contains("LP608");
    }

    @Test
    void ten_megabytes_of_letters_are_refused_in_a_few_lines() throws IOException {
        byte[] letters = new byte[TEN_MEGABYTES];
        new Random(2).nextBytes(letters);
        for (int i = 0; i < letters.length; i++) {
            letters[i] = (byte) (' ' + (letters[i] & 63));
        }
        Files.writeString(here.resolve("first_look.inspection"), new String(letters, StandardCharsets.US_ASCII));

        assertThat(inspect().err().lines().count()).isLessThan(1_000);
    }
}
