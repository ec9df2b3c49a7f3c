package io.github.leafproof.dsl.coverage;

import static io.github.leafproof.dsl.coverage.Rehearsals.coverage;
import static io.github.leafproof.dsl.coverage.Rehearsals.ways;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.meaning.Saying.Kind;
import org.junit.jupiter.api.Test;

/** What coverage asks for, and what it leaves alone since it cannot come. */
class WhatCanBeSaidTest {

    @Test
    void a_question_of_yes_or_no_passes_fails_or_is_not_answered() {
        assertThat(ways(coverage("""
                observe free : yes/no ask "Free?"
                check turns "It turns" { require free }
                """), "check turns")).containsExactly("passes", "fails", "untested");
    }

    @Test
    void a_gap_between_two_limits_can_come_out_in_every_way_but_behind_a_gate() {
        assertThat(ways(coverage("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Lash"
                check inside "Lash" { require lash between 0.03 mm and 0.10 mm tolerate to 0.14 mm }
                """), "check inside"))
                .containsExactly("passes", "tolerated", "fails low", "fails high", "open", "contradicted", "untested");
    }

    @Test
    void only_a_gap_contradicts_itself_and_only_where_a_limit_is_tolerated_something_is() {
        assertThat(ways(coverage("""
                gauge depth : reading of length
                observe rim : length with depth ask "Rim"
                check level "Level" { require rim between 1 mm and 2 mm }
                """), "check level"))
                .containsExactly("passes", "fails low", "fails high", "open", "untested");
    }

    @Test
    void a_limit_on_one_side_has_one_way_to_fail() {
        assertThat(ways(coverage("""
                gauge depth : reading of length
                observe rim : length with depth ask "Rim"
                check level "Level" { require rim at most 2 mm }
                """), "check level")).containsExactly("passes", "fails", "open", "untested");
    }

    @Test
    void what_is_counted_or_stated_leaves_nothing_open() {
        String declarations = """
                gauge clicks : counter
                observe turns : count with clicks ask "Turns"
                observe length : length ask "By rule of thumb"
                check enough "Enough" { require turns at least 2 }
                check long_enough "Long enough" { require length at least 20 mm }
                """;

        assertThat(ways(coverage(declarations), "check enough")).containsExactly("passes", "fails", "untested");
        assertThat(ways(coverage(declarations), "check long_enough")).doesNotContain("open");
    }

    @Test
    void a_limit_stated_with_a_doubt_leaves_things_open_again() {
        assertThat(ways(coverage("""
                observe length : length ask "By rule of thumb"
                check long_enough "Long enough" { require length at least 20 mm ± 1 mm }
                """), "check long_enough")).contains("open");
    }

    @Test
    void by_simple_acceptance_no_reading_stays_open_but_a_gap_does() {
        String declarations = """
                decide by simple acceptance
                gauge depth : reading of length
                gauge leaves : leaf set
                observe rim : length with depth ask "Rim"
                observe lash : gap with leaves ask "Lash"
                check level "Level" { require rim at most 2 mm }
                check inside "Lash" { require lash at most 0.1 mm }
                """;

        assertThat(ways(coverage(declarations), "check level")).doesNotContain("open");
        assertThat(ways(coverage(declarations), "check inside")).contains("open");
    }

    @Test
    void only_what_waits_for_a_gate_is_blocked() {
        String declarations = """
                observe dry : yes/no ask "Dry?"
                observe free : yes/no ask "Free?"
                check no_liquid "Dry" gate { require dry }
                check turns "It turns" { after no_liquid require free }
                """;

        assertThat(ways(coverage(declarations), "check no_liquid")).doesNotContain("blocked");
        assertThat(ways(coverage(declarations), "check turns")).contains("blocked");
        assertThat(ways(coverage(declarations), "gate no_liquid")).containsExactly("lets through", "holds back");
    }

    @Test
    void what_may_be_left_out_may_not_apply_but_not_where_something_else_has_to_be_there() {
        String declarations = """
                observe hot : yes/no optional ask "Hot?"
                observe free : yes/no ask "Free?"
                observe stop : yes/no when engine.throttle_stop ask "Stop?"
                check cold "Cold" { require not hot }
                check both "Cold and free" { require not hot   require free }
                check held "Held" { require stop }
                check plain "Free" { when engine.choke require free }
                """;

        assertThat(ways(coverage(declarations), "check cold")).contains("not_applicable");
        assertThat(ways(coverage(declarations), "check both")).doesNotContain("not_applicable");
        assertThat(ways(coverage(declarations), "check held")).contains("not_applicable");
        assertThat(ways(coverage(declarations), "check plain")).contains("not_applicable");
    }

    @Test
    void what_is_asked_for_in_a_case_is_there_in_that_case() {
        Coverage coverage = coverage("""
                observe topped_up : yes/no ask "Topped up?"
                observe added : volume when topped_up ask "How much?"
                let inside = if topped_up then 10 mL + added else 10 mL
                check enough "Enough" { require inside at least 11 mL }
                check added_much "Much" { require added at most 5 mL }
                """);

        assertThat(ways(coverage, "check enough")).doesNotContain("not_applicable");
        assertThat(ways(coverage, "check added_much")).contains("not_applicable");
    }

    @Test
    void what_is_computed_of_readings_may_stay_open_and_never_contradicts_itself() {
        assertThat(ways(coverage("""
                observe play : series of length ask "Play"
                check steady "Steady" { require mean(play) between 1 mm and 2 mm }
                """), "check steady"))
                .containsExactly("passes", "fails low", "fails high", "open", "untested");
    }

    @Test
    void how_often_something_was_read_is_known() {
        assertThat(ways(coverage("""
                observe play : series of length ask "Play"
                check often "Often" { require count(play) at least 3 }
                """), "check often")).containsExactly("passes", "fails", "untested");
    }

    @Test
    void each_of_several_requirements_and_each_part_of_a_row_has_two_sides() {
        String declarations = """
                observe a : yes/no ask "A?"
                observe b : yes/no ask "B?"
                observe c : yes/no ask "C?"
                check one "One" { require a }
                check row "Row" { require a and not b }
                check two "Two" { require b or c   require c }
                """;
        Coverage coverage = coverage(declarations);

        assertThat(coverage.sayings())
                .filteredOn(saying -> saying.kind().word().equals("condition"))
                .extracting(saying -> saying.name() + " " + saying.ways().size())
                .containsExactly("a 2", "b 2", "b or c 2", "b 2", "c 2", "c 2");
    }

    @Test
    void an_option_that_something_is_compared_with_is_met_and_the_whole_has_two_sides() {
        String declarations = """
                observe liquid : one of none, drop, more ask "Liquid?"
                observe dry : yes/no ask "Dry?"
                check little "Little" { require dry and liquid is one of none, drop }
                """;

        assertThat(ways(coverage(declarations), "condition liquid is one of none, drop"))
                .containsExactly("fails", "holds");
        assertThat(ways(coverage(declarations), "option drop")).containsExactly("holds");
    }

    @Test
    void an_arm_that_no_card_can_choose_is_not_asked_for() {
        String declarations = """
                applies when engine.throttle_arm is metal
                observe depth : length ask "Depth"
                let datum = choose engine.throttle_arm { metal: 0 mm   plastic: 1 mm }
                check right "Right" { require depth at most datum }
                """;
        Coverage coverage = coverage(declarations);

        assertThat(ways(coverage, "arm engine.throttle_arm: metal")).containsExactly("is chosen");
        assertThat(coverage.sayings())
                .extracting(CoverageText::title)
                .doesNotContain("arm engine.throttle_arm: plastic");
        assertThat(ways(coverage, "condition engine.throttle_arm is metal")).containsExactly("holds");
    }

    @Test
    void a_condition_within_a_function_is_asked_for_where_it_is_written() {
        String declarations = """
                define wide(gap : length) = if gap at least 1 mm then 2 mm else 3 mm
                observe rim : length ask "Rim"
                check level "Level" { require rim at most wide(rim) }
                check again "Again" { require rim at most wide(2 mm) }
                """;
        Coverage coverage = coverage(declarations);

        assertThat(ways(coverage, "condition gap at least 1 mm")).containsExactly("fails", "holds");
    }

    @Test
    void a_loop_is_one_place_and_asks_what_any_of_its_rounds_can_say() {
        Coverage coverage = coverage("""
                for valve in intake, exhaust {
                  observe tight[valve] : yes/no ask "Tight?"
                  check held[valve] "Held" { when valve is intake or engine.choke require tight[valve] }
                }
                """);

        assertThat(coverage.sayings())
                .filteredOn(saying -> saying.kind().word().equals("check"))
                .hasSize(1);
        assertThat(ways(coverage, "check held[valve]"))
                .containsExactly("passes", "fails", "untested", "not_applicable");
    }

    @Test
    void a_line_of_the_release_for_checks_that_there_are_none_of_is_not_asked_for() {
        Coverage coverage = coverage("""
                observe free : yes/no ask "Free?"
                check turns "It turns" minor { require free }
                release { reject when any critical fails   hold when any fails   unfinished when any untested
                  ready otherwise }
                """);

        assertThat(ways(coverage, "release reject when any critical fails")).isEmpty();
        assertThat(ways(coverage, "release hold when any fails")).containsExactly("decides");
        assertThat(ways(coverage, "release ready otherwise")).containsExactly("decides");
    }

    @Test
    void the_usual_release_is_asked_for_although_nobody_wrote_it_down() {
        assertThat(coverage("""
                observe free : yes/no ask "Free?"
                check turns "It turns" critical { require free }
                """).share(Kind.RELEASE)).isEqualTo(new Share(0, 4));
    }
}
