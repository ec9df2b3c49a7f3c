package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
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
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The nine job sheets of the bench, held against what a person of the trade judged before the program ran
 * (examples/bench/README.md) and against reports that a person has read.
 */
class BenchSheetsTest {
    private static final Path EXPECTED = Project.BENCH.resolve("expected");

    static Stream<String> sheets() {
        return Project.files(Project.BENCH.resolve("sheets")).stream()
                .map(file -> file.getFileName().toString());
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
        String number = sheet.substring(0, sheet.indexOf('-'));

        assertThat(Project.text(Project.BENCH.resolve("README.md")))
                .containsPattern("(?m)^### " + number + " .* — "
                        + Pattern.quote(Bench.judge(sheet).release().word()) + "$");
    }

    /** What decides on each sheet, copied by hand from examples/bench/README.md; everything else passes. */
    static Stream<Arguments> decided() {
        return Stream.of(
                Arguments.of("0411-clean.json", Map.of()),
                Arguments.of(
                        "0412-trap.json",
                        Map.of("lash_within[intake]", "open", "primes", "blocked", "column_stands", "blocked")),
                Arguments.of(
                        "0413-warm.json",
                        Map.of(
                                "cold", "fails",
                                "lash_within[intake]", "blocked",
                                "lash_within[exhaust]", "blocked",
                                "primes", "blocked",
                                "column_stands", "blocked")),
                Arguments.of("0414-leak.json", Map.of("column_stands", "fails")),
                Arguments.of(
                        "0415-unfinished.json",
                        Map.of(
                                "box_complete", "untested",
                                "lash_within[exhaust]", "untested",
                                "primes", "blocked",
                                "column_stands", "blocked")),
                Arguments.of(
                        "0416-contradiction.json",
                        Map.of("lash_within[intake]", "contradicted", "primes", "blocked", "column_stands", "blocked")),
                Arguments.of("0417-adjusted.json", Map.of()),
                Arguments.of("0418-plastic-arm.json", Map.of("low_needle_datum", "fails")),
                Arguments.of("0419-tank.json", Map.of("level", "fails")));
    }

    @ParameterizedTest
    @MethodSource("decided")
    void only_what_a_person_of_the_trade_would_object_to_is_objected_to(String sheet, Map<String, String> decided) {
        Map<String, String> objections = new TreeMap<>();
        for (Report.Check check : Bench.judge(sheet).checks()) {
            if (check.outcome() != Outcome.PASSES && check.outcome() != Outcome.NOT_APPLICABLE) {
                objections.put(check.name(), check.outcome().word());
            }
        }
        assertThat(objections).isEqualTo(new TreeMap<>(decided));
    }

    /** Which checks do not concern an engine, from what its card and its papers say; from examples/bench/README.md. */
    static Stream<Arguments> unconcerned() {
        List<String> neither = List.of("idle_stop", "choke_works");
        return Stream.of(
                Arguments.of("0411-clean.json", neither),
                Arguments.of("0412-trap.json", neither),
                Arguments.of(
                        "0413-warm.json",
                        List.of("box_complete", "not_opened", "gear_oiled", "idle_stop", "choke_works")),
                Arguments.of("0414-leak.json", List.of("not_opened", "idle_stop", "choke_works")),
                Arguments.of("0415-unfinished.json", List.of("vintage", "not_opened", "idle_stop", "choke_works")),
                Arguments.of("0416-contradiction.json", List.of("gear_oiled", "idle_stop", "choke_works")),
                Arguments.of(
                        "0417-adjusted.json",
                        List.of("box_complete", "not_opened", "gear_oiled", "idle_stop", "choke_works")),
                Arguments.of("0418-plastic-arm.json", List.of("vintage", "idle_pin", "finger_primes")),
                Arguments.of("0419-tank.json", List.of()));
    }

    @ParameterizedTest
    @MethodSource("unconcerned")
    void a_check_that_does_not_concern_an_engine_is_said_not_to(String sheet, List<String> unconcerned) {
        assertThat(Bench.judge(sheet).checks().stream()
                        .filter(check -> check.outcome() == Outcome.NOT_APPLICABLE)
                        .map(Report.Check::name))
                .containsExactlyElementsOf(unconcerned);
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

    private static List<String> complaints(String format, String json) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(
                        Project.text(Project.ROOT.resolve("docs/schemas/" + format + ".schema.json")),
                        InputFormat.JSON);
        return schema
                .validate(
                        json,
                        InputFormat.JSON,
                        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString)
                .toList();
    }
}
