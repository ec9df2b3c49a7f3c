package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.CONTRADICTED;
import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.TOLERATED;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Side;
import org.junit.jupiter.api.Test;

/** Lash known by leaves. The case of the 0.10 leaf that measures 0.11 is common practice, worked in docs/judging.md. */
class LashVerdictTest {

    private static final Workshop LASH = Workshop.of("""
            gauge leaves : leaf set
            observe lash : gap with leaves ask "Offer the leaves"
            check inside "Lash" critical {
              require lash between engine.lash_min and engine.lash_max
              if open advise next_leaf(lash, engine.lash_min, engine.lash_max)
              if high advise adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, engine.rocker_ratio)
              if low  advise adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, engine.rocker_ratio)
            }
            """);

    @Test
    void a_leaf_sold_as_the_no_go_that_measures_0_11_proves_nothing_about_0_10() {
        Workshop trap = LASH.feel("lash", "passes 0.05 mm", "refuses 0.10 mm");

        assertThat(trap.outcome("inside")).isEqualTo(OPEN);
        assertThat(trap.conformity("inside").low()).isEqualTo(0, within(1e-12));
        assertThat(trap.conformity("inside").high()).isEqualTo(1, within(1e-12));
        assertThat(trap.report().release()).isEqualTo(Release.HOLD);
    }

    @Test
    void the_advice_in_the_trap_is_a_stack_of_this_tray_that_settles_it() {
        Report.Check check =
                LASH.feel("lash", "passes 0.05 mm", "refuses 0.10 mm").check("inside");

        assertThat(check.evidence().get(0))
                .isEqualTo("nothing shows that lash is at most 0.10 mm: the thinnest leaf that refuses measures"
                        + " 0.1100 mm");
        assertThat(check.advice()).hasSize(1);
        assertThat(check.advice().get(0)).startsWith("Offer ").contains("the gap is inside the limits");
        // As the advice says, what lies between 0.05 and 0.10 settles it if it refuses.
        assertThat(LASH.feel("lash", "passes 0.05 mm", "refuses 0.10 mm", "refuses 0.08 mm")
                        .outcome("inside"))
                .isEqualTo(PASSES);
    }

    @Test
    void trials_of_several_entries_add_up() {
        assertThat(LASH.feel("lash", "passes 0.05 mm")
                        .feel("lash", "refuses 0.08 mm")
                        .outcome("inside"))
                .isEqualTo(PASSES);
    }

    @Test
    void a_leaf_that_drags_shows_both_sides() {
        assertThat(LASH.feel("lash", "drags 0.05 mm").outcome("inside")).isEqualTo(PASSES);
        assertThat(LASH.feel("lash", "drags 0.05 mm").check("inside").evidence())
                .contains("lash: leaf 0.05 mm, measured 0.0500 mm (u 0.0010 mm), drags: the gap is at least 0.0500 mm"
                        + " and less than 0.0550 mm");
    }

    @Test
    void a_thick_leaf_that_passes_fails_on_the_high_side_and_the_advice_closes_the_gap() {
        Workshop wide = LASH.feel("lash", "passes 0.10 mm", "refuses 0.15 mm");

        assertThat(wide.outcome("inside")).isEqualTo(FAILS);
        assertThat(wide.verdict("inside").side()).isEqualTo(Side.HIGH);
        assertThat(wide.report().release()).isEqualTo(Release.REJECT);
        assertThat(wide.check("inside").evidence().get(0))
                .isEqualTo("a leaf of 0.1100 mm passes, so lash is above 0.10 mm");
        // (0.130 − 0.060)/0.45 of a turn: 0.156, 56 degrees.
        assertThat(wide.check("inside").advice().get(0))
                .startsWith("Turn the adjuster in (clockwise; this closes the gap) by 0.156 turn, that is 56°");
    }

    @Test
    void a_gap_that_no_leaf_has_refused_is_closed_by_the_least_it_must_be() {
        assertThat(LASH.feel("lash", "passes 0.15 mm").check("inside").advice().get(0))
                .startsWith("The gap is at least 0.1500 mm and may be wider, so begin with this and measure again."
                        + " Turn the adjuster in");
    }

    @Test
    void a_thin_leaf_that_refuses_fails_on_the_low_side_and_the_advice_opens_the_gap() {
        Workshop tight = LASH.card("\"lash_min\": \"0.03 mm\"", "\"lash_min\": \"0.05 mm\"")
                .feel("lash", "refuses 0.04 mm");

        assertThat(tight.verdict("inside").side()).isEqualTo(Side.LOW);
        assertThat(tight.check("inside").evidence().get(0))
                .isEqualTo("a leaf of 0.0400 mm refuses, so lash is below 0.05 mm");
        assertThat(tight.check("inside").advice().get(0)).startsWith("Turn the adjuster out");
    }

    @Test
    void a_thick_leaf_that_passes_where_a_thinner_one_refuses_contradicts_and_claims_no_probability() {
        Workshop misread = LASH.feel("lash", "refuses 0.05 mm", "passes 0.08 mm");
        Report.Check check = misread.check("inside");

        assertThat(check.outcome()).isEqualTo(CONTRADICTED);
        assertThat(check.probability()).isNull();
        assertThat(check.value()).isNull();
        assertThat(check.evidence().get(0))
                .isEqualTo("the trials of lash contradict each other: the leaf 0.08 mm (0.0810 mm) enters, though the"
                        + " leaf 0.05 mm (0.0500 mm) does not");
        assertThat(check.advice())
                .containsExactly("Wipe both, and the gap, and repeat both trials; if they still disagree, have both"
                        + " measured again.");
        assertThat(misread.report().release()).isEqualTo(Release.HOLD);
    }

    @Test
    void nothing_offered_is_untested_and_no_zero() {
        assertThat(LASH.outcome("inside")).isEqualTo(UNTESTED);
        assertThat(LASH.check("inside").missing()).containsExactly("lash was not entered");
    }

    @Test
    void within_a_tolerated_margin_it_goes_on_with_a_remark() {
        Workshop margin = Workshop.of("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Offer the leaves"
                check inside "Lash" major {
                  require lash between engine.lash_min and engine.lash_max tolerate to engine.lash_tolerated
                  if tolerated advise "Look again after the first hour."
                }
                """);
        Workshop shown = margin.feel("lash", "passes 0.08 mm + 0.04 mm", "refuses 0.05 mm + 0.08 mm");

        assertThat(shown.outcome("inside")).isEqualTo(TOLERATED);
        assertThat(shown.report().release()).isEqualTo(Release.READY);
        assertThat(shown.check("inside").advice()).containsExactly("Look again after the first hour.");
        assertThat(shown.check("inside").requirement())
                .isEqualTo("lash between 0.03 mm (engine.lash_min) and 0.10 mm (engine.lash_max), tolerated to 0.14 mm"
                        + " (engine.lash_tolerated)");
        assertThat(margin.feel("lash", "passes 0.15 mm")
                        .check("inside")
                        .evidence()
                        .get(0))
                .isEqualTo("a leaf of 0.1500 mm passes, so lash is above 0.14 mm");
    }

    @Test
    void simple_acceptance_leaves_a_leaf_exactly_at_its_limit_without_a_side() {
        Workshop at = Workshop.of("""
                decide by simple acceptance
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Offer the leaves"
                check inside "Lash" critical { require lash at most 0.05 mm }
                """);

        Report.Check check = at.feel("lash", "passes 0.05 mm").check("inside");

        assertThat(check.outcome()).isEqualTo(FAILS);
        assertThat(check.side()).isEqualTo(Side.NONE);
        assertThat(check.evidence().get(0)).isEqualTo("lash is shown to be at least 0.0500 mm, not inside its limits");
    }

    @Test
    void a_limit_that_is_measured_itself_has_to_be_kept_with_room_for_its_own_uncertainty() {
        Workshop measured = Workshop.of("""
                gauge leaves : leaf set
                gauge depth : reading of length
                observe lash : gap with leaves ask "Offer the leaves"
                observe most : length with depth ask "Measure the limit"
                check inside "Lash" critical { require lash at most most }
                """);
        Workshop refused = measured.feel("lash", "refuses 0.08 mm");

        // The leaf measures 0.081 with u 0.001, the limit is known with u 0.01: 0.0165 mm of room for it, and 0.0016.
        assertThat(refused.observe("most", "\"0.11 mm\"").outcome("inside")).isEqualTo(PASSES);
        assertThat(refused.observe("most", "\"0.09 mm\"").outcome("inside")).isEqualTo(OPEN);
        assertThat(measured.feel("lash", "passes 0.08 mm")
                        .observe("most", "\"0.05 mm\"")
                        .outcome("inside"))
                .isEqualTo(FAILS);
        assertThat(measured.feel("lash", "passes 0.08 mm")
                        .observe("most", "\"0.07 mm\"")
                        .outcome("inside"))
                .isEqualTo(OPEN);
    }

    @Test
    void measured_limits_that_may_have_crossed_are_kept_by_nothing() {
        Workshop window = Workshop.of("""
                gauge leaves : leaf set
                gauge depth : reading of length
                observe lash : gap with leaves ask "Offer the leaves"
                observe most : length with depth ask "Measure the limit"
                check inside "Lash" critical { require lash between 0.06 mm and most }
                """);

        assertThat(window.feel("lash", "passes 0.08 mm", "refuses 0.08 mm + 0.04 mm")
                        .observe("most", "\"0.07 mm\"")
                        .conformity("inside")
                        .low())
                .isZero();
    }

    @Test
    void pins_are_spoken_of_as_pins() {
        Workshop idle = Workshop.of("""
                gauge pins : pin set
                observe opening : gap with pins ask "Offer the pins"
                check inside "Idle opening" major { require opening between 0.6 mm and 0.75 mm }
                let middle = opening in mm
                check known "Known" minor { require middle at most 1 mm }
                """);

        assertThat(idle.feel("opening", "passes 0.70 mm")
                        .check("inside")
                        .evidence()
                        .get(0))
                .isEqualTo("nothing shows that opening is at most 0.75 mm: no pin has refused");
        assertThat(idle.feel("opening", "passes 0.70 mm").check("known").missing())
                .containsExactly("opening has no upper end yet, since no pin has refused");
        assertThat(idle.feel("opening", "passes 0.70 mm").outcome("known")).isEqualTo(OPEN);
        assertThat(idle.feel("opening", "refuses 0.80 mm")
                        .check("inside")
                        .evidence()
                        .get(0))
                .isEqualTo("nothing shows that opening is at least 0.60 mm: no pin has passed, nor that it is at most"
                        + " 0.75 mm: the thinnest pin that refuses measures 0.8000 mm");
    }

    @Test
    void a_least_gap_that_is_measured_itself_has_to_be_missed_by_more_than_its_own_uncertainty() {
        Workshop measured = Workshop.of("""
                gauge leaves : leaf set
                gauge depth : reading of length
                observe lash : gap with leaves ask "Offer the leaves"
                observe least : length with depth ask "Measure the limit"
                check inside "Lash" critical { require lash at least least }
                """).feel("lash", "refuses 0.08 mm");

        // The gap is below 0.081 mm, and the limit is known to 0.0165 mm.
        assertThat(measured.observe("least", "\"0.09 mm\"").outcome("inside")).isEqualTo(OPEN);
        assertThat(measured.observe("least", "\"0.12 mm\"").outcome("inside")).isEqualTo(FAILS);
    }

    @Test
    void of_several_leaves_the_one_nearest_to_the_limit_says_what_is_unproven() {
        Workshop lash = Workshop.of("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Offer the leaves"
                check wide "Wide" major { require lash at least 0.10 mm }
                check tight "Tight" major { require lash at most 0.04 mm }
                """);

        assertThat(lash.feel("lash", "passes 0.05 mm", "passes 0.08 mm", "passes 0.04 mm")
                        .check("wide")
                        .evidence()
                        .get(0))
                .isEqualTo(
                        "nothing shows that lash is at least 0.10 mm: the thickest leaf that passes measures 0.0810 mm");
        assertThat(lash.feel("lash", "refuses 0.08 mm", "refuses 0.05 mm", "refuses 0.10 mm")
                        .check("tight")
                        .evidence()
                        .get(0))
                .isEqualTo(
                        "nothing shows that lash is at most 0.04 mm: the thinnest leaf that refuses measures 0.0500 mm");
    }
}
