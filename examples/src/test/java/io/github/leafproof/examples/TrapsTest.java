package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.record.Report;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The errors that benches make most (common practice): for each a sheet that falls into it, in examples/bench/traps, and
 * on the page beside it what the report must say so that it is seen, with the number.
 */
class TrapsTest {
    static Stream<String> traps() {
        return Project.files(Project.BENCH.resolve("traps")).stream()
                .map(file -> "traps/" + file.getFileName())
                .filter(name -> name.endsWith(".json"));
    }

    @ParameterizedTest
    @MethodSource("traps")
    void the_report_exposes_the_trap_with_its_number(String sheet) throws IOException {
        Report report = Bench.judge(sheet);
        String text = TextReport.of(report, false);
        SheetPage page = SheetPage.beside(sheet);

        assertThat(page.exposed()).as("what exposes it").isNotEmpty().anyMatch(words -> words.matches(".*[0-9].*"));
        assertThat(text.replaceAll("\\s+", " ")).contains(page.exposed());
        assertThat(report.release().word()).isEqualTo(page.release());
        Golden.holds(Project.BENCH.resolve("expected").resolve(sheet.replace(".json", ".txt")), text);
    }

    @ParameterizedTest
    @MethodSource("traps")
    void what_is_objected_to_is_what_its_page_says(String sheet) {
        Map<String, String> objected = SheetPage.beside(sheet).objected();
        Map<String, String> found = new TreeMap<>();
        for (Report.Check check : Bench.judge(sheet).checks()) {
            if (objected.containsKey(check.name())) {
                found.put(check.name(), check.outcome().word());
            }
        }
        assertThat(objected).isNotEmpty();
        assertThat(found).isEqualTo(objected);
        assertThat(BenchSheetsTest.complaints("job-sheet", Project.text(Project.BENCH.resolve(sheet))))
                .isEmpty();
    }
}
