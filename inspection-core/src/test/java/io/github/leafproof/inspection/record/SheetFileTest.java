package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Quantity;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
