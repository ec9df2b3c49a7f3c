package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {

    @TempDir
    private Path here = Path.of("");

    @Test
    void a_text_takes_the_place_of_the_old_one_and_leaves_nothing_beside_it() throws IOException {
        Path file = Files.writeString(here.resolve("lash.inspection"), "a longer old text");

        assertThat(TextFile.write(file, "21 °C\n")).isEmpty();

        assertThat(file).hasContent("21 °C\n");
        try (Stream<Path> all = Files.list(here)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void whoever_could_write_the_old_file_can_write_the_new_one() throws IOException {
        Path file = Files.writeString(here.resolve("shared.inspection"), "old");
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw----");
        Files.setPosixFilePermissions(file, shared);

        TextFile.write(file, "new");

        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(shared);
    }

    @Test
    void a_link_stays_one_and_what_it_leads_to_is_written() throws IOException {
        Path file = Files.writeString(here.resolve("there.inspection"), "old");
        Path link = here.resolve("here.inspection");
        try {
            Files.createSymbolicLink(link, file);
        } catch (IOException | UnsupportedOperationException noLinksHere) {
            assumeTrue(false, "this system lets nobody make links");
        }

        assertThat(TextFile.write(link, "new")).isEmpty();

        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("new");
    }

    @Test
    void a_folder_that_is_not_there_is_told() {
        assertThat(TextFile.write(here.resolve("no/such/file"), "text"))
                .hasValueSatisfying(problem ->
                        assertThat(problem.toString()).contains("LP610").contains("does not exist"));
    }
}
