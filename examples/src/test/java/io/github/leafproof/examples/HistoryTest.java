package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.history.Finding;
import io.github.leafproof.dsl.history.Followed;
import io.github.leafproof.dsl.history.History;
import io.github.leafproof.dsl.history.OneEngine;
import io.github.leafproof.dsl.history.Recounting;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.report.HistoryJson;
import io.github.leafproof.dsl.report.HistoryText;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** An engine of the bench over a year: what a person has read, and what the page on histories says of it. */
class HistoryTest {
    private static final Path FOLDER = Project.BENCH.resolve("history");
    private static final String NAMED = "examples/bench/history/";

    private static final History HISTORY = history();

    private static History history() {
        List<Evidence.Files> sheets = Project.files(FOLDER).stream()
                .map(file -> FOLDER.relativize(file).toString())
                .filter(name -> name.matches("[0-9]+-[a-z-]+\\.json"))
                .map(HistoryTest::files)
                .toList();
        return Recounting.of(
                OneEngine.inOrder(sheets).orElseThrow().stream()
                        .map(HistoryTest::judged)
                        .toList(),
                UnitSystem.METRIC);
    }

    private static Evidence.Files files(String name) {
        Document<JobSheet> sheet = SheetFile.parse(NAMED + name, Project.bytes(FOLDER.resolve(name)))
                .orElseThrow();
        String card = Objects.requireNonNull(sheet.content().card());
        String tray = Objects.requireNonNull(sheet.content().tray());
        return new Evidence.Files(
                CardFile.parse(NAMED + card, Project.bytes(FOLDER.resolve(card)))
                        .orElseThrow(),
                TrayFile.parse(NAMED + tray, Project.bytes(FOLDER.resolve(tray)))
                        .orElseThrow(),
                sheet);
    }

    private static Judgement judged(Evidence.Files files) {
        return procedure(files.sheet().content().procedure())
                .judgement(files.card(), files.tray(), files.sheet(), UnitSystem.METRIC)
                .orElseThrow();
    }

    private static Procedure procedure(String name) {
        return Procedure.read(FOLDER.resolve(name + ".inspection")).orElseThrow();
    }

    @Test
    void the_history_is_the_one_that_a_person_has_read() throws IOException {
        Golden.holds(Project.BENCH.resolve("expected/history.txt"), HistoryText.of(HISTORY, false));
    }

    @Test
    void the_history_for_programs_is_the_one_that_a_person_has_read_and_keeps_to_its_schema() throws IOException {
        String json = HistoryJson.write(HISTORY);

        Golden.holds(Project.BENCH.resolve("expected/history.json"), json);
        assertThat(BenchSheetsTest.complaints("history", json)).isEmpty();
    }

    /** Copied by hand from examples/bench/README.md. */
    @ParameterizedTest
    @CsvSource({"lash_within[exhaust], COMES_BACK", "joint_tight, CLOSED", "makes_power, NOT_LOOKED_AT_AGAIN"})
    void each_finding_stands_as_a_person_of_the_trade_sees_it(String check, Finding.Standing standing) {
        assertThat(HISTORY.findings()).hasSize(3);
        assertThat(HISTORY.findings())
                .filteredOn(finding -> finding.check().equals(check))
                .extracting(Finding::standing)
                .containsExactly(standing);
    }

    @Test
    void the_exhaust_lash_widens_faster_again_and_the_intake_lash_cannot_be_told_to_widen() {
        assertThat(HISTORY.values())
                .filteredOn(value -> value.name().startsWith("lash["))
                .extracting(Followed::pace)
                .containsExactly(Followed.Pace.NOT_TOLD, Followed.Pace.FASTER);
        assertThat(HISTORY.state()).isEqualTo(History.State.REMAINS);
    }

    @Test
    void the_page_on_histories_shows_a_part_of_it() {
        String shown = Project.fences(Project.text(Project.ROOT.resolve("docs/history.md")), "text")
                .get(0);

        for (String part : shown.split("\\[…\\]\n", -1)) {
            assertThat(HistoryText.of(HISTORY, false)).contains(part);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"cold_look", "between_runs"})
    void its_procedures_come_out_as_their_rehearsals_expect(String name) {
        assertThat(Procedure.read(FOLDER.resolve(name + ".inspection")).diagnostics())
                .isEmpty();
        assertThat(Rehearsing.run(procedure(name), FOLDER)).isNotEmpty().allSatisfy(each -> {
            assertThat(each.problems()).isEmpty();
            assertThat(each.surprises()).isEmpty();
        });
    }

    @Test
    void every_sheet_keeps_to_its_schema() {
        assertThat(HISTORY.looks())
                .hasSize(4)
                .allSatisfy(look -> assertThat(BenchSheetsTest.complaints(
                                "job-sheet",
                                Project.text(Project.ROOT.resolve(look.file().name()))))
                        .isEmpty());
    }

    @Test
    void the_published_schema_is_a_schema_of_draft_2020_12() {
        Schema draft = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(draft.validate(schema(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    leafproof-history/1         | leafproof-history/2
                    "state" : "remains"         | "state" : "fine"
                    "standing" : "comes_back"   | "standing" : "gone"
                    "outcome" : "fails"         | "outcome" : "failed"
                    "pace" : "faster"           | "pace" : "quicker"
                    "date" : "2025-03-03"       | "date" : "3 March"
                    "told" : true               | "told" : "yes"
                    "serial" :                  | "number" :
                    "look" : 1                  | "look" : 0
                    """)
    void a_file_that_is_no_such_history_is_refused_by_the_schema(String written, String instead) {
        String json = HistoryJson.write(HISTORY);
        assertThat(json).contains(written);

        assertThat(BenchSheetsTest.complaints("history", json.replace(written, instead)))
                .isNotEmpty();
    }

    @Test
    void the_words_the_schema_allows_are_the_words_the_program_writes() {
        assertThat(words("/properties/state")).isEqualTo(lower(History.State.values()));
        assertThat(words("/$defs/finding/properties/standing"))
                .isEqualTo(Stream.of(Finding.Standing.values())
                        .map(Finding.Standing::word)
                        .toList());
        assertThat(words("/$defs/value/properties/pace"))
                .isEqualTo(Stream.of(Followed.Pace.values())
                        .map(Followed.Pace::word)
                        .toList());
        assertThat(words("/$defs/next_check/properties/state"))
                .isEqualTo(Stream.of(Followed.NextCheck.State.values())
                        .map(Followed.NextCheck.State::word)
                        .toList());
        assertThat(words("/$defs/outcome"))
                .isEqualTo(Stream.of(Outcome.values()).map(Outcome::word).toList());
        assertThat(words("/$defs/look/properties/release"))
                .isEqualTo(Stream.of(Release.values()).map(Release::word).toList());
    }

    private static List<String> lower(Enum<?>... values) {
        return Stream.of(values)
                .map(value -> value.name().toLowerCase(Locale.ROOT))
                .toList();
    }

    private static List<String> words(String place) {
        JsonNode found = JsonMapper.shared().readTree(schema()).at(place).get("enum");
        return Stream.iterate(0, i -> i < found.size(), i -> i + 1)
                .map(i -> found.get(i).asString())
                .toList();
    }

    private static String schema() {
        return Project.text(Project.ROOT.resolve("docs/schemas/history.schema.json"));
    }
}
