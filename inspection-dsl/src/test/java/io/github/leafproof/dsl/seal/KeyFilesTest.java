package io.github.leafproof.dsl.seal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.inspection.record.Problem;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPairGenerator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeyFilesTest {

    @TempDir
    private Path here = Path.of("");

    /** Files that somebody may take for a key. */
    private static Map<String, String> noKeys() throws GeneralSecurityException {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("a letter", "Dear customer\n");
        texts.put("a locked key", new Pem("ENCRYPTED PRIVATE KEY", new byte[] {1, 2, 3}).text());
        texts.put("a certificate", new Pem("CERTIFICATE", new byte[] {1, 2, 3}).text());
        byte[] other = KeyPairGenerator.getInstance("X25519")
                .generateKeyPair()
                .getPrivate()
                .getEncoded();
        texts.put("a key of another kind", new Pem(Pem.PRIVATE, other).text());
        byte[] otherPublic = KeyPairGenerator.getInstance("X25519")
                .generateKeyPair()
                .getPublic()
                .getEncoded();
        texts.put("a public key of another kind", new Pem(Pem.PUBLIC, otherPublic).text());
        texts.put("a key cut off", Keys.PRIVATE_PEM.substring(0, 60));
        texts.put("a key with a letter changed", Keys.PRIVATE_PEM.replace("MC4C", "MC5C"));
        texts.put("a private key", Keys.PRIVATE_PEM);
        texts.put("a public key", Keys.PUBLIC_PEM);
        return texts;
    }

    @Test
    void what_is_no_key_is_told_with_what_it_is_instead() throws IOException, GeneralSecurityException {
        StringBuilder told = new StringBuilder();
        for (Map.Entry<String, String> text : noKeys().entrySet()) {
            Path file = Files.writeString(here.resolve("key.pem"), text.getValue());
            told.append(text.getKey()).append(" to seal with:\n");
            told.append(words(SigningKey.read(file).problems()));
            told.append(text.getKey()).append(" to verify with:\n");
            told.append(words(VerifyingKey.read(file).problems())).append('\n');
        }
        Golden.hold("seal/no-key", told.toString().replace(here + "/", ""));
    }

    private static String words(Iterable<Problem> problems) {
        StringBuilder words = new StringBuilder();
        problems.forEach(problem -> words.append(problem.toString().indent(2)));
        return words.isEmpty() ? "  taken\n" : words.toString();
    }

    @Test
    void a_key_that_is_made_can_be_read_by_its_owner_only() throws IOException {
        assumeTrue(
                FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
                "this file system does not know owners as POSIX has them");
        KeyPairFiles files = KeyPairFiles.of(here.resolve("shop"));

        assertThat(files.write(SigningKey.generate())).isEmpty();

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(files.privateKey())))
                .isEqualTo("rw-------");
        assertThat(files.isPrivate()).isTrue();
        assertThat(SigningKey.read(files.privateKey()).orElseThrow().content().verifyingKey())
                .isEqualTo(VerifyingKey.read(files.publicKey()).orElseThrow().content());
    }

    @Test
    void a_key_is_never_written_over_another_file_and_never_by_half() throws IOException {
        KeyPairFiles files = KeyPairFiles.of(here.resolve("shop"));
        Files.writeString(files.publicKey(), "of the old key");

        assertThat(files.write(SigningKey.generate()))
                .extracting(Problem::code, Problem::file)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        "LP786", files.publicKey().toString()));

        assertThat(files.publicKey()).hasContent("of the old key");
        assertThat(files.privateKey()).doesNotExist();
    }

    @Test
    void a_key_in_a_folder_that_is_not_there_is_told() {
        KeyPairFiles files = KeyPairFiles.of(here.resolve("no/shop"));

        String told = files.write(SigningKey.generate()).stream()
                .map(Problem::toString)
                .collect(Collectors.joining());

        assertThat(told).contains("LP610: its folder does not exist");
    }
}
