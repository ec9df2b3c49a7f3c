package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The list of units that people read, docs/judging.md, against the table that the program reads. */
class UnitListTest {
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    // On a keyboard the micro sign and the Greek letter look alike, so the page shows only one of them.
    private static final Set<String> LOOKALIKES = Set.of("\u03bcm", "\u03bcin", "\u03bcL");

    private static Set<String> listed() throws IOException {
        List<String> lines = Files.readAllLines(Path.of("..", "docs", "judging.md"), StandardCharsets.UTF_8);
        int start = lines.indexOf("### Units");
        return lines.stream()
                .skip(start)
                .dropWhile(line -> !line.startsWith("|"))
                .takeWhile(line -> line.startsWith("|"))
                .flatMap(line -> QUOTED.matcher(line).results())
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_spelling_the_program_reads_is_on_the_page() throws IOException {
        Set<String> read = new TreeSet<>(UnitTable.names());
        read.removeAll(LOOKALIKES);
        assertThat(listed()).containsAll(read);
    }

    @Test
    void every_spelling_on_the_page_is_read_by_the_program() throws IOException {
        assertThat(listed())
                .hasSizeGreaterThan(80)
                .allSatisfy(unit -> assertThat(Unit.parse(unit)).isNotNull());
    }
}
