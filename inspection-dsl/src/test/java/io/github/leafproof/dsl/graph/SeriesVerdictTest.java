package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings that were repeated: what their scatter shows, and what no repeating makes better (JCGM 100 clause 4.2). */
class SeriesVerdictTest {

    /** A depth gauge with u 0.01 mm. */
    private static Workshop steps(String rules) {
        return Workshop.of(
                "gauge depth : reading of length\nobserve step : series of length with depth ask \"Measure it in three"
                        + " places\"\n" + rules);
    }

    private static String series(String name, String readings) {
        return "{ \"observe\": \"" + name + "\", \"series\": [ " + readings + " ] }";
    }

    @Test
    void a_mean_is_judged_by_its_scatter_and_by_what_the_gauge_may_be_off() {
        Workshop three = steps("check deep \"Deep\" { require mean(step) at least 0.95 mm }")
                .enter(series("step", "\"0.99 mm\", \"1.00 mm\", \"1.01 mm\""));

        // s is 0.01 mm, so u is √(0.01²/3 + 0.01²) mm = 0.011 55 mm.
        assertThat(three.outcome("deep")).isEqualTo(PASSES);
        assertThat(three.check("deep").value()).isEqualTo("1.000 mm (u 0.012 mm)");
        assertThat(three.check("deep").evidence())
                .containsExactly(
                        "mean(step) is 1.000 mm (u 0.012 mm), inside the limits with a probability of > 99.9 %",
                        "step: 0.99 mm, 1 mm, 1.01 mm, with depth");
    }

    @Test
    void few_readings_leave_open_by_students_law_what_many_show() {
        String rules = "check deep \"Deep\" { require mean(step) at least 0.95 mm }";
        Workshop bare = Workshop.of("observe step : series of length ask \"Measure it\"\n" + rules);

        // 1.00 ± 0.10 mm, twice: u is 0.1 mm, and of Student's t with one degree of freedom (1.00 − 0.95)/0.1 leaves 65
        // %.
        Workshop two = bare.enter(series("step", "\"0.90 mm\", \"1.10 mm\""));
        assertThat(two.outcome("deep")).isEqualTo(OPEN);
        assertThat(two.conformity("deep").low()).isEqualTo(0.5 + Math.atan(0.5) / Math.PI, within(1e-9));
        String many = "\"0.90 mm\", \"1.10 mm\"" + ", \"0.90 mm\", \"1.10 mm\"".repeat(15);
        assertThat(bare.enter(series("step", many)).outcome("deep")).isEqualTo(PASSES);
        assertThat(two.check("deep").notes())
                .containsExactly(
                        "step was entered without a gauge: only what the readings scatter counts, and not what an"
                                + " instrument may be off");
    }

    @Test
    void what_the_gauge_is_off_cancels_in_the_difference_of_two_means_and_in_a_slope() {
        Workshop two = steps("""
                observe other : series of length with depth ask "And there"
                check same "Same" { require mean(step) - mean(other) within 0.002 mm of 0 mm }
                check steady "Steady" { require slope(step) within 0.002 mm of 0 mm }
                """)
                .enter(series("step", "\"1.000 mm\", \"1.001 mm\", \"1.000 mm\", \"1.001 mm\""))
                .enter(series("other", "\"1.000 mm\", \"1.001 mm\", \"1.001 mm\", \"1.000 mm\""));

        assertThat(two.outcome("same")).isEqualTo(PASSES);
        assertThat(two.outcome("steady")).isEqualTo(PASSES);
    }

    @Test
    void a_slope_that_is_plain_through_its_scatter_fails() {
        Workshop cooling = Workshop.of("""
                gauge infrared : reading of temperature
                observe head : series of temperature with infrared ask "Head, once a minute"
                check settled "Settled" { require slope(head) within 0.5 K of 0 K }
                """).enter(series("head", "\"34.0 °C\", \"31.1 °C\", \"28.0 °C\", \"25.1 °C\""));

        assertThat(cooling.outcome("settled")).isEqualTo(FAILS);
        assertThat(cooling.check("settled").evidence().get(0))
                .isEqualTo("slope(head) is -2.980 K (u 0.028 K), below -0.5 K");
    }

    @Test
    void one_reading_shows_no_mean_and_the_report_asks_for_more() {
        Workshop one = steps("check deep \"Deep\" { require mean(step) at least 0.95 mm }\n"
                        + "check steady \"Steady\" { require slope(step) within 1 mm of 0 mm }")
                .enter(series("step", "\"1.00 mm\""));

        assertThat(one.outcome("deep")).isEqualTo(UNTESTED);
        assertThat(one.check("deep").missing())
                .containsExactly("step has one reading, and its mean takes two at least");
        assertThat(one.check("steady").missing())
                .containsExactly("step has one reading, and its slope takes three at least");
        assertThat(one.report().next())
                .singleElement()
                .satisfies(step -> assertThat(step.step()).startsWith("Measure it in three places (step, with depth)"));
    }

    @Test
    void readings_entered_later_are_added_and_a_slip_of_the_pen_takes_one_entry_back() {
        Workshop bench = steps("check often \"Often\" { require count(step) is 3 }\n"
                + "check rising \"Rising\" { require slope(step) at least 0.9 mm }");
        Workshop added = bench.enter(series("step", "\"1 mm\", \"2 mm\"")).enter(series("step", "\"3.01 mm\""));

        assertThat(added.outcome("often")).isEqualTo(PASSES);
        assertThat(added.outcome("rising")).isEqualTo(PASSES);
        Workshop corrected = added.enter("{ \"observe\": \"step\", \"series\": [ \"1.01 mm\" ], \"corrects\": true }");
        assertThat(corrected.outcome("often")).isEqualTo(PASSES);
        assertThat(corrected.outcome("rising")).isEqualTo(OPEN);
        assertThat(corrected.check("often").evidence())
                .contains("step: 3.01 mm, with depth (a slip of the pen, corrected later)");
    }

    @Test
    void what_was_read_before_an_adjustment_is_as_found_and_what_was_read_behind_it_as_left() {
        Workshop adjusted = steps("check deep \"Deep\" { require mean(step) at least 0.95 mm }")
                .enter(series("step", "\"0.50 mm\", \"0.51 mm\""))
                .enter("{ \"adjust\": \"step\" }")
                .enter(series("step", "\"1.00 mm\", \"1.01 mm\""));

        assertThat(adjusted.outcome("deep")).isEqualTo(PASSES);
        assertThat(adjusted.check("deep").asFound()).satisfies(found -> {
            assertThat(found.outcome()).isEqualTo(FAILS);
            assertThat(found.value()).isEqualTo("0.505 mm (u 0.011 mm)");
        });
    }

    @Test
    void the_spread_is_known_as_far_as_the_number_of_readings_allows() {
        String rules = "check steady \"Steady\" { require spread(step) at most 0.05 mm }";
        Workshop bare = Workshop.of("observe step : series of length ask \"Measure it\"\n" + rules);

        // s is 0.042 mm; of two readings it is known to 71 %, of forty to 11 % (JCGM 100, E.4.3).
        assertThat(bare.enter(series("step", "\"0.97 mm\", \"1.03 mm\"")).outcome("steady"))
                .isEqualTo(OPEN);
        String many = "\"0.97 mm\", \"1.03 mm\"" + ", \"0.97 mm\", \"1.03 mm\"".repeat(19);
        assertThat(bare.enter(series("step", many)).outcome("steady")).isEqualTo(PASSES);
    }

    @Test
    void counts_are_counted_again_and_again() {
        Workshop flips =
                Workshop.of("gauge clicks : counter\nobserve flips : series of count with clicks ask \"Flips\"\n"
                        + "check few \"Few\" { require mean(flips) at most 8 }");

        assertThat(flips.enter(series("flips", "3, 4, 3")).outcome("few")).isEqualTo(PASSES);
        assertThat(flips.enter(series("flips", "3, 4.5, -1")).problems()).isEqualTo("""
                sheet.json:2:1 $.entries[0]: error LP624: 4.5 is no count; flips is a whole number from 0
                sheet.json:2:1 $.entries[0]: error LP624: -1 is no count; flips is a whole number from 0""");
    }

    @Test
    void a_function_may_be_given_the_readings_and_a_text_shows_them() {
        Workshop shown = steps("define middle(x : series of length) = mean(x)\n"
                        + "check deep \"Deep\" { require middle(step) at least 2 mm\n if low advise \"Read: {step}\" }")
                .enter(series("step", "\"1.00 mm\", \"1.01 mm\""));

        assertThat(shown.check("deep").advice()).containsExactly("Read: 1 mm, 1.01 mm");
    }

    @Test
    void a_gauge_past_due_is_named_for_a_series_too() {
        Workshop late = Workshop.of("""
                gauge infrared : reading of temperature
                observe head : series of temperature with infrared ask "Head"
                check cool "Cool" { require mean(head) at most 30 degC }
                """)
                .enter(series("head", "\"21.0 °C\", \"21.1 °C\""))
                .on("2027-03-01");

        assertThat(late.check("cool").notes()).containsExactly("leans on infrared, past due for calibration");
    }

    @Test
    void a_single_value_for_a_series_and_a_series_for_a_single_value_are_refused() {
        Workshop mixed = Workshop.of("""
                observe step : series of length ask "Step"
                observe head : temperature ask "Head"
                observe flips : series of count ask "Flips"
                check deep "Deep" { require mean(step) at least 1 mm and head at most 30 degC and count(flips) at least 1 }
                """)
                .observe("step", "\"1 mm\"")
                .enter(series("head", "\"21 °C\", \"22 °C\""))
                .observe("flips", "3");

        assertThat(mixed.problems()).isEqualTo("""
                sheet.json:2:1 $.entries[0]: error LP678: step asks for a series of length, and the entry gives "1 mm"
                   help: enter it as "series": [ "…", "…" ], each a number and its unit
                sheet.json:3:1 $.entries[1]: error LP678: head asks for a temperature, and the entry gives a series of readings
                   help: enter it as "value": "…", a number and its unit
                sheet.json:4:1 $.entries[2]: error LP678: flips asks for a series of count, and the entry gives the bare number 3
                   help: enter it as "series": [ 3, 4 ]""");
        assertThat(mixed.entries(List.of(series("step", "\"1 K\", \"2 K\""))).problems())
                .isEqualTo("""
                        sheet.json:2:1 $.entries[0]: error LP622: step is a length, and 1 K is a temperature difference
                           help: enter a length
                        sheet.json:2:1 $.entries[0]: error LP622: step is a length, and 2 K is a temperature difference
                           help: enter a length""");
    }

    @Test
    void a_rehearsal_enters_readings_with_commas_between() {
        Procedure procedure =
                Procedure.compile(SourceText.of("small.inspection", """
                procedure small "Small" revision 1
                observe step : series of length ask "Step"
                observe turns : series of number ask "Turns"
                observe sound : yes/no ask "Sound?"
                check often "Often" { require count(step) is 3 and mean(turns) at most 30 and sound }
                rehearse "it" {
                  engine "cards/quillan-15.json" gauges "trays/bench-one.json"
                  enter step series 1 mm, 1.01 mm, 2 thou, turns series -1, 3, sound yes
                  expect often passes
                }
                """)).orElseThrow();

        assertThat(Rehearsing.run(procedure, Path.of("..", "examples", "bench")))
                .singleElement()
                .satisfies(rehearsed -> {
                    assertThat(rehearsed.problems()).isEmpty();
                    assertThat(rehearsed.surprises()).isEmpty();
                });
    }

    @Test
    void that_it_could_not_be_read_any_more_takes_nothing_from_the_readings_before() {
        Workshop three = steps("check deep \"Deep\" { require mean(step) at least 0.95 mm }")
                .enter(series("step", "\"0.99 mm\", \"1.00 mm\", \"1.01 mm\""))
                .enter("{ \"observe\": \"step\", \"cannot\": \"the foot slipped\" }");

        assertThat(three.outcome("deep")).isEqualTo(PASSES);
    }

    @Test
    void a_reading_of_none_counts_among_counts_and_one_of_half_does_not() {
        Workshop flips = Workshop.of("""
                observe flips : series of count ask "How many, each time?"
                check few "Few" { require mean(flips) at most 9 }
                """);

        assertThat(flips.enter(series("flips", "\"0\", \"1\", \"0\"")).outcome("few"))
                .isEqualTo(PASSES);
        assertThat(flips.enter(series("flips", "\"0\", \"0.5\"")).problems()).contains("LP624");
        assertThat(flips.enter(series("flips", "\"-1\", \"1\"")).problems()).contains("LP624");
    }
}
