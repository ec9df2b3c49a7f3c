package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Outcome;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Days of the calendar (ISO 8601): which is before which, and how long it is from one to the other. */
class DateVerdictTest {

    private static Workshop days(String condition) {
        return Workshop.of("""
                        observe oiled : date ask "When was it oiled last?"
                        observe stood : date ask "Since when has it stood?"
                        check there "There" minor { require oiled is stood or oiled is not stood }
                        check holds "It holds" { require\s""" + condition + " }")
                .observe("oiled", "\"2024-02-28\"")
                .observe("stood", "\"2024-03-01\"");
    }

    private static Outcome outcome(String condition) {
        return days(condition).outcome("holds");
    }

    @Test
    void a_day_is_before_at_or_after_another() {
        assertThat(outcome("oiled is before stood")).isEqualTo(PASSES);
        assertThat(outcome("oiled is after stood")).isEqualTo(FAILS);
        assertThat(outcome("oiled is before 2024-02-28")).isEqualTo(FAILS);
        assertThat(outcome("oiled is not before 2024-02-28")).isEqualTo(PASSES);
        assertThat(outcome("oiled is not after 2024-02-28")).isEqualTo(PASSES);
        assertThat(outcome("oiled is 2024-02-28 and oiled is not stood")).isEqualTo(PASSES);
        assertThat(outcome("oiled at least 2024-02-28 and oiled <= 2024-02-28 and oiled < stood"))
                .isEqualTo(PASSES);
        assertThat(outcome("oiled between 2024-02-28 and stood")).isEqualTo(PASSES);
        assertThat(outcome("stood between 2024-01-01 and 2024-02-29")).isEqualTo(FAILS);
    }

    @Test
    void in_brackets_days_are_compared_as_they_are_outside() {
        assertThat(outcome("(oiled is not after stood) and (stood is after oiled)"))
                .isEqualTo(PASSES);
        assertThat(outcome("(not (oiled is\n  after stood or oiled is not\n  before stood))"))
                .isEqualTo(PASSES);
    }

    // 2024 is a leap year: 28 February, 29 February, 1 March.
    @Test
    void from_day_to_day_it_is_so_many_days_in_a_leap_year_too() {
        assertThat(outcome("stood - oiled between 2 d and 2 d")).isEqualTo(PASSES);
        assertThat(outcome("oiled - stood at most -48 h")).isEqualTo(PASSES);
        assertThat(outcome("oiled + 2 d is stood")).isEqualTo(PASSES);
        assertThat(outcome("stood - 24 h - 1 d is oiled")).isEqualTo(PASSES);
        assertThat(outcome("2025-03-01 - 2024-03-01 at most 365 d")).isEqualTo(PASSES);
        assertThat(outcome("(stood - oiled) / 1 d at least 2")).isEqualTo(PASSES);
        assertThat(outcome("stood - oiled + 1 d at most 3 d")).isEqualTo(PASSES);
    }

    @Property(tries = 200, seed = "1")
    void the_time_between_is_that_of_the_calendar(
            @ForAll @IntRange(min = -200_000, max = 200_000) int start,
            @ForAll @IntRange(min = -200_000, max = 200_000) int later) {
        LocalDate one = LocalDate.ofEpochDay(start % 9_000);
        LocalDate other = LocalDate.ofEpochDay(later % 9_000);
        long between = ChronoUnit.DAYS.between(one, other);

        assertThat(outcome(other + " - " + one + " between " + (between - 0.5) + " d and " + (between + 0.5) + " d"))
                .isEqualTo(PASSES);
        assertThat(outcome(one + " + (" + between + " d) is " + other)).isEqualTo(PASSES);
    }

    @Test
    void no_day_lies_at_a_part_of_a_day_or_at_an_uncertain_time() {
        assertThat(days("oiled + 30 h is before stood").check("holds").missing())
                .containsExactly(
                        "oiled + 30 h cannot be computed: a time that is no whole number of days leads to no day");
        assertThat(days("oiled + 2 d (u 1 h) is before stood").check("holds").missing())
                .containsExactly("oiled + 2 d (u 1 h) cannot be computed: an uncertain time leads to no certain day");
        assertThat(days("oiled + 9000000 d is before stood").outcome("holds")).isEqualTo(UNTESTED);
    }

    @Test
    void the_report_shows_days_as_they_are_written() {
        Workshop late = days("oiled is after stood\n if fails advise \"Oiled {oiled}, {stood - oiled} before.\"");

        assertThat(late.check("holds").requirement()).isEqualTo("oiled is after 2024-03-01 (stood)");
        assertThat(late.check("holds").value()).isEqualTo("2024-02-28");
        assertThat(late.check("holds").advice()).containsExactly("Oiled 2024-02-28, 2 d before.");
        assertThat(late.check("holds").evidence()).contains("oiled: 2024-02-28");
    }

    @Test
    void how_many_days_too_many_is_said_in_days() {
        assertThat(days("2024-03-01 - 2023-11-01 at most 90 d").check("holds").evidence())
                .contains("2024-03-01 - 2023-11-01 is 121 d, above 90 d");
    }

    @Test
    void what_is_no_date_is_refused() {
        Workshop wrong = days("oiled is before stood")
                .entries(List.of())
                .observe("oiled", "\"last year\"")
                .observe("stood", "3");

        assertThat(wrong.problems()).isEqualTo("""
                sheet.json:2:1 $.entries[0]: error LP625: oiled is a date, and "last year" is none
                   help: write year, month and day, such as 2026-03-04
                sheet.json:3:1 $.entries[1]: error LP678: stood asks for a date, and the entry gives the bare number 3
                   help: enter it as "value": "2026-03-04\"""");
    }

    @Test
    void a_rehearsal_enters_a_date_and_before_may_be_a_name() {
        Procedure procedure =
                Procedure.compile(SourceText.of("small.inspection", """
                procedure small "Small" revision 1
                observe before : date ask "Before"
                observe when_oiled : one of before, later ask "When was it oiled?"
                check early "Early" { require before is before 2026-03-04 and when_oiled is before }
                rehearse "it" {
                  engine "cards/quillan-15.json" gauges "trays/bench-one.json"
                  enter before 2026-03-03, when_oiled before
                  expect early passes
                }
                """)).orElseThrow();

        assertThat(Rehearsing.run(procedure, Path.of("..", "examples", "bench")))
                .singleElement()
                .satisfies(rehearsed -> {
                    assertThat(rehearsed.problems()).isEmpty();
                    assertThat(rehearsed.surprises()).isEmpty();
                });
    }
}
