package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Where first order is not good enough, the report says so (JCGM 101 clause 8, from memory). */
class PropagationTest {

    /** A depth gauge with u 0.01 mm, and an infrared thermometer with limits of 1 K. */
    static Workshop depth(String rules) {
        return Workshop.of("""
                gauge depth : reading of length
                gauge infrared : reading of temperature
                observe step : length with depth ask "Step"
                observe other : length with depth ask "Other"
                observe head : temperature with infrared ask "Head"
                observe room : temperature with infrared ask "Room"
                """ + rules);
    }

    private static List<String> doubted(Workshop bench, String check) {
        Judgement judgement = bench.judged();
        Propagation propagation = Propagation.of(judgement);
        return propagation.doubts(judgement.verdict(check).orElseThrow().check()).stream()
                .map(Propagation.Doubt::number)
                .toList();
    }

    // χ² of one degree of freedom lies from 0.000 98 to 5.02 with 95 % (any table), here times u² = 0.0001 mm².
    @Test
    void the_square_of_a_reading_near_nought_is_less_sure_than_its_verdict() {
        Workshop square = depth("let area = step ^ 2\ncheck small \"Small\" major { require area at most 0.0001 mm² }")
                .observe("step", "\"0.00 mm\"");

        assertThat(square.outcome("small")).isEqualTo(PASSES);
        assertThat(square.check("small").notes())
                .singleElement()
                .asString()
                .matches("area was judged as exactly 0 mm² \\(first order, 95 %\\), but Monte Carlo trials give"
                        + " 0\\.00000 mm² to 0\\.0005[01] mm²: this verdict may claim more than is known; read better, or"
                        + " put the limit on what is read");
    }

    @Property(tries = 10, seed = "1")
    void sums_and_multiples_of_normal_readings_are_never_doubted(
            @ForAll @DoubleRange(min = -9, max = 9) double a, @ForAll @DoubleRange(min = -9, max = 9) double b) {
        Workshop sum = depth("let mix = step * (" + a + ") - other * (" + b + ") + 1 mm\n"
                        + "check some \"Some\" major { require mix between 0 mm and 1 mm }")
                .observe("step", "\"0.31 mm\"")
                .observe("other", "\"0.00 mm\"");

        assertThat(doubted(sum, "some")).isEmpty();
        assertThat(sum.report().notes()).noneMatch(note -> note.contains("Monte Carlo"));
    }

    @Property(tries = 10, seed = "1")
    void the_square_of_what_may_well_be_nought_always_is(@ForAll @DoubleRange(min = -1, max = 1) double units) {
        Workshop square = depth("check small \"Small\" major { require (step - other) ^ 2 at most 1 mm² }")
                .tray(
                        "\"name\": \"depth\", \"kind\": \"reading\", \"of\": \"length\", \"u\": \"0.01 mm\"",
                        "\"name\": \"depth\", \"kind\": \"reading\", \"of\": \"length\", \"resolution\": \"0.01 mm\"")
                .observe("step", "\"" + (1 + units * 0.004) + " mm\"")
                .observe("other", "\"1 mm\"");

        assertThat(doubted(square, "small")).containsExactly("(step - other) ^ 2");
    }

    @Test
    void what_one_gauge_is_off_by_is_drawn_once_for_all_its_readings() {
        // Both readings err alike, so that their difference is certain; drawn one by one it would scatter.
        Workshop same = depth("check same \"Same\" major { require (head - room) ^ 2 at most 1 K^2 }")
                .observe("head", "\"21 °C\"")
                .observe("room", "\"21 °C\"");

        assertThat(doubted(same, "same")).isEmpty();
    }

    @Test
    void a_value_on_the_way_is_doubted_as_well_as_what_is_made_of_it() {
        Workshop chain = depth("""
                        let area = step ^ 2
                        let volume = area * 10 mm
                        check a "A" major { require volume at most 5 mm³ }
                        check b "B" major { require step at most 5 mm }
                        """).observe("step", "\"0.01 mm\"");

        assertThat(doubted(chain, "a")).containsExactly("area", "volume");
        assertThat(doubted(chain, "b")).isEmpty();
    }

    @Test
    void conditions_are_followed_through_their_names_functions_and_the_arm_that_counts() {
        Workshop followed = depth("""
                define small(x: length) = x * x at most 1 mm²
                let ok = small(other) and not (step ^ 2 at least 1 mm²)
                check named "Named" major { require ok }
                check chosen "Chosen" major {
                  require if step at most 1 mm then step ^ 4 at most 1 mm^4 else step ^ 6 at most 1 mm^6 }
                """).observe("step", "\"0.00 mm\"").observe("other", "\"0.00 mm\"");

        assertThat(doubted(followed, "named")).containsExactly("small(other)", "step ^ 2");
        assertThat(doubted(followed, "chosen")).containsExactly("step ^ 4");
    }

    @Test
    void a_choice_is_followed_into_its_arm() {
        Workshop chosen = depth("""
                observe face : one of flat, round ask "Face"
                check fits "Fits" major {
                  require choose face { flat: step ^ 2 at most 1 mm²   round: other ^ 2 at most 1 mm² } }
                """)
                .observe("step", "\"0.00 mm\"")
                .observe("other", "\"0.00 mm\"")
                .observe("face", "\"round\"");

        assertThat(doubted(chosen, "fits")).containsExactly("other ^ 2");
    }

    // 2 standard uncertainties above nought: Φ(−2) = 2.3 % of what may be has no root (normal table).
    @Test
    void what_has_no_value_for_some_readings_possible_says_so() {
        Workshop root = depth("check small \"Small\" major { require sqrt(step * 1 mm) at most 1 mm }")
                .observe("step", "\"0.02 mm\"");

        assertThat(root.check("small").notes())
                .singleElement()
                .asString()
                .contains("and in 3 % of the cases that its readings leave possible it cannot be computed at all");
    }

    // Limits of 1 K: ±0.95 K hold 95 % of them, and first order takes 1.96 × 1 K/√3 = 1.13 K. Twice as much has a
    // standard uncertainty of 1 K to one digit, and half a kelvin is tolerated.
    @Test
    void what_is_known_better_than_was_judged_is_said_once_for_the_whole_report() {
        Workshop warm = depth("""
                        let above = head - 0 °C
                        let twice = above * 2
                        check cool "Cool" major { require above at most 90 K }
                        check mild "Mild" major { require twice at least 10 K }
                        """).observe("head", "\"21 °C\"");

        assertThat(warm.check("cool").notes()).isEmpty();
        assertThat(warm.report().notes())
                .filteredOn(note -> note.contains("Monte Carlo"))
                .containsExactly(
                        "known better than was judged (95 % by Monte Carlo trials and by first order): above is"
                                + " 20.05 K to 21.95 K, taken as 19.87 K to 22.13 K");
    }

    @Test
    void nothing_is_said_of_what_was_not_judged() {
        Workshop untested = depth("check small \"Small\" major { require step ^ 2 + other ^ 2 at most 1 mm² }")
                .observe("step", "\"0.00 mm\"");

        assertThat(untested.outcome("small")).isEqualTo(Outcome.UNTESTED);
        assertThat(untested.check("small").notes()).isEmpty();
    }

    @Test
    void where_a_gap_lies_between_its_leaves_is_its_own_whatever_a_function_calls_it() {
        Workshop gaps = Workshop.of("""
                gauge leaves : leaf set
                observe one : gap with leaves ask "One"
                observe two : gap with leaves ask "Two"
                define half(g: gap) = g / 2
                check alike "Alike" major { require half(one) - half(two) within 0.001 mm of 0 mm }
                check product "Product" major { require half(one) * half(two) at most 1 mm² }
                """)
                .feel("one", "passes 0.05 mm", "refuses 0.08 mm")
                .feel("two", "passes 0.05 mm", "refuses 0.08 mm");

        assertThat(gaps.outcome("alike")).isNotEqualTo(PASSES);
        assertThat(doubted(gaps, "product")).isEmpty();
    }

    /** What is doubted of all checks in their order, with so much work allowed for; at last how many numbers got none. */
    private static String opinions(Workshop bench, long work) {
        Judgement judgement = bench.judged();
        Propagation propagation = Propagation.of(judgement, work);
        return judgement.graph().checks().stream()
                        .flatMap(check -> propagation.doubts(check).stream())
                        .map(Propagation.Doubt::number)
                        .collect(Collectors.joining(", "))
                + "; " + propagation.unchecked() + " without";
    }

    // Ten thousand trials are the fewest, and a square is computed from two values.
    @Test
    void numbers_beyond_the_work_that_is_allowed_for_get_no_second_opinion_and_are_counted() {
        Workshop two = depth("""
                check a "A" major { require step ^ 2 at most 1 mm² }
                check b "B" major { require other ^ 2 at most 1 mm² }
                """).observe("step", "\"0.00 mm\"").observe("other", "\"0.00 mm\"");

        assertThat(opinions(two, 70_000)).isEqualTo("step ^ 2, other ^ 2; 0 without");
        assertThat(opinions(two, 35_000)).isEqualTo("step ^ 2; 1 without");
        assertThat(opinions(two, 15_000)).isEqualTo("; 2 without");
        assertThat(opinions(two, 1)).isEqualTo("; 2 without");
    }

    @Test
    void a_number_that_rests_on_more_values_than_are_allowed_for_is_counted_once() {
        String chain = IntStream.range(1, 30)
                .mapToObj(i -> "let x" + i + " = x" + (i - 1) + " * 2")
                .collect(Collectors.joining("\n"));
        Workshop much = depth(
                        "let x0 = step ^ 2\n" + chain + "\ncheck last \"Last\" major { require x29 at most 1 mm² }")
                .observe("step", "\"0.00 mm\"");

        assertThat(opinions(much, 60)).isEqualTo("; 1 without");
    }

    @Test
    void a_condition_of_more_parts_than_are_allowed_for_is_counted_once() {
        String parts = IntStream.range(0, 30)
                .mapToObj(i -> "step at most " + (i + 1) + " mm")
                .collect(Collectors.joining(" and "));
        Workshop many =
                depth("check all \"All\" major { require " + parts + " }").observe("step", "\"0.00 mm\"");

        assertThat(opinions(many, 20)).isEqualTo("; 1 without");
        assertThat(opinions(many, 1_000)).isEqualTo("; 0 without");
    }

    @Test
    void the_note_stands_in_the_report_for_people() {
        Workshop bench = depth("""
                let area = step ^ 2
                check small "The step is small" major {
                  require area at most 0.0001 mm²
                  because "the engine card"
                }
                """).observe("step", "\"0.01 mm\"");

        Golden.hold("reports/propagation", TextReport.of(bench.report(), false));
    }
}
