package io.github.leafproof.dsl.formula;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import org.junit.jupiter.api.Test;

/** What texts, advice and computed values say, above all where something is lacking. */
class WordsAndAdviceTest {

    private static final Workshop LASH = Workshop.of("""
            gauge leaves : leaf set
            observe lash : gap with leaves ask "Lash"
            observe most : length ask "Most"
            check inside "Lash" critical {
              require lash at most 0.10 mm
              if open advise next_leaf(lash, engine.lash_min, most)
              if fails advise adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, most / 1 mm)
              if passes advise "It is {lash in mm, 3 digits}, or {lash in thou, 1 digit}; the most was {most}."
            }
            """);

    @Test
    void advice_that_lacks_a_number_says_which_and_why() {
        assertThat(LASH.feel("lash", "refuses 0.10 mm").check("inside").advice())
                .containsExactly("Nothing can be computed here: most was not entered.");
        assertThat(LASH.feel("lash", "passes 0.15 mm").check("inside").advice())
                .containsExactly("Nothing can be computed here: most was not entered.");
    }

    @Test
    void advice_between_limits_upside_down_says_so() {
        assertThat(LASH.feel("lash", "refuses 0.10 mm")
                        .observe("most", "\"0.02 mm\"")
                        .check("inside")
                        .advice())
                .containsExactly("Nothing can be computed here: next_leaf(lash, engine.lash_min, most) cannot be told:"
                        + " the lower limit is above the upper one.");
    }

    @Test
    void an_adjuster_that_moves_nothing_cannot_be_turned_to_any_purpose() {
        assertThat(LASH.feel("lash", "passes 0.15 mm")
                        .observe("most", "\"0 mm\"")
                        .check("inside")
                        .advice()
                        .get(0))
                .startsWith("Nothing can be computed here: adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, most /"
                        + " 1 mm) cannot be computed: the lever factor must be above zero");
    }

    @Test
    void a_text_fills_its_holes_with_as_many_digits_as_are_asked_for_and_says_what_it_does_not_know() {
        assertThat(LASH.feel("lash", "passes 0.05 mm", "refuses 0.08 mm")
                        .check("inside")
                        .advice())
                .containsExactly("It is 0.066 mm, or 2.6 thou; the most was (not known: most was not entered).");
    }

    @Test
    void what_cannot_be_computed_leaves_its_check_untested_with_the_reason() {
        Workshop computed = Workshop.of("""
                observe a : number ask "a"
                observe b : number ask "b"
                check quotient "Quotient" minor { require a / b at most 1 }
                check root "Root" minor { require sqrt(a - b) at most 1 }
                """);

        assertThat(computed.observe("a", "1")
                        .observe("b", "0")
                        .check("quotient")
                        .missing())
                .hasSize(1)
                .allMatch(line -> line.startsWith("a / b cannot be computed: "));
        assertThat(computed.observe("a", "1").observe("b", "2").outcome("root")).isEqualTo(UNTESTED);
        assertThat(computed.observe("a", "2").observe("b", "2").outcome("root")).isEqualTo(PASSES);
        assertThat(computed.check("quotient").missing()).containsExactly("a was not entered", "b was not entered");
    }

    @Test
    void a_condition_chosen_by_an_option_is_explained_by_the_one_that_counts() {
        Workshop arm = Workshop.of("""
                observe arm : one of metal, plastic ask "Arm"
                observe flush : yes/no ask "Flush?"
                check datum "Datum" major { require choose arm { metal: flush   plastic: not flush } }
                """);

        assertThat(arm.observe("arm", "\"metal\"")
                        .observe("flush", "true")
                        .check("datum")
                        .requirement())
                .isEqualTo("flush is yes");
        assertThat(arm.observe("arm", "\"plastic\"").observe("flush", "true").outcome("datum"))
                .isEqualTo(FAILS);
        assertThat(arm.observe("arm", "\"plastic\"")
                        .observe("flush", "true")
                        .check("datum")
                        .requirement())
                .isEqualTo("flush is no");
        assertThat(arm.check("datum").requirement()).isEqualTo("the choice by arm");
        assertThat(arm.check("datum").missing()).containsExactly("arm was not entered");
    }

    @Test
    void a_function_is_explained_by_what_it_asks_of_its_arguments() {
        Workshop function = Workshop.of("""
                define near(a : temperature, b : temperature) = a - b within 3 K of 0 K
                observe head : temperature ask "Head"
                observe room : temperature ask "Room"
                check cold "Cold" major { require near(head, room) }
                check warm "Warm" minor { require not near(head, room) }
                """).observe("head", "\"30 °C\"").observe("room", "\"20 °C\"");

        assertThat(function.outcome("cold")).isEqualTo(FAILS);
        assertThat(function.outcome("warm")).isEqualTo(PASSES);
        assertThat(function.check("cold").requirement()).isEqualTo("a - b within 3 K of 0 K");
        assertThat(function.check("warm").requirement()).isEqualTo("not a - b within 3 K of 0 K");
        assertThat(function.check("cold").value()).isEqualTo("10 K");
    }

    @Test
    void a_card_that_names_what_the_language_does_not_know_of_leaves_the_choice_open() {
        Workshop side = Workshop.of("""
                check bears "Bears on the push rod" minor { require engine.rocker_side_of_adjuster is "push rod" }
                """);

        assertThat(side.outcome("bears")).isEqualTo(UNTESTED);
        assertThat(side.check("bears").missing())
                .containsExactly("engine.rocker_side_of_adjuster is not stated on the engine card");
    }

    @Test
    void a_part_of_a_turn_is_given_in_degrees_too_and_a_whole_turn_is_not() {
        Workshop turned = Workshop.of("""
                observe crank : angle ask "Crank"
                check round "Round" minor {
                  require crank at least 0 deg
                  if passes advise "{crank}"
                  if passes advise "{crank in turn}"
                }
                """);

        assertThat(turned.observe("crank", "\"1.25 turns\"").check("round").advice())
                .containsExactly("1.25 turns (450°)", "1.25 turns");
        assertThat(turned.observe("crank", "\"2 turns\"").check("round").advice())
                .containsExactly("2 turns", "2 turns");
        assertThat(turned.observe("crank", "\"90 deg\"").check("round").advice().get(0))
                .isEqualTo("90 deg");
    }

    @Test
    void no_digits_asked_for_are_whole_numbers() {
        assertThat(Workshop.of("""
                        check wide "Wide" minor { require 1.26 mm at most 2 mm if passes advise "{1.26 mm in mm, 0 digits}" }
                        """).check("wide").advice()).containsExactly("1 mm");
    }

    @Test
    void a_limit_that_nobody_stated_is_named_by_what_it_is_called() {
        Workshop limit = Workshop.of("""
                observe wear : length ask "Wear"
                observe most : length ask "Most"
                check worn "Worn" major { require wear at most most }
                """);

        assertThat(limit.check("worn").requirement()).isEqualTo("wear at most most");
        assertThat(limit.observe("most", "\"2 mm\"").check("worn").requirement())
                .isEqualTo("wear at most 2 mm (most)");
    }

    @Test
    void an_option_that_was_judged_is_shown_as_the_word_that_was_chosen() {
        Workshop arm = Workshop.of("""
                observe arm : one of metal, plastic ask "Arm"
                check metal "Metal" minor { require arm is metal }
                """);

        assertThat(arm.observe("arm", "\"plastic\"").check("metal").value()).isEqualTo("plastic");
    }

    @Test
    void of_a_gap_with_one_limit_only_that_side_can_stay_unproven() {
        Workshop most = Workshop.of("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Lash"
                check most "Most" critical { require lash at most 0.10 mm }
                check least "Least" critical { require lash at least 0.10 mm }
                """);

        assertThat(most.feel("lash", "passes 0.05 mm").check("most").evidence().get(0))
                .isEqualTo("nothing shows that lash is at most 0.10 mm: no leaf has refused");
        assertThat(most.feel("lash", "refuses 0.15 mm")
                        .check("least")
                        .evidence()
                        .get(0))
                .isEqualTo("nothing shows that lash is at least 0.10 mm: no leaf has passed");
    }

    @Test
    void a_condition_with_two_arms_is_explained_by_the_arm_that_counts() {
        Workshop either = Workshop.of("""
                observe oiled : yes/no ask "Oiled?"
                observe free : yes/no ask "Free?"
                observe stiff : yes/no ask "Stiff?"
                check turns "Turns" major { require if oiled then free else stiff }
                """);

        assertThat(either.observe("oiled", "true")
                        .observe("free", "true")
                        .check("turns")
                        .requirement())
                .isEqualTo("free is yes");
        assertThat(either.observe("oiled", "false")
                        .observe("stiff", "true")
                        .check("turns")
                        .requirement())
                .isEqualTo("stiff is yes");
        assertThat(either.check("turns").requirement()).isEqualTo("if oiled then free else stiff");
    }

    @Test
    void a_function_that_hands_its_argument_on_is_explained_by_the_argument() {
        Workshop same = Workshop.of("""
                observe free : yes/no ask "Free?"
                define same(given : yes/no) = given
                check turns "Turns" major { require same(free) }
                """).observe("free", "false");

        assertThat(same.check("turns").requirement()).isEqualTo("given");
        assertThat(same.check("turns").value()).isEqualTo("no");
    }
}
