package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.TOLERATED;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Side;
import org.junit.jupiter.api.Test;

/** What is read, counted, graded or ticked. Readings are judged after JCGM 106 clause 7 (from memory). */
class ReadingVerdictTest {

    private static Workshop depth(String rules) {
        return Workshop.of(
                "gauge depth : reading of length\nobserve step : length with depth ask \"Measure it\"\n" + rules);
    }

    @Test
    void a_reading_passes_at_95_percent_where_99_percent_leaves_it_open() {
        // 1.00 − 0.98 is two standard uncertainties: Φ(2) = 97.7 % (normal table).
        Workshop two = depth("check sure \"Sure\" major { require step at most 1 mm }\n"
                        + "check surer \"Surer\" major { at 99 % require step at most 1 mm }")
                .observe("step", "\"0.98 mm\"");

        assertThat(two.outcome("sure")).isEqualTo(PASSES);
        assertThat(two.conformity("sure").low()).isEqualTo(0.97725, within(1e-5));
        assertThat(two.outcome("surer")).isEqualTo(OPEN);
        assertThat(two.check("surer").evidence().get(0))
                .isEqualTo("step is 0.980 mm (u 0.010 mm): too near a limit for its uncertainty; it is inside with a"
                        + " probability of 97 %, and 99 % is asked for");
        assertThat(two.report().notes()).anyMatch(note -> note.startsWith("Surer: decided at 99 %"));
    }

    @Test
    void by_simple_acceptance_the_reading_itself_decides() {
        Workshop shared =
                depth("decide by simple acceptance\ncheck small \"Small\" major { require step at most 1 mm }");

        assertThat(shared.observe("step", "\"0.999 mm\"").outcome("small")).isEqualTo(PASSES);
        assertThat(shared.observe("step", "\"1.001 mm\"").outcome("small")).isEqualTo(FAILS);
    }

    @Test
    void a_reading_names_the_side_it_fails_on() {
        Workshop window = depth("check inside \"Inside\" major { require step between 1 mm and 2 mm\n"
                + "if high advise \"too deep\"\nif low advise \"too shallow\"\nif fails advise \"either\" }");

        assertThat(window.observe("step", "\"2.5 mm\"").check("inside").advice())
                .containsExactly("too deep", "either");
        assertThat(window.observe("step", "\"2.5 mm\"")
                        .check("inside")
                        .evidence()
                        .get(0))
                .isEqualTo("step is 2.500 mm (u 0.010 mm), above 2 mm");
        assertThat(window.observe("step", "\"0.5 mm\"").check("inside").advice())
                .containsExactly("too shallow", "either");
        assertThat(window.observe("step", "\"1.5 mm\"")
                        .check("inside")
                        .evidence()
                        .get(0))
                .isEqualTo("step is 1.500 mm (u 0.010 mm), inside the limits");
    }

    @Test
    void limits_far_closer_than_the_gauge_can_tell_are_not_kept_and_no_side_is_named() {
        Report.Check check = depth("check inside \"Inside\" major { require step between 0.9999 mm and 1.0001 mm }")
                .observe("step", "\"1.00 mm\"")
                .check("inside");

        assertThat(check.outcome()).isEqualTo(FAILS);
        assertThat(check.side()).isEqualTo(Side.NONE);
        assertThat(check.evidence().get(0))
                .isEqualTo("step is 1.000 mm (u 0.010 mm), not inside its limits: it is far less well known than they"
                        + " are wide");
    }

    @Test
    void outside_the_limits_and_inside_the_margin_is_tolerated() {
        Workshop margin = depth("""
                check small "Small" major { require step at most 1 mm tolerate to 1.5 mm }
                check large "Large" major { require step at least 2 mm tolerate to 1 mm }
                check near "Near" major { require step within 0.1 mm of 1 mm tolerate to 0.4 mm }
                """);
        Workshop read = margin.observe("step", "\"1.2 mm\"");

        assertThat(read.outcome("small")).isEqualTo(TOLERATED);
        assertThat(read.outcome("large")).isEqualTo(TOLERATED);
        assertThat(read.outcome("near")).isEqualTo(TOLERATED);
        assertThat(read.check("small").evidence().get(0))
                .isEqualTo("step is 1.200 mm (u 0.010 mm), outside the limits but inside what is tolerated");
        assertThat(margin.observe("step", "\"1.005 mm\"")
                        .check("small")
                        .evidence()
                        .get(0))
                .isEqualTo("step is 1.005 mm (u 0.010 mm), not shown to be inside the limits but inside what is"
                        + " tolerated");
        assertThat(margin.observe("step", "\"1.8 mm\"").outcome("near")).isEqualTo(FAILS);
        assertThat(margin.observe("step", "\"1.8 mm\"").check("near").requirement())
                .isEqualTo("step within 0.1 mm of 1 mm, tolerated to 0.4 mm");
    }

    @Test
    void what_one_gauge_is_off_by_cancels_in_the_difference_of_two_readings() {
        // Each reading is uncertain by 1 K/√3; the difference of the two is not uncertain at all.
        Workshop cold = Workshop.of("""
                gauge infrared : reading of temperature
                observe head : temperature with infrared ask "Head"
                observe room : temperature with infrared ask "Room"
                check cold "Cold" major { require head - room within 3 K of 0 K }
                """);

        assertThat(cold.observe("head", "\"24.0 °C\"")
                        .observe("room", "\"21.0 °C\"")
                        .outcome("cold"))
                .isEqualTo(PASSES);
        assertThat(cold.observe("head", "\"24.1 °C\"")
                        .observe("room", "\"21.0 °C\"")
                        .outcome("cold"))
                .isEqualTo(FAILS);
        assertThat(cold.observe("head", "\"75.2 °F\"")
                        .observe("room", "\"21.0 °C\"")
                        .check("cold")
                        .value())
                .isEqualTo("3 K");
    }

    @Test
    void whether_a_measured_ratio_is_exactly_two_nobody_can_tell() {
        Workshop ratio = depth("""
                observe turns : count ask "Turns of the crank"
                let twice = step / 1 mm
                check is_two "Is two" major { require twice is 2 }
                check is_not_two "Is not two" major { require twice is not 2 }
                check none "None" major { require turns is 0 }
                check some "Some" major { require turns is not 0 }
                check third "A third" major { require turns / 3 is 1 }
                """).observe("step", "\"2.00 mm\"").observe("turns", "3");

        assertThat(ratio.outcome("is_two")).isEqualTo(OPEN);
        assertThat(ratio.outcome("is_not_two")).isEqualTo(OPEN);
        assertThat(ratio.conformity("is_two").low()).isZero();
        assertThat(ratio.conformity("is_two").high()).isEqualTo(1);
        assertThat(ratio.check("is_two").evidence().get(0))
                .isEqualTo("twice is 2.000 (u 0.010): of a measured number nobody can tell whether it is exactly 2");
        assertThat(ratio.check("is_not_two").requirement()).isEqualTo("twice is not 2");
        assertThat(ratio.outcome("none")).isEqualTo(FAILS);
        assertThat(ratio.outcome("some")).isEqualTo(PASSES);
        assertThat(ratio.outcome("third")).isEqualTo(PASSES);
        assertThat(depth("check is_two \"Is two\" major { require step / 1 mm is 2 }")
                        .outcome("is_two"))
                .isEqualTo(UNTESTED);
    }

    @Test
    void against_a_limit_read_with_the_same_gauge_only_the_difference_counts() {
        Workshop same = Workshop.of("""
                gauge infrared : reading of temperature
                observe head : temperature with infrared ask "Head"
                observe room : temperature with infrared ask "Room"
                check under "Under" major { require head < room }
                check over "Over" major { require head at least room }
                check between_them "Between" major { require head between room and room }
                """);
        Workshop read = same.observe("head", "\"20.9 °C\"").observe("room", "\"21.0 °C\"");

        assertThat(read.outcome("under")).isEqualTo(PASSES);
        assertThat(read.outcome("over")).isEqualTo(FAILS);
        assertThat(read.verdict("between_them").side()).isEqualTo(Side.LOW);
    }

    @Test
    void an_exact_value_against_a_measured_limit_is_as_uncertain_as_the_limit() {
        Workshop limit = depth("check wide \"Wide\" major { require engine.lash_max > step }");

        assertThat(limit.observe("step", "\"0.05 mm\"").outcome("wide")).isEqualTo(PASSES);
        assertThat(limit.observe("step", "\"0.095 mm\"").outcome("wide")).isEqualTo(OPEN);
    }

    @Test
    void a_count_exactly_at_a_strict_limit_is_beyond_it() {
        Workshop flips = Workshop.of("""
                gauge clicks : counter
                observe flips : count with clicks ask "How many flips?"
                check few "Few" major { require flips < 4 }
                check some "Some" major { require flips > 2 }
                check at_most "At most" major { require flips at most 4 }
                check three "Three" minor { require flips is 3 }
                check other "Not three" minor { require flips is not 3 }
                """);

        assertThat(flips.observe("flips", "4").outcome("few")).isEqualTo(FAILS);
        assertThat(flips.observe("flips", "4").verdict("few").side()).isEqualTo(Side.HIGH);
        assertThat(flips.observe("flips", "4").check("few").evidence().get(0)).isEqualTo("flips is 4, not below 4");
        assertThat(flips.observe("flips", "2").verdict("some").side()).isEqualTo(Side.LOW);
        assertThat(flips.observe("flips", "2").check("some").evidence().get(0)).isEqualTo("flips is 2, not above 2");
        assertThat(flips.observe("flips", "3").outcome("few")).isEqualTo(PASSES);
        assertThat(flips.observe("flips", "3").outcome("some")).isEqualTo(PASSES);
        assertThat(flips.observe("flips", "4").outcome("at_most")).isEqualTo(PASSES);
        assertThat(flips.observe("flips", "3").outcome("three")).isEqualTo(PASSES);
        assertThat(flips.observe("flips", "3").outcome("other")).isEqualTo(FAILS);
    }

    @Test
    void a_yes_is_certain_and_so_is_a_no() {
        Workshop dry = Workshop.of("observe dry : yes/no ask \"Dry?\"\ncheck is_dry \"Dry\" major { require dry }\n"
                + "check is_wet \"Wet\" major { require not dry }");

        assertThat(dry.observe("dry", "true").conformity("is_dry").low()).isEqualTo(1);
        assertThat(dry.observe("dry", "true").outcome("is_wet")).isEqualTo(FAILS);
        assertThat(dry.observe("dry", "false").outcome("is_dry")).isEqualTo(FAILS);
        assertThat(dry.observe("dry", "false").check("is_wet").value()).isEqualTo("no");
    }

    @Test
    void grades_compare_by_their_order_and_choices_by_name() {
        Workshop feel = Workshop.of("""
                observe feel : grade none < soft < firm < hard ask "Compression"
                observe gear : one of oiled, dry ask "Valve gear"
                check firm_enough "Firm" major { require feel at least firm }
                check not_hard "Not hard" major { require feel between soft and firm }
                check oiled "Oiled" minor { require gear is oiled }
                check either "Oiled or dry" minor { require gear is one of oiled, dry }
                """);

        assertThat(feel.observe("feel", "\"firm\"").outcome("firm_enough")).isEqualTo(PASSES);
        assertThat(feel.observe("feel", "\"soft\"").outcome("firm_enough")).isEqualTo(FAILS);
        assertThat(feel.observe("feel", "\"hard\"").outcome("not_hard")).isEqualTo(FAILS);
        assertThat(feel.observe("gear", "\"dry\"").outcome("oiled")).isEqualTo(FAILS);
        assertThat(feel.observe("gear", "\"dry\"").outcome("either")).isEqualTo(PASSES);
    }

    @Test
    void what_lacks_in_the_box_is_named() {
        Workshop box = Workshop.of(
                "observe in_box : items ask \"Tick\"\ncheck full \"Full\" minor { require in_box has all of engine.box }");
        Workshop short_ = box.enter("{ \"observe\": \"in_box\", \"items\": [\"engine\"] }");

        assertThat(short_.outcome("full")).isEqualTo(FAILS);
        assertThat(short_.check("full").evidence()).contains("missing: glow plug, manual");
        assertThat(box.enter("{ \"observe\": \"in_box\", \"items\": [] }")
                        .check("full")
                        .value())
                .isEqualTo("nothing");
    }

    @Test
    void a_quantity_entered_without_a_gauge_counts_as_exact_and_the_report_says_so() {
        Workshop bare = Workshop.of("observe hold : time ask \"How long?\"\n"
                        + "check holds \"Holds\" major { require hold at least 3 s }")
                .observe("hold", "\"3 s\"");

        assertThat(bare.outcome("holds")).isEqualTo(PASSES);
        assertThat(bare.check("holds").notes()).containsExactly("hold was entered without a gauge and counts as exact");
    }

    @Test
    void a_fact_that_the_card_does_not_state_leaves_its_check_untested() {
        Workshop lacking = depth("check small \"Small\" major { require step at most engine.idle_opening_max }")
                .observe("step", "\"0.5 mm\"");

        assertThat(lacking.outcome("small")).isEqualTo(UNTESTED);
        assertThat(lacking.check("small").missing())
                .containsExactly("engine.idle_opening_max is not stated on the engine card");
        assertThat(lacking.report().next())
                .extracting(Report.Step::step)
                .containsExactly("Find out and write down: engine.idle_opening_max is not stated on the engine card");
    }

    @Test
    void limits_upside_down_on_a_card_judge_nothing() {
        Workshop odd = depth("check inside \"Inside\" major { require step between 1 mm and engine.lash_max }")
                .observe("step", "\"0.5 mm\"");

        assertThat(odd.outcome("inside")).isEqualTo(UNTESTED);
        assertThat(odd.check("inside").missing())
                .containsExactly("step between 1 mm and engine.lash_max cannot be judged: its lower limit is above its"
                        + " upper one");
    }

    // Each side is kept by 0.03 mm, which is 2.121 times √2 · 0.01 mm: Φ(2.121) = 0.98305 (tables of the normal
    // distribution), and both together by Fréchet's bound at least to twice that less one.
    @Test
    void between_two_uncertain_limits_a_reading_is_as_surely_as_both_are_kept() {
        Workshop window = depth("check inside \"Inside\" major {"
                        + " require step between 0.47 mm (u 0.01 mm) and 0.53 mm (u 0.01 mm) }")
                .observe("step", "\"0.50 mm\"");

        assertThat(window.conformity("inside").low()).isEqualTo(2 * 0.98305 - 1, within(1e-4));
        assertThat(window.conformity("inside").high()).isEqualTo(0.98305, within(1e-4));
    }
}
