package io.github.leafproof.dsl.seal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Seal;
import io.github.leafproof.inspection.record.SealFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HexFormat;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Signatures and keys are those of the standards, whoever makes them. */
class SignaturesTest {

    private static final HexFormat HEX = HexFormat.of();

    @TempDir
    private Path here = Path.of("");

    @ParameterizedTest(name = "RFC 8032, 7.1, {0}")
    @CsvFileSource(resources = "rfc8032.csv", numLinesToSkip = 1)
    void a_signature_is_the_one_that_rfc_8032_gives(
            String name, String secret, String publicKey, String message, String signature) {
        byte[] text = HEX.parseHex(message == null ? "" : message);

        assertThat(HEX.formatHex(Keys.signing(secret).sign(text))).isEqualTo(signature);
        assertThat(Keys.signing(secret).verifyingKey()).isEqualTo(Keys.verifying(publicKey));
        assertThat(Keys.verifying(publicKey).verifies(text, HEX.parseHex(signature)))
                .isTrue();
    }

    @Test
    void a_key_is_read_and_written_as_rfc_8410_has_it() throws IOException {
        Path file = Files.writeString(here.resolve("key.pem"), Keys.PRIVATE_PEM);

        SigningKey key = SigningKey.read(file).orElseThrow().content();

        assertThat(key.pem()).isEqualTo(Keys.PRIVATE_PEM);
        assertThat(key.verifyingKey().pem()).isEqualTo(Keys.PUBLIC_PEM);
        assertThat(key.verifyingKey()).isEqualTo(Keys.verifying());
    }

    @Test
    void a_private_key_that_brings_its_public_half_along_is_read_too() throws IOException {
        Path file = Files.writeString(here.resolve("key.pem"), Keys.PRIVATE_PEM_OF_TWO_HALVES);

        assertThat(SigningKey.read(file).orElseThrow().content().verifyingKey()).isEqualTo(Keys.verifying());
    }

    @Test
    void words_around_a_key_explain_it_and_long_lines_do_no_harm() throws IOException {
        // RFC 7468, 2 and 5.2: text may stand before; parsers may take any white space.
        Path file = Files.writeString(
                here.resolve("key.pem"),
                "the key of the shop\r\n"
                        + Keys.PUBLIC_PEM.replace("\n", "\r\n").replace("EbrB", "EbrB\r\n"));

        assertThat(VerifyingKey.read(file).orElseThrow().content()).isEqualTo(Keys.verifying());
    }

    @Test
    void a_fingerprint_is_the_digest_of_the_public_key() {
        byte[] info = Base64.getDecoder().decode(Keys.verifying().base64());

        assertThat(Keys.verifying().fingerprint())
                .isEqualTo(RawFile.of("", info).sha256());
    }

    @Test
    void no_two_keys_that_are_made_are_alike() {
        assertThat(SigningKey.generate().verifyingKey())
                .isNotEqualTo(SigningKey.generate().verifyingKey());
    }

    @Test
    void a_signing_key_never_shows_itself() {
        String secret = Keys.PRIVATE_PEM.lines().toList().get(1);

        assertThat(Keys.signing().toString())
                .isEqualTo("private half of " + Keys.verifying().fingerprint())
                .doesNotContain(secret);
    }

    @Test
    void the_same_report_sealed_twice_gives_the_same_seal() {
        byte[] report = "a report\n".getBytes(UTF_8);

        assertThat(Keys.signing().seal(report)).isEqualTo(Keys.signing().seal(report));
    }

    @Test
    void the_example_on_the_page_of_formats_is_the_seal_of_the_report_above_it() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "formats.md"));
        byte[] report = block(page, "report").getBytes(UTF_8);

        Seal seal = Keys.signing().seal(report);

        assertThat(SealFile.toJson(seal)).isEqualTo(block(page, "seal"));
    }

    private static String block(String page, String kind) {
        return Pattern.compile("```json " + kind + "\n(.*?)```", Pattern.DOTALL)
                .matcher(page)
                .results()
                .findFirst()
                .orElseThrow()
                .group(1);
    }
}
