package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrialGiven;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page about sessions keeps its word. */
class SessionPageTest {

    private static final Map<String, Given> ANSWERS = Map.of(
            "marks_agree", new Given.Flag(true),
            "head", new Given.Words("21 °C"),
            "room", new Given.Words("21 °C"),
            "rockers_free", new Given.Flag(true),
            "lash[intake]",
                    new Given.Trials(List.of(
                            new TrialGiven(List.of("0.05 mm"), TrialResult.PASSES, ""),
                            new TrialGiven(List.of("0.10 mm"), TrialResult.REFUSES, ""))));

    private final String page = Project.text(Project.ROOT.resolve("docs/session.md"));

    @TempDir
    private Path folder = Path.of("");

    private String worked() {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        WorkAtTheBench.work(
                Project.BENCH,
                folder.resolve("0422.json"),
                ANSWERS,
                new PrintStream(printed, true, StandardCharsets.UTF_8));
        return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
    }

    @Test
    void the_java_that_it_shows_is_the_java_that_is_compiled() {
        String source = Project.text(Path.of("src/main/java/io/github/leafproof/examples/WorkAtTheBench.java"));

        assertThat(Project.fences(page, "java")).allSatisfy(shown -> {
            for (String line : shown.lines().map(String::strip).toList()) {
                assertThat(source.lines().map(String::strip)).contains(line);
            }
        });
        assertThat(Project.fences(page, "java")).isNotEmpty();
    }

    @Test
    void it_prints_what_the_page_says_and_leaves_a_sound_sheet() {
        String printed = worked();

        for (String part : Project.fences(page, "text").get(0).split("(?m)^\\[…\\]\n", -1)) {
            assertThat(printed).contains(part.strip());
        }
        assertThat(SheetFile.read(folder.resolve("0422.json"))
                        .orElseThrow()
                        .content()
                        .entries())
                .hasSize(ANSWERS.size());
    }

    @Test
    void gone_on_with_it_asks_for_nothing_that_was_entered() {
        worked();

        assertThat(worked()).isEqualTo("hold\n");
    }
}
