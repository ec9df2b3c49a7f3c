package io.github.leafproof.dsl.history;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Which sheets make a history, and in which order. */
class OneEngineTest {

    private static final Workshop BENCH = Workshop.of("""
            observe a : yes/no ask "A?"
            check c "C" minor { require a }
            """);

    private static Workshop at(String moment) {
        return BENCH.on(moment.substring(0, 10))
                .enter("{ \"observe\": \"a\", \"value\": true, \"at\": \"" + moment + "\" }");
    }

    private static String problems(Workshop... sheets) {
        return Life.of(sheets).inOrder().problems().stream()
                .map(problem -> problem.toString().replaceAll(":[0-9]+:[0-9]+ ", " "))
                .collect(Collectors.joining("\n"));
    }

    @Test
    void sheets_stand_in_the_order_of_their_days_and_within_a_day_of_their_first_entries() {
        Workshop first = at("2025-03-03T16:00:00Z");
        Workshop evening = at("2025-03-04T20:00:00+02:00");
        Workshop noon = at("2025-03-04T12:00:00-05:00");

        assertThat(Life.of(evening, noon, first).history().looks())
                .extracting(look -> look.file().sha256())
                .containsExactly(
                        first.sheetRead().sha256(),
                        noon.sheetRead().sha256(),
                        evening.sheetRead().sha256());
    }

    @Test
    void sheets_of_one_day_without_times_stay_in_the_order_given() {
        Workshop one = BENCH.observe("a", "true");
        Workshop two = BENCH.observe("a", "false");

        assertThat(Life.of(two, one).history().looks())
                .extracting(look -> look.file().sha256())
                .containsExactly(two.sheetRead().sha256(), one.sheetRead().sha256());
    }

    @Test
    void everything_that_keeps_sheets_apart_is_told_at_once() {
        String told = problems(
                at("2025-03-03T10:00:00Z"),
                at("2025-03-04T10:00:00Z"),
                at("2025-03-05T10:00:00Z").engine("{ \"serial\": \"Q15-2\" }"),
                at("2025-03-06T10:00:00Z").card("Quillan Q15-4", "Quillan Q10-4"),
                at("2025-03-07T10:00:00Z").engine("{}"),
                at("2025-03-03T10:00:00Z"));

        assertThat(told.lines().filter(line -> !line.startsWith("   ")).collect(Collectors.toList()))
                .isEqualTo(
                        List.of(
                                "sheet.json $.engine: error LP685: the sheet does not say which engine it is about: it states no"
                                        + " serial",
                                "sheet.json $.engine.serial: error LP686: the sheet is about another engine: Quillan Q15-4, serial"
                                        + " Q15-2, not Quillan Q15-4, serial Q15-1",
                                "sheet.json $.engine.serial: error LP686: the sheet is about another engine: Quillan Q10-4, serial"
                                        + " Q15-1, not Quillan Q15-4, serial Q15-1",
                                "sheet.json: error LP687: this sheet is there twice: sheet.json is the same to the last letter"));
    }

    @Test
    void an_engine_has_not_run_less_on_a_later_day() {
        assertThat(problems(Life.day(BENCH, "2025-03-03", "0.7 h"), Life.day(BENCH, "2025-03-05", "30 min")))
                .startsWith(
                        "sheet.json $.running_time: error LP684: the engine had run 30 min when this sheet of 2025-03-05"
                                + " was begun, and 0.7 h by the end of sheet.json of 2025-03-03\n");
    }

    @Test
    void a_sheet_that_says_nothing_of_running_hides_no_slip() {
        assertThat(problems(
                        Life.day(BENCH, "2025-03-03", "0.7 h"),
                        BENCH.on("2025-03-04").observe("a", "true"),
                        Life.day(BENCH, "2025-03-05", "0.5 h")))
                .contains("LP684");
    }
}
