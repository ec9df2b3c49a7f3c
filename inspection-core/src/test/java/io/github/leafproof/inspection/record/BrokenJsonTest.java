package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Text that is not JSON: each line of {@code broken-json.txt} is a file, and below it stands what is said of it. */
class BrokenJsonTest {
    private static final Path TABLE = Path.of("src", "test", "resources", "record", "broken-json.txt");

    @Test
    void where_json_breaks_off_the_place_and_a_remedy_are_told() throws IOException {
        List<String> files = Files.readAllLines(TABLE).stream()
                .filter(line -> line.startsWith("> "))
                .map(line -> line.substring(2))
                .toList();

        String told = files.stream()
                .map(file -> "> " + file + "\n" + problems(file) + "\n")
                .collect(Collectors.joining());
        Files.writeString(Path.of("target", "broken-json.txt"), told);

        assertThat(told).isEqualTo(Files.readString(TABLE));
    }

    private static String problems(String file) {
        // The table writes a line end as ⏎ and a tab as ⇥, so that each file fits on its line.
        String text = file.replace("⏎", "\n").replace("⇥", "\t");
        return CardFile.parse("q.json", text.getBytes(UTF_8)).problems().stream()
                .map(problem -> problem + "\n")
                .collect(Collectors.joining());
    }
}
