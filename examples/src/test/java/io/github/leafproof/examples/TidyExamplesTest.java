package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Tidied;
import io.github.leafproof.dsl.layout.Layout;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who learns from the examples learns the layout with them. */
class TidyExamplesTest {

    @Test
    void every_procedure_of_the_examples_is_tidy() {
        List<Path> procedures = Project.files(Project.ROOT.resolve("examples")).stream()
                .filter(file -> file.toString().endsWith(".inspection"))
                .toList();

        assertThat(procedures)
                .isNotEmpty()
                .allSatisfy(
                        file -> assertThat(Tidied.of(file, root(file)).isTidy()).isTrue());
    }

    /** The folder that a procedure names its parts from: its own, and that of a part the one above it. */
    private static Path root(Path file) {
        Path folder = file.resolveSibling("").normalize();
        return folder.endsWith("parts") ? folder.resolveSibling("") : folder;
    }

    @Test
    void what_the_reference_shows_as_tidy_is_tidy() {
        String page = Project.text(Project.ROOT.resolve("docs/language.md"));
        String section = page.substring(page.indexOf("\n## Layout\n"));

        String shown = Project.fences(section, "inspection-fragment").get(0);

        assertThat(Layout.of(SourceText.of("shown", shown))).isEqualTo(shown);
    }
}
