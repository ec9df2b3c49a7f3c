package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import org.junit.jupiter.api.Test;

/** What a sheet tells over time: adjustments, corrections, what could not be observed, and what the engine is. */
class SheetStoryTest {

    private static final Workshop LASH = Workshop.of("""
            gauge leaves : leaf set
            observe lash : gap with leaves ask "Offer the leaves"
            observe head : temperature with infrared ask "Head"
            check inside "Lash" critical {
              require lash between engine.lash_min and engine.lash_max
              if untested advise adjuster_turn(lash, 0.06 mm, engine.adjuster_pitch, engine.rocker_ratio)
            }
            check cool "Cool" minor { require head at most 30 degC }
            gauge infrared : reading of temperature
            """);

    private static final String ADJUSTED =
            "{ \"adjust\": \"lash\", \"turn\": \"50 deg\", \"note\": \"lock nut held\", \"by\": \"mk\" }";

    @Test
    void what_was_adjusted_is_judged_as_found_and_as_left_and_the_release_counts_what_is_left() {
        Workshop adjusted = LASH.feel("lash", "passes 0.10 mm", "refuses 0.15 mm")
                .enter(ADJUSTED)
                .feel("lash", "passes 0.05 mm", "refuses 0.08 mm");
        Report.Check check = adjusted.check("inside");

        assertThat(check.outcome()).isEqualTo(PASSES);
        assertThat(check.asFound()).isEqualTo(new Report.AsFound(FAILS, "0.1100 mm to 0.1500 mm"));
        assertThat(check.evidence()).contains("lash was adjusted by 50 deg (lock nut held) [mk]");
        assertThat(adjusted.report().release()).isEqualTo(Release.UNFINISHED);
        assertThat(adjusted.observe("head", "\"20 °C\"").report().release()).isEqualTo(Release.READY);
        assertThat(adjusted.check("cool").asFound()).isNull();
    }

    @Test
    void after_an_adjustment_nothing_is_known_until_it_is_observed_again() {
        Workshop waiting =
                LASH.feel("lash", "passes 0.05 mm", "refuses 0.08 mm").enter(ADJUSTED);

        assertThat(waiting.outcome("inside")).isEqualTo(UNTESTED);
        assertThat(waiting.check("inside").missing()).containsExactly("lash was adjusted and not observed again");
        assertThat(waiting.check("inside").advice())
                .containsExactly("Nothing can be computed here: lash was adjusted and not observed again.");
        assertThat(waiting.check("inside").asFound()).isEqualTo(new Report.AsFound(PASSES, "0.0500 mm to 0.0810 mm"));
    }

    @Test
    void what_was_adjusted_unseen_was_untested_as_found() {
        Report.Check check = LASH.enter(ADJUSTED)
                .feel("lash", "passes 0.05 mm", "refuses 0.08 mm")
                .check("inside");

        assertThat(check.asFound()).isEqualTo(new Report.AsFound(UNTESTED, null));
    }

    @Test
    void a_correction_counts_and_the_slip_of_the_pen_stays_visible() {
        Workshop corrected = LASH.enter("{ \"observe\": \"head\", \"value\": \"91 °C\", \"by\": \"mk\" }")
                .enter("{ \"observe\": \"head\", \"value\": \"19 °C\", \"corrects\": true }");

        assertThat(corrected.outcome("cool")).isEqualTo(PASSES);
        assertThat(corrected.check("cool").evidence())
                .anyMatch(line -> line.startsWith("head: 91.00 °C")
                        && line.endsWith(", with infrared [mk] (a slip of the pen, corrected later)"));
    }

    @Test
    void what_could_not_be_observed_is_untested_with_its_reason() {
        Workshop cannot = LASH.enter("{ \"observe\": \"lash\", \"cannot\": \"the cover would not come off\" }");

        assertThat(cannot.outcome("inside")).isEqualTo(UNTESTED);
        assertThat(cannot.check("inside").missing())
                .containsExactly("lash could not be observed: the cover would not come off");
        assertThat(cannot.report().next())
                .extracting(Report.Step::step)
                .contains("Offer the leaves (lash, with leaves); so far it could not be observed: the cover would not"
                        + " come off");
    }

    @Test
    void the_build_selects_the_limits_and_unknown_has_limits_of_its_own() {
        Workshop felt = LASH.feel("lash", "passes 0.04 mm", "refuses 0.08 mm");

        assertThat(felt.outcome("inside")).isEqualTo(PASSES);
        assertThat(felt.engine("{ \"variant\": \"early cam\" }").outcome("inside"))
                .isEqualTo(Outcome.OPEN);
        assertThat(felt.engine("{ \"variant\": \"unknown\" }").check("inside").requirement())
                .isEqualTo("lash between 0.03 mm (engine.lash_min) and 0.05 mm (engine.lash_max)");
    }

    @Test
    void facts_of_this_one_engine_come_from_the_sheet() {
        Workshop facts = Workshop.of("""
                observe ok : yes/no ask "Is {engine.serial} of {engine.owner} a {engine.maker} {engine.model}?"
                check same "Same" major { require ok }
                check named "Named" minor { require engine.condition is "new in box" }
                check built "Built" minor { require engine.variant is "unknown" }
                """);

        assertThat(facts.report().next())
                .extracting(Report.Step::step)
                .containsExactly(
                        "Is Q15-1 of (not known: engine.owner is not stated on the job sheet) a Quillan Quillan Q15-4?"
                                + " (ok)",
                        "Find out and write down: engine.condition is not stated on the job sheet");
        assertThat(facts.outcome("named")).isEqualTo(UNTESTED);
        assertThat(facts.outcome("built")).isEqualTo(PASSES);
        assertThat(facts.engine("{ \"condition\": \"new in box\" }").outcome("named"))
                .isEqualTo(PASSES);
    }

    @Test
    void a_gauge_past_its_day_still_counts_and_each_verdict_that_leans_on_it_says_so() {
        Workshop late = LASH.on("2027-01-11")
                .feel("lash", "passes 0.05 mm", "refuses 0.08 mm")
                .observe("head", "\"20 °C\"");

        assertThat(late.outcome("inside")).isEqualTo(PASSES);
        assertThat(late.check("inside").notes()).containsExactly("leans on leaves 0.05 mm, past due for calibration");
        assertThat(late.check("cool").notes()).containsExactly("leans on infrared, past due for calibration");
        assertThat(late.report().notes())
                .contains("leaves 0.05 mm was past due for calibration on 2027-01-11; lash leans on it");
        assertThat(late.on("2027-01-10").check("inside").notes()).isEmpty();
    }

    @Test
    void a_leaf_never_measured_counts_as_no_better_than_its_marking_and_the_report_says_what_measuring_changes() {
        // Taken as 0.20 ± 0.05 mm, it may be 0.15: that shows nothing about 0.17 mm.
        Workshop bought = LASH.card(
                        "\"lash_max\": \"0.10 mm\", \"lash_tolerated\": \"0.14 mm\"", "\"lash_max\": \"0.21 mm\"")
                .feel("lash", "passes 0.05 mm", "refuses 0.20 mm");

        assertThat(bought.outcome("inside")).isEqualTo(Outcome.OPEN);
        assertThat(bought.check("inside").notes())
                .containsExactly("never measured: leaves 0.20 mm; if measuring finds what is stamped there, this check"
                        + " passes");
        assertThat(bought.report().notes()).anyMatch(note -> note.startsWith("leaves 0.20 mm was never measured"));
        assertThat(bought.check("inside").evidence())
                .anyMatch(line -> line.startsWith(
                        "lash: leaf 0.20 mm, never measured and taken as 0.200 mm (u 0.029 mm), refuses"));
    }

    @Test
    void the_release_follows_the_procedures_own_rule() {
        Workshop ruled = Workshop.of("""
                observe a : yes/no ask "a"
                observe b : yes/no ask "b"
                check first "First" critical { require a }
                check second "Second" minor { require b }
                release {
                  unfinished when second fails and first passes
                  reject     when any critical fails
                  hold       when any untested
                  ready      otherwise
                }
                """);

        assertThat(release(ruled, "true", "false")).isEqualTo(Release.UNFINISHED);
        assertThat(release(ruled, "false", "false")).isEqualTo(Release.REJECT);
        assertThat(release(ruled, "true", "true")).isEqualTo(Release.READY);
        assertThat(ruled.observe("a", "true").report().release()).isEqualTo(Release.HOLD);
        assertThat(ruled.observe("a", "true").report().releaseReason())
                .isEqualTo("Not to go on before this is settled: \"Second\" is untested.");
        assertThat(ruled.observe("a", "true").observe("b", "true").report().releaseReason())
                .isEqualTo("Every check that applies to this engine is met.");
    }

    private static Release release(Workshop workshop, String a, String b) {
        return workshop.observe("a", a).observe("b", b).report().release();
    }

    @Test
    void a_rule_that_holds_whatever_else_happens_says_so() {
        Workshop careful = Workshop.of("""
                observe a : yes/no ask "a"
                check first "First" critical { require a }
                release { reject when any fails  hold otherwise }
                """).observe("a", "true");

        assertThat(careful.report().releaseReason())
                .isEqualTo("The procedure's own rule says so whenever none of its other cases holds.");
    }

    @Test
    void what_was_adjusted_without_being_measured_by_how_much_is_said_so() {
        assertThat(LASH.enter("{ \"adjust\": \"lash\" }").check("inside").evidence())
                .containsExactly("lash was adjusted");
    }
}
