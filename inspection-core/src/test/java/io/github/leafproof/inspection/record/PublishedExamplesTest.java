package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files a newcomer copies have to be sound, to the program and to the schemas alike. */
class PublishedExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    @ParameterizedTest
    @MethodSource("examples")
    void every_published_example_is_read_without_complaint(Path file) throws IOException {
        Format format = Format.ofFolder(file);

        assertThat(format.parse(file.getFileName().toString(), Files.readAllBytes(file))
                        .problems())
                .isEmpty();
        assertThat(Schemas.complaints(format, Files.readString(file))).isEmpty();
    }

    @Test
    void there_are_examples_of_cards_trays_and_sheets() throws IOException {
        assertThat(examples().map(Format::ofFolder)).contains(Format.ENGINE_CARD, Format.GAUGE_TRAY, Format.JOB_SHEET);
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            return files
                    .filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> Stream.of("cards", "trays", "sheets").anyMatch(folder -> liesIn(folder, file)))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static boolean liesIn(String folder, Path file) {
        return file.toString()
                .contains(FileSystems.getDefault().getSeparator()
                        + folder
                        + FileSystems.getDefault().getSeparator());
    }
}
