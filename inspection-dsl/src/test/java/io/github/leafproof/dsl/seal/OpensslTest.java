package io.github.leafproof.dsl.seal;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.leafproof.inspection.record.Seal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program, openssl 3, reads our keys and verifies our signatures, and we read and verify its. */
class OpensslTest {

    private static final byte[] REPORT = "{ \"format\": \"leafproof-report/1\" }\n".getBytes(UTF_8);

    @TempDir
    private Path here = Path.of("");

    @BeforeEach
    void openssl_is_there() {
        boolean there;
        try {
            there = openssl("version").startsWith("OpenSSL 3");
        } catch (IOException notInstalled) {
            there = false;
        }
        assumeTrue(there, "openssl 3 is not on this machine; what it says of our keys and seals is not asked");
    }

    private String openssl(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("openssl"));
        command.addAll(List.of(arguments));
        Process openssl = new ProcessBuilder(command)
                .directory(here.toFile())
                .redirectErrorStream(true)
                .start();
        String said = new String(openssl.getInputStream().readAllBytes(), UTF_8);
        try {
            openssl.waitFor();
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
        return said;
    }

    @Test
    void openssl_verifies_what_we_have_sealed() throws IOException {
        KeyPairFiles files = KeyPairFiles.of(here.resolve("shop"));
        SigningKey key = SigningKey.generate();
        assertThat(files.write(key)).isEmpty();
        Files.write(here.resolve("report.json"), REPORT);
        Seal seal = key.seal(REPORT);
        Files.write(here.resolve("signature"), Base64.getDecoder().decode(seal.signature()));

        String said = openssl(
                "pkeyutl",
                "-verify",
                "-pubin",
                "-inkey",
                "shop.public.pem",
                "-rawin",
                "-in",
                "report.json",
                "-sigfile",
                "signature");

        assertThat(said).contains("Signature Verified Successfully");
        assertThat(openssl("pkey", "-in", "shop.private.pem", "-pubout"))
                .isEqualTo(Files.readString(files.publicKey()));
        assertThat(openssl("pkey", "-in", "shop.private.pem")).isEqualTo(Files.readString(files.privateKey()));
    }

    @Test
    void we_verify_what_openssl_has_signed_with_a_key_of_its_own() throws IOException {
        openssl("genpkey", "-algorithm", "ed25519", "-out", "own.pem");
        openssl("pkey", "-in", "own.pem", "-pubout", "-out", "own.public.pem");
        Files.write(here.resolve("report.json"), REPORT);
        openssl("pkeyutl", "-sign", "-rawin", "-inkey", "own.pem", "-in", "report.json", "-out", "signature");

        SigningKey signing =
                SigningKey.read(here.resolve("own.pem")).orElseThrow().content();
        VerifyingKey verifying =
                VerifyingKey.read(here.resolve("own.public.pem")).orElseThrow().content();

        byte[] signature = Files.readAllBytes(here.resolve("signature"));
        assertThat(verifying.verifies(REPORT, signature)).isTrue();
        assertThat(signing.verifyingKey()).isEqualTo(verifying);
        assertThat(signing.sign(REPORT)).isEqualTo(signature);
    }

    @Test
    void the_fingerprint_is_the_digest_that_openssl_gives() throws IOException {
        Files.writeString(here.resolve("key.pem"), Keys.PUBLIC_PEM);
        openssl("pkey", "-pubin", "-in", "key.pem", "-outform", "DER", "-out", "key.der");

        assertThat(openssl("dgst", "-sha256", "-r", "key.der"))
                .startsWith(Keys.verifying().fingerprint() + " ");
    }
}
