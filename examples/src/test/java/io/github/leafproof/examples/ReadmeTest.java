package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** The first page a stranger reads keeps its word. */
class ReadmeTest {
    private final String readme = Project.text(Project.ROOT.resolve("README.md"));

    @Test
    void the_java_that_it_shows_is_the_java_that_is_compiled() {
        String source = Project.text(Path.of("src/main/java/io/github/leafproof/examples/JudgeAnEngine.java"));

        assertThat(Project.fences(readme, "java"))
                .containsExactly(source.substring(source.indexOf("public final class")));
    }

    @Test
    void the_java_that_it_shows_prints_what_it_says() {
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        JudgeAnEngine.judge(Project.BENCH, new PrintStream(printed, true, StandardCharsets.UTF_8));

        assertThat(Project.fences(readme, "text")).contains(lines(printed.toString(StandardCharsets.UTF_8)));
    }

    @Test
    void the_report_that_it_shows_is_the_one_the_trap_prints_with_the_dull_parts_left_out() {
        String report = Project.text(Project.BENCH.resolve("expected/0412-trap.txt"));
        String shown = Project.fences(readme, "text").get(0);

        for (String part : shown.split("(?m)^ *\\[…\\]\n", -1)) {
            assertThat(report).contains(part.strip());
        }
        assertThat(shown).contains("Release: HOLD", "OPEN ", "BLOCKED ", "Next, each with its cautions first");
    }

    @Test
    void its_ten_lines_leave_the_trap_open_and_name_the_stack_that_settles_it() {
        String tenLines = Project.fences(readme, "inspection").get(0);
        assertThat(tenLines.lines()).hasSize(10);
        String sheet = """
                {"sheet": "readme", "procedure": "lash", "revision": 1, "engine": {"variant": "late cam"},
                 "date": "2026-03-03", "entries": [{"observe": "lash", "trials": [
                   {"leaf": "0.05 mm", "result": "passes"}, {"leaf": "0.10 mm", "result": "refuses"}]}]}
                """;

        Report report = Procedure.compile(SourceText.of("README.md", tenLines))
                .orElseThrow()
                .judge(
                        Bench.card("cards/quillan-15.json"),
                        Bench.tray("trays/bench-one.json"),
                        SheetFile.parse("readme", sheet.getBytes(StandardCharsets.UTF_8))
                                .orElseThrow(),
                        UnitSystem.METRIC)
                .orElseThrow();

        assertThat(report.release().word()).isEqualTo("hold");
        assertThat(report.checks().get(0).outcome().word()).isEqualTo("open");
        assertThat(report.checks().get(0).value()).isEqualTo("0.0500 mm to 0.1100 mm");
        assertThat(report.checks().get(0).advice().get(0)).startsWith("Offer 0.05 + 0.04 mm together (0.0920 mm)");
    }

    @Test
    void the_command_that_passes_the_tests_is_the_one_that_is_run_before_every_merge() {
        String run = Project.text(Project.ROOT.resolve(".ci/run"));
        String command = run.lines().reduce((earlier, later) -> later).orElseThrow();

        assertThat(Project.fences(readme, "sh")).contains(command + "\n");
    }

    private static String lines(String printed) {
        return String.join("\n", Arrays.asList(printed.split("\\R"))) + "\n";
    }
}
