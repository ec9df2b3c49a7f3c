package io.github.leafproof.dsl.formula;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How surely each limit is kept: how far away it is, or which leaf speaks for it. */
class SureOfLimitsTest {

    /** A depth gauge with u 0.01 mm. */
    private static Workshop depth(String requirement) {
        return Workshop.of("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                check told "Told" minor { require %s }
                """.formatted(requirement));
    }

    private static Workshop lash(String requirement) {
        return Workshop.of("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Lash"
                check told "Told" minor { require lash %s }
                """.formatted(requirement));
    }

    private static List<String> told(Workshop bench) {
        Judgement judgement = bench.judged();
        Node.Check check = (Node.Check) judgement.graph().node("told").orElseThrow();
        List<Calculation.Step> steps = Calculation.of(check.requirement(), judgement.frame(check));
        return steps.get(steps.size() - 1).details();
    }

    // Φ(2) = 97.7 % (tables of the normal distribution).
    @Test
    void a_reading_beyond_its_lower_limit_lies_beyond_it_and_most_probably_so() {
        assertThat(told(depth("step at least 0.5 mm").observe("step", "\"0.48 mm\"")))
                .containsExactly(
                        "below the lower limit 0.50 mm with a probability of 97 %: it is 0.02 mm beyond it, which is 2.0"
                                + " times their standard uncertainty of 0.010 mm",
                        "the uncertainty comes from depth 0.010 mm", "probability that it holds: 3 %");
    }

    @Test
    void a_reading_between_two_limits_is_told_against_both_the_lower_first() {
        assertThat(told(depth("step between 0.4 mm and 0.5 mm").observe("step", "\"0.45 mm\"")))
                .extracting(line -> line.substring(0, Math.min(23, line.length())))
                .containsExactly(
                        "below the lower limit 0",
                        "above the upper limit 0",
                        "the uncertainty comes f",
                        "probability that it hol");
    }

    @Test
    void a_reading_at_its_limit_counts_as_inside_and_is_so_by_an_even_chance() {
        assertThat(told(depth("step at most 0.5 mm").observe("step", "\"0.5 mm\"")))
                .startsWith(
                        "above the upper limit 0.50 mm with a probability of 50 %: it is 0 mm inside of it, which is"
                                + " 0.0 times their standard uncertainty of 0.010 mm");
    }

    @Test
    void a_reading_ten_uncertainties_away_or_more_is_told_without_tenths() {
        Workshop metres = depth("step at least 0 m").tray("\"u\": \"0.01 mm\"", "\"u\": \"1 m\"");

        assertThat(told(metres.observe("step", "\"10 m\"")).get(0)).contains("which is 10 times their");
        assertThat(told(metres.observe("step", "\"9.9 m\"")).get(0)).contains("which is 9.9 times their");
    }

    // 1.00 ± 0.10 mm, twice: of Student's t with one degree of freedom 0.05/0.1 leaves 1/2 - atan(1/2)/π =
    // 35.2 % below (Cauchy's law), and what speaks against the engine is rounded up.
    @Test
    void what_rests_on_few_readings_is_judged_by_students_law_and_says_so() {
        Workshop two = Workshop.of("""
                        observe step : series of length ask "Measure it"
                        check told "Told" { require mean(step) at least 0.95 mm }
                        """).enter("{ \"observe\": \"step\", \"series\": [ \"0.90 mm\", \"1.10 mm\" ] }");

        assertThat(told(two))
                .startsWith(
                        "below the lower limit 0.95 mm with a probability of 36 %: it is 0.05 mm inside of it, which"
                                + " is 0.5 times their standard uncertainty of 0.10 mm (Student's t with 1.0 degrees of freedom)");
    }

    @Test
    void where_leaves_show_both_limits_the_bound_for_both_together_is_named() {
        String both = "both together are shown at least to the sum of the two less one (Fréchet's bound)";

        assertThat(told(lash("between 0.03 mm and 0.10 mm").feel("lash", "passes 0.05 mm", "refuses 0.08 mm")))
                .contains(both);
        assertThat(told(lash("at least 0.03 mm").feel("lash", "passes 0.05 mm", "refuses 0.08 mm")))
                .doesNotContain(both);
        assertThat(told(lash("at most 0.10 mm").feel("lash", "passes 0.05 mm", "refuses 0.08 mm")))
                .doesNotContain(both);
        assertThat(told(lash("between 0.03 mm and 0.10 mm").feel("lash", "passes 0.05 mm")))
                .doesNotContain(both);
    }

    @Test
    void of_leaves_that_show_a_limit_alike_the_one_nearest_to_the_gap_is_named() {
        assertThat(told(lash("between 0.02 mm and 0.14 mm")
                        .feel("lash", "passes 0.04 mm", "passes 0.05 mm", "refuses 0.10 mm", "refuses 0.08 mm")))
                .startsWith(
                        "at least 0.02 mm is shown with a probability of 100 % by the leaf 0.05 mm, which passes: it"
                                + " measures 0.0500 mm (u 0.0010 mm)",
                        "the uncertainty of that comes from leaves 0.05 mm 0.0010 mm",
                        "at most 0.14 mm is shown with a probability of 100 % by the leaf 0.08 mm, which refuses: it"
                                + " measures 0.0810 mm (u 0.0010 mm)");
    }

    // The 0.10 leaf measures 0.110 mm, here with u 0.02 mm: Φ(0.04/0.02) = 97.7 %.
    @Test
    void a_leaf_measured_well_shows_more_than_a_thicker_one_measured_badly() {
        Workshop bench = lash("at least 0.07 mm")
                .tray("\"0.110 mm\", \"u\": \"0.001 mm\"", "\"0.110 mm\", \"u\": \"0.02 mm\"")
                .feel("lash", "passes 0.08 mm", "passes 0.10 mm");

        assertThat(told(bench).get(0)).contains("by the leaf 0.08 mm");
    }
}
