package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealFileTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void a_seal_is_written_as_agreed_to_the_byte() throws IOException {
        assertThat(SealFile.toJson(Good.seal())).isEqualTo(Files.readString(Good.SEAL));
    }

    @Test
    void a_seal_read_back_is_the_seal_that_was_written() {
        Path file = folder.resolve("0412.json.seal");

        assertThat(SealFile.write(file, Good.seal())).isEmpty();

        assertThat(SealFile.read(file).orElseThrow().content()).isEqualTo(Good.seal());
    }

    @Test
    void a_seal_stands_beside_its_report_under_its_name() {
        assertThat(SealFile.of(folder.resolve("0412-report.json"))).isEqualTo(folder.resolve("0412-report.json.seal"));
        assertThat(SealFile.of(Path.of("0412-report.json"))).isEqualTo(Path.of("0412-report.json.seal"));
    }

    @Test
    void the_digest_in_a_seal_is_that_of_the_report() throws IOException {
        assertThat(RawFile.read(Good.REPORT).orElseThrow().sha256())
                .isEqualTo(Good.seal().sha256());
    }

    @Test
    void a_file_as_it_is_has_its_bytes_and_their_digest() throws IOException {
        Path file = Files.writeString(folder.resolve("abc"), "abc");

        Document<byte[]> raw = RawFile.read(file).orElseThrow();

        assertThat(raw.content()).isEqualTo("abc".getBytes(UTF_8));
        // FIPS 180-4's own example.
        assertThat(raw.sha256()).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(RawFile.read(folder.resolve("none")).problems())
                .extracting(Problem::code)
                .containsExactly("LP601");
    }
}
