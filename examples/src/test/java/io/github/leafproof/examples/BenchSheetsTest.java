package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import io.github.leafproof.inspection.verdict.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The job sheets of the bench, held against what a person of the trade judged before the program ran, on the page beside
 * each, and against reports that a person has read.
 */
class BenchSheetsTest {
    private static final Path EXPECTED = Project.BENCH.resolve("expected");

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    static Stream<String> sheets() {
        return Project.files(Project.BENCH.resolve("sheets")).stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith(".json"));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void the_report_is_the_one_that_a_person_has_read(String sheet) throws IOException {
        Golden.holds(EXPECTED.resolve(sheet.replace(".json", ".txt")), TextReport.of(Bench.judge(sheet), false));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void the_report_for_programs_is_the_one_that_a_person_has_read_and_keeps_to_its_schema(String sheet)
            throws IOException {
        String json = ReportFile.toJson(Bench.judge(sheet));

        Golden.holds(EXPECTED.resolve(sheet), json);
        assertThat(complaints("report", json)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void the_release_is_the_one_a_person_of_the_trade_wrote_down_beforehand(String sheet) {
        assertThat(Bench.judge(sheet).release().word())
                .isEqualTo(SheetPage.beside("sheets/" + sheet).release());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void only_what_a_person_of_the_trade_would_object_to_is_objected_to(String sheet) {
        Map<String, String> objections = new TreeMap<>();
        for (Report.Check check : Bench.judge(sheet).checks()) {
            if (check.outcome() != Outcome.PASSES && check.outcome() != Outcome.NOT_APPLICABLE) {
                objections.put(check.name(), check.outcome().word());
            }
        }
        assertThat(objections).isEqualTo(SheetPage.beside("sheets/" + sheet).objected());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void a_check_that_does_not_concern_an_engine_is_said_not_to(String sheet) {
        assertThat(Bench.judge(sheet).checks().stream()
                        .filter(check -> check.outcome() == Outcome.NOT_APPLICABLE)
                        .map(Report.Check::name))
                .containsExactlyElementsOf(SheetPage.beside("sheets/" + sheet).unconcerned());
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void every_file_of_the_bench_keeps_to_its_schema(String sheet) {
        assertThat(complaints("job-sheet", Project.text(Project.BENCH.resolve("sheets/" + sheet))))
                .isEmpty();
        for (Path card : Project.files(Project.BENCH.resolve("cards"))) {
            assertThat(complaints("engine-card", Project.text(card))).isEmpty();
        }
        for (Path tray : Project.files(Project.BENCH.resolve("trays"))) {
            assertThat(complaints("gauge-tray", Project.text(tray))).isEmpty();
        }
    }

    static List<String> complaints(String format, String json) {
        return complaints(format, List.of(json));
    }

    /** What the format's schema finds wrong with any of these. */
    static List<String> complaints(String format, List<String> texts) {
        Schema schema = REGISTRY.getSchema(schema(format), InputFormat.JSON);
        return texts.stream().flatMap(json -> complaints(schema, json)).toList();
    }

    /** What the schema of schemas finds wrong with one of ours. */
    static List<String> complaintsAboutSchema(String format) {
        SchemaLocation draft = SchemaLocation.of("https://json-schema.org/draft/2020-12/schema");
        return complaints(REGISTRY.getSchema(draft), schema(format)).toList();
    }

    private static String schema(String format) {
        return Project.text(Project.ROOT.resolve("docs/schemas/" + format + ".schema.json"));
    }

    private static Stream<String> complaints(Schema schema, String json) {
        return schema
                .validate(
                        json,
                        InputFormat.JSON,
                        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString);
    }
}
