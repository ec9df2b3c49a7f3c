package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Quantity;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFileTest {
    private final JobSheet sheet = SheetFile.read(Good.SHEET).orElseThrow().content();

    @Test
    void a_sheet_says_what_was_done_to_which_engine_when() {
        assertThat(sheet.sheet()).isEqualTo("0412");
        assertThat(sheet.procedure()).isEqualTo("first_look");
        assertThat(sheet.revision()).isEqualTo(4);
        assertThat(sheet.card()).isEqualTo("cards/quillan-15.json");
        assertThat(sheet.tray()).isEqualTo("trays/bench-one.json");
        assertThat(sheet.engine()).isEqualTo(new SheetEngine("Q15-20417", "new in box", "job 0412", null));
        assertThat(sheet.date()).isEqualTo(LocalDate.of(2026, 3, 4));
    }

    @Test
    void what_was_given_is_kept_as_it_was_entered() {
        assertThat(sheet.entries())
                .extracting(Entry::given)
                .containsExactly(
                        new Given.Words("21.4 °C"),
                        new Given.Trials(List.of(
                                new TrialGiven(List.of("0.05 mm"), TrialResult.PASSES, "5:46 $.entries[1].trials[0]"),
                                new TrialGiven(
                                        List.of("0.05 mm", "0.10 mm"),
                                        TrialResult.REFUSES,
                                        "5:89 $.entries[1].trials[1]"))),
                        new Given.Adjusted(Quantity.parse("50 deg")),
                        new Given.Adjusted(null),
                        new Given.Trials(List.of(
                                new TrialGiven(List.of("0.05 mm"), TrialResult.DRAGS, "8:46 $.entries[4].trials[0]"))),
                        new Given.Flag(true),
                        new Given.Count(BigDecimal.valueOf(3)),
                        new Given.Series(List.of("2300 rpm", "2320 rpm", "2290 rpm")),
                        new Given.Series(List.of("3", "4")),
                        new Given.Items(List.of()),
                        new Given.Cannot("the box was not sent"));
    }

    @Test
    void an_entry_says_who_made_it_when_and_what_it_corrects() {
        Entry head = sheet.entries().get(0);
        Entry adjustment = sheet.entries().get(2);
        Entry correction = sheet.entries().get(4);

        assertThat(head.by()).isEqualTo("mk");
        assertThat(head.at()).isEqualTo(OffsetDateTime.parse("2026-03-04T10:12:00Z"));
        assertThat(head.place()).isEqualTo("4:5 $.entries[0]");
        assertThat(head.corrects()).isFalse();
        assertThat(adjustment.observe()).isEqualTo("lash[intake]");
        assertThat(adjustment.note()).isEqualTo("screw in, lock nut held");
        assertThat(correction.corrects()).isTrue();
    }

    @Test
    void an_engine_that_runs_while_its_sheet_is_filled_in_grows_older_from_entry_to_entry() {
        String text = """
                { "sheet": "1", "procedure": "p", "revision": 1, "engine": {}, "date": "2026-03-04",
                  "running_time": "0.7 h",
                  "entries": [
                    { "observe": "a", "value": true },
                    { "observe": "b", "value": true, "running_time": "1 h" },
                    { "adjust": "b" } ] }
                """;

        JobSheet read = SheetFile.parse("s.json", text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow()
                .content();

        assertThat(read.runningTime()).isEqualTo(Quantity.parse("0.7 h"));
        assertThat(read.entries())
                .extracting(Entry::runningTime)
                .containsExactly(Quantity.parse("0.7 h"), Quantity.parse("1 h"), Quantity.parse("1 h"));
        assertThat(sheet.runningTime()).isNull();
        assertThat(sheet.entries()).extracting(Entry::runningTime).containsOnlyNulls();
    }

    @Test
    void a_sheet_need_not_name_its_card_and_tray() {
        String text = "{ \"sheet\": \"1\", \"procedure\": \"p\", \"revision\": 1, \"engine\": {}, "
                + "\"date\": \"2026-03-04\", \"entries\": [] }";

        JobSheet read = SheetFile.parse("s.json", text.getBytes(StandardCharsets.UTF_8))
                .orElseThrow()
                .content();

        assertThat(read.card()).isNull();
        assertThat(read.tray()).isNull();
        assertThat(read.engine()).isEqualTo(SheetEngine.unknown());
    }

    /** The same sheet wherever its entries stand. */
    private static JobSheet withoutPlaces(JobSheet sheet) {
        return new JobSheet(
                sheet.sheet(),
                sheet.procedure(),
                sheet.revision(),
                sheet.card(),
                sheet.tray(),
                sheet.engine(),
                sheet.date(),
                sheet.runningTime(),
                sheet.entries().stream()
                        .map(entry -> new Entry(
                                entry.observe(),
                                withoutPlaces(entry.given()),
                                entry.corrects(),
                                entry.by(),
                                entry.at(),
                                entry.note(),
                                entry.runningTime(),
                                ""))
                        .toList());
    }

    private static Given withoutPlaces(Given given) {
        return given instanceof Given.Trials trials
                ? new Given.Trials(trials.trials().stream()
                        .map(trial -> new TrialGiven(trial.leaves(), trial.result(), ""))
                        .toList())
                : given;
    }

    private static JobSheet writtenAndRead(JobSheet sheet) {
        return SheetFile.parse("s.json", SheetFile.toJson(sheet).getBytes(StandardCharsets.UTF_8))
                .orElseThrow()
                .content();
    }

    @Test
    void a_sheet_that_is_written_reads_back_as_the_same() {
        assertThat(withoutPlaces(writtenAndRead(sheet))).isEqualTo(withoutPlaces(sheet));
        assertThat(SheetFile.toJson(writtenAndRead(sheet))).isEqualTo(SheetFile.toJson(sheet));
    }

    @Test
    void every_sheet_of_the_bench_reads_back_as_the_same() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("..", "examples", "bench"))) {
            List<JobSheet> sheets = files.filter(file -> file.toString().endsWith(".json"))
                    .filter(file -> SheetFile.read(file).value().isPresent())
                    .map(file -> SheetFile.read(file).orElseThrow().content())
                    .toList();
            assertThat(sheets)
                    .hasSizeGreaterThan(10)
                    .allSatisfy(each ->
                            assertThat(withoutPlaces(writtenAndRead(each))).isEqualTo(withoutPlaces(each)));
        }
    }

    @Test
    void numbers_are_written_as_people_write_them_unless_they_are_very_long() {
        List<BigDecimal> numbers =
                List.of(new BigDecimal("100"), new BigDecimal("0.5"), new BigDecimal("1e99"), new BigDecimal("-2"));
        JobSheet counted = new JobSheet(
                "1",
                "p",
                1,
                null,
                null,
                SheetEngine.unknown(),
                LocalDate.of(2026, 3, 4),
                null,
                numbers.stream()
                        .map(number -> new Entry("strokes", new Given.Count(number), false, null, null, null, null, ""))
                        .toList());

        assertThat(SheetFile.toJson(counted))
                .contains("\"value\": 100\n", "\"value\": 0.5\n", "\"value\": 1E+99\n", "\"value\": -2\n");
        assertThat(writtenAndRead(counted).entries())
                .extracting(Entry::given)
                .containsExactlyElementsOf(
                        numbers.stream().map(Given.Count::new).toList());
    }

    @Test
    void how_long_the_engine_had_run_is_written_where_it_changes(@TempDir Path folder) throws IOException {
        Quantity two = Quantity.parse("2 h");
        JobSheet ran = new JobSheet(
                "1",
                "p",
                1,
                null,
                null,
                SheetEngine.unknown(),
                LocalDate.of(2026, 3, 4),
                Quantity.parse("1 h"),
                List.of(
                        new Entry("a", new Given.Flag(true), false, null, null, null, Quantity.parse("1 h"), ""),
                        new Entry("b", new Given.Flag(true), false, null, null, null, two, ""),
                        new Entry("c", new Given.Flag(true), false, null, null, null, two, "")));
        Path file = folder.resolve("1.json");

        assertThat(SheetFile.write(file, ran)).isEmpty();

        assertThat(Files.readString(file)).isEqualTo(SheetFile.toJson(ran)).containsOnlyOnce("\"2 h\"");
        assertThat(withoutPlaces(SheetFile.read(file).orElseThrow().content())).isEqualTo(ran);
        assertThat(SheetFile.write(folder.resolve("missing/1.json"), ran))
                .get()
                .extracting(Problem::code)
                .isEqualTo("LP610");
    }
}
