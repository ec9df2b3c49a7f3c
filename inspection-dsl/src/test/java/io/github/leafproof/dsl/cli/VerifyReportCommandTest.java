package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.seal.Keys;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VerifyReportCommandTest {

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void a_tank_is_inspected_and_the_report_sealed() throws IOException {
        Terminal.copyBench(here);
        Files.writeString(here.resolve("shop.private.pem"), Keys.PRIVATE_PEM);
        Files.writeString(here.resolve("shop.public.pem"), Keys.PUBLIC_PEM);
        assertThat(inspect("--json", path("report.json"), "--sign", path("shop.private.pem"))
                        .err())
                .isEmpty();
    }

    private String path(String name) {
        return here.resolve(name).toString();
    }

    private Terminal inspect(String... more) {
        return Terminal.run(Stream.concat(
                        Stream.of("inspect", path("tank.inspection"), "--sheet", path("sheets/0419-tank.json")),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    private Terminal verify(String... more) {
        return Terminal.run(
                Stream.concat(Stream.of("verify-report", path("report.json"), "--inputs", path("")), Stream.of(more))
                        .toArray(String[]::new));
    }

    private Terminal verifyWithKey(String... more) {
        return verify(Stream.concat(Stream.of("--key", path("shop.public.pem")), Stream.of(more))
                .toArray(String[]::new));
    }

    private void replace(String file, String written, String instead) throws IOException {
        Path changed = here.resolve(file);
        assertThat(Files.readString(changed)).contains(written);
        Files.writeString(changed, Files.readString(changed).replace(written, instead));
    }

    private void holds(String name, Terminal said, int exit) {
        assertThat(said.exit()).isEqualTo(exit);
        Golden.hold("cli/verify-report/" + name, said.whole(here));
    }

    @Test
    void a_report_as_it_was_handed_over_is_verified() {
        holds("verified", verifyWithKey(), 0);
    }

    @Test
    void without_a_key_it_is_told_that_nothing_changed_and_what_is_still_to_do() {
        holds("no-key", verify(), 3);
    }

    @Test
    void a_seal_of_its_own_place_is_found_where_it_is_named() throws IOException {
        Files.move(here.resolve("report.json.seal"), here.resolve("elsewhere.seal"));

        holds("no-seal", verifyWithKey(), 3);
        assertThat(verifyWithKey("--seal", path("elsewhere.seal")).exit()).isZero();
        assertThat(verifyWithKey("--seal", path("nowhere.seal")).exit()).isEqualTo(2);
    }

    @Test
    void everything_that_is_wrong_is_told_at_once() throws IOException {
        replace("report.json", "\"release\": \"hold\"", "\"release\": \"ready\"");
        replace("cards/quillan-15.json", "8 mm", "9 mm");
        replace("parts/tank_level.inspection", "tank", "tanks");
        Files.delete(here.resolve("trays/bench-one.json"));
        Path other = here.resolve("other");
        assertThat(Terminal.run("make-key", other.toString()).exit()).isZero();

        Terminal said = verify("--key", path("other.public.pem"));

        assertThat(said.exit()).isEqualTo(1);
        assertThat(said.err())
                .contains("report.json: error LP789")
                .contains("parts/tank_level.inspection: error LP792")
                .contains("cards/quillan-15.json: error LP792")
                .contains("trays/bench-one.json that the report rests on is not found")
                .contains("LP791");
    }

    @Test
    void a_changed_report_is_told_with_the_first_place_that_was_changed() throws IOException {
        replace("report.json", "\"release\": \"hold\"", "\"release\": \"ready\"");

        holds("report-changed", verifyWithKey(), 1);
    }

    @Test
    void changed_and_missing_files_are_told_by_name() throws IOException {
        replace("cards/quillan-15.json", "8 mm", "9 mm");
        Files.delete(here.resolve("trays/bench-one.json"));

        holds("files-changed", verifyWithKey(), 1);
    }

    @Test
    void a_changed_seal_is_not_laid_on_the_report() throws IOException {
        replace("report.json.seal", "\"signature\": \"", "\"signature\":  \"");

        holds("seal-changed", verifyWithKey(), 1);
    }

    @Test
    void a_report_that_somebody_else_sealed_is_told_with_both_fingerprints() throws IOException {
        Files.writeString(here.resolve("shop.public.pem"), """
                -----BEGIN PUBLIC KEY-----
                MCowBQYDK2VwAyEA11qYAYKxCrfVS/7TyWQHOg7hcvPapiMlrwIaaPcHURo=
                -----END PUBLIC KEY-----
                """);

        holds("another-key", verifyWithKey(), 1);
    }

    @Test
    void colour_only_repeats_what_the_words_say() {
        String[] arguments = {"verify-report", path("report.json"), "--inputs", path("")};

        String coloured = Terminal.run(true, arguments).out();

        assertThat(coloured).contains("\u001b[");
        assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", ""))
                .isEqualTo(Terminal.run(arguments).out());
    }

    @Test
    void slips_of_the_pen_are_bad_input() {
        Terminal said = Terminal.run(
                "verify-report",
                path("report.json"),
                "--key",
                path("shop.private.pem"),
                "--inputs",
                path("sheet"),
                "--procedure",
                path("tanks.inspection"));

        holds("slips", said, 2);
        assertThat(Terminal.run("verify-report", path("no-report.json")).exit()).isEqualTo(2);
    }

    @Test
    void a_report_is_not_sealed_without_a_file_or_with_a_public_key() {
        Terminal without = inspect("--sign", path("shop.private.pem"));
        Terminal wrong = inspect("--json", path("other.json"), "--sign", path("shop.public.pem"));

        assertThat(without.exit()).isEqualTo(2);
        assertThat(without.err()).contains("--sign has nothing to seal").contains("--json");
        assertThat(wrong.exit()).isEqualTo(2);
        assertThat(wrong.err()).contains("LP785").contains("name the private key of the pair");
        assertThat(here.resolve("other.json")).doesNotExist();
    }

    @Test
    void a_key_is_not_written_over_by_the_report_that_it_seals() throws IOException {
        Terminal said = inspect("--json", path("shop.private.pem"), "--sign", path("shop.private.pem"));

        assertThat(said.exit()).isEqualTo(2);
        assertThat(said.err()).contains("would write the report over");
        assertThat(Files.readString(here.resolve("shop.private.pem"))).isEqualTo(Keys.PRIVATE_PEM);
    }

    @Test
    void a_pair_of_keys_is_made_once() {
        Terminal first = Terminal.run("make-key", path("second"));
        Terminal again = Terminal.run("make-key", path("second"));

        assertThat(first.exit()).isZero();
        assertThat(first.whole(here).replaceAll("[0-9a-f]{64}", "FINGERPRINT")).isEqualTo("""
                exit 0
                --- standard output
                HERE/second.private.pem seals: keep it, and a copy of it, where nobody else can read it
                HERE/second.public.pem verifies: give it to everybody who gets reports
                fingerprint FINGERPRINT
                --- standard error
                """);
        holds("key-again", again, 2);
        assertThat(Terminal.run("make-key", "").exit()).isEqualTo(2);
    }
}
