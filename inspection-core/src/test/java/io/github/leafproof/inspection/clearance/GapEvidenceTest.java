package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.AT_95;
import static io.github.leafproof.inspection.clearance.Bench.MM;
import static io.github.leafproof.inspection.clearance.Bench.SET;
import static io.github.leafproof.inspection.clearance.Bench.drags;
import static io.github.leafproof.inspection.clearance.Bench.evidence;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.mm;
import static io.github.leafproof.inspection.clearance.Bench.passes;
import static io.github.leafproof.inspection.clearance.Bench.refuses;
import static io.github.leafproof.inspection.clearance.Bench.window;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafStack;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GapEvidenceTest {
    // Common practice: a window of 0.03 to 0.10 mm, and a no-go leaf sold as 0.10 that measures more.
    private static final Limits LASH = window(0.03, 0.10);
    private static final Leaf THREE = leaf("0.03", "0.030");
    private static final Leaf FOUR = leaf("0.04", "0.040");
    private static final Leaf FIVE = leaf("0.05", "0.050");
    private static final Leaf TEN = leaf("0.10", "0.110");

    @Nested
    class What_a_leaf_proves {
        @Test
        void a_refusing_leaf_proves_only_that_the_gap_is_smaller_than_its_measured_thickness() {
            GapEvidence refused = evidence(refuses(TEN));
            assertThat(refused.lessThan().orElseThrow().value()).isCloseTo(0.110 * MM, within(1e-15));
            assertThat(refused.atLeast()).isEmpty();
            assertThat(refused.judge(Limits.atMost(mm("0.12")), AT_95)).isEqualTo(Outcome.PASSES);
            assertThat(refused.judge(Limits.atMost(mm("0.10")), AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void a_passing_leaf_proves_only_that_the_gap_is_no_smaller_than_its_measured_thickness() {
            GapEvidence passed = evidence(passes(FIVE));
            assertThat(passed.atLeast().orElseThrow().value()).isCloseTo(0.050 * MM, within(1e-15));
            assertThat(passed.lessThan()).isEmpty();
            assertThat(passed.judge(Limits.atLeast(mm("0.03")), AT_95)).isEqualTo(Outcome.PASSES);
            assertThat(passed.judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void a_dragging_leaf_sets_both_bounds_a_drag_band_apart() {
            GapEvidence dragged = evidence(drags(FIVE, 0.005));
            assertThat(dragged.atLeast().orElseThrow().value()).isCloseTo(0.050 * MM, within(1e-15));
            assertThat(dragged.lessThan().orElseThrow().value()).isCloseTo(0.055 * MM, within(1e-15));
            assertThat(dragged.judge(LASH, AT_95)).isEqualTo(Outcome.PASSES);
            assertThat(dragged.contradictions(AT_95)).isEmpty();
        }

        @Test
        void a_drag_without_a_stated_drag_band_shows_no_more_than_that_the_leaf_entered() {
            GapEvidence dragged = evidence(drags(FIVE, 0));
            assertThat(dragged.lessThan()).isEmpty();
            assertThat(dragged.judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void the_thickest_leaf_that_entered_and_the_thinnest_that_refused_bound_the_gap() {
            GapEvidence all = evidence(passes(THREE), passes(FIVE), refuses(TEN), passes(FOUR));
            assertThat(all.atLeast().orElseThrow().value()).isCloseTo(0.050 * MM, within(1e-15));
            assertThat(all.lessThan().orElseThrow().value()).isCloseTo(0.110 * MM, within(1e-15));
            assertThat(all.leaves()).containsExactly(THREE, FIVE, TEN, FOUR);
        }
    }

    @Nested
    class The_worked_case {
        private final GapEvidence fallenInto = evidence(passes(FIVE), refuses(TEN));

        // Common practice: the leaf sold as 0.10 measures 0.11, so it proves nothing about 0.10.
        @Test
        void a_leaf_sold_as_0_10_that_measures_0_11_proves_nothing_about_0_10() {
            Conformity shown = fallenInto.conformity(LASH);
            assertThat(shown.low()).isCloseTo(0, within(1e-9));
            assertThat(shown.high()).isCloseTo(1, within(1e-9));
            assertThat(fallenInto.judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void the_same_trial_with_a_leaf_that_measures_as_marked_less_a_little_passes() {
            assertThat(evidence(passes(FIVE), refuses(leaf("0.10", "0.0965"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.PASSES);
        }

        @Test
        void a_wide_gap_that_lets_the_0_11_leaf_in_fails_high() {
            GapEvidence wide = evidence(passes(FIVE), passes(TEN));
            assertThat(wide.judge(LASH, AT_95)).isEqualTo(Outcome.FAILS);
            assertThat(wide.conformity(LASH).side()).isEqualTo(Side.HIGH);
        }

        @Test
        void a_tight_gap_that_refuses_a_leaf_below_the_lower_limit_fails_low() {
            GapEvidence tight = evidence(refuses(leaf("0.02", "0.020")));
            assertThat(tight.judge(LASH, AT_95)).isEqualTo(Outcome.FAILS);
            assertThat(tight.conformity(LASH).side()).isEqualTo(Side.LOW);
        }

        @Test
        void a_gap_beyond_the_aim_but_shown_to_be_inside_the_tolerance_is_tolerated() {
            // Common practice: a family with 0.10 mm aimed for puts up with 0.14 mm if it runs well.
            Limits tolerant = LASH.tolerating(mm("0.03"), mm("0.14"));
            assertThat(evidence(passes(TEN), refuses(leaf("0.13", "0.130"))).judge(tolerant, AT_95))
                    .isEqualTo(Outcome.TOLERATED);
            assertThat(evidence(passes(leaf("0.15", "0.150"))).judge(tolerant, AT_95))
                    .isEqualTo(Outcome.FAILS);
        }
    }

    @Nested
    class How_probable {
        // Standard normal table: Φ(1) = 0.841 344 746, Φ(2) = 0.977 249 868 (from memory).
        @Test
        void the_bounds_follow_the_normal_law_on_each_side() {
            Limits wide = window(0.04, 0.10);
            Conformity shown = evidence(passes(leaf("0.04", "0.042")), refuses(leaf("0.10", "0.099")))
                    .conformity(wide);
            assertThat(shown.low()).isCloseTo(0.977249868 + 0.841344746 - 1, within(1e-8));
            // The leaf that refused at 0.099 says nothing against the lower limit, so nothing lowers the upper bound.
            assertThat(shown.high()).isCloseTo(1, within(1e-8));
        }

        @Test
        void a_leaf_just_over_the_limit_that_enters_lowers_the_upper_bound() {
            Conformity shown = evidence(passes(leaf("0.10", "0.102"))).conformity(LASH);
            assertThat(shown.high()).isCloseTo(1 - 0.977249868, within(1e-8));
            assertThat(shown.above()).isCloseTo(0.977249868, within(1e-8));
            assertThat(shown.below()).isZero();
        }

        @Test
        void with_one_limit_the_one_leaf_decides_alone() {
            Conformity shown = evidence(refuses(leaf("0.10", "0.099"))).conformity(Limits.atMost(mm("0.10")));
            assertThat(shown.low()).isCloseTo(0.841344746, within(1e-8));
        }

        @Test
        void no_gap_is_smaller_than_nothing_so_a_lower_limit_of_zero_needs_no_leaf() {
            Limits fromZero = window(0, 0.10);
            assertThat(evidence(refuses(leaf("0.05", "0.050"))).judge(fromZero, AT_95))
                    .isEqualTo(Outcome.PASSES);
            assertThat(evidence(refuses(Leaf.asMarked(SET, mm("0.03"))))
                            .conformity(fromZero)
                            .high())
                    .isEqualTo(1);
        }

        // trade-practice arithmetic: a pair of 0.043 and 0.097 mm, u 0.003, in a window of 0.04 to 0.10 gives the
        // interval
        // 0.040 to 0.100, a bare pass when u is taken for a bound. As a probability that pair shows 2 Φ(1) − 1 = 68 %.
        @Test
        void a_pair_one_standard_uncertainty_inside_the_limits_shows_68_per_cent_and_stays_open_at_95() {
            GapEvidence pair =
                    evidence(passes(leaf("0.04", "0.043", "0.003")), refuses(leaf("0.10", "0.097", "0.003")));
            assertThat(pair.conformity(window(0.04, 0.10)).low()).isCloseTo(0.682689492, within(1e-8));
            assertThat(pair.judge(window(0.04, 0.10), AT_95)).isEqualTo(Outcome.OPEN);
            assertThat(pair.judge(window(0.04, 0.10), DecisionRule.simpleAcceptance()))
                    .isEqualTo(Outcome.PASSES);
        }

        // Common practice: an owner's inset gauges, where 0.051 must clear and 0.0965 must not.
        @Test
        void inset_gauges_show_the_window() {
            assertThat(evidence(passes(leaf("0.05", "0.051")), refuses(leaf("0.10", "0.0965")))
                            .judge(window(0.04, 0.10), AT_95))
                    .isEqualTo(Outcome.PASSES);
        }

        @Test
        void a_leaf_never_measured_may_be_off_by_a_quarter_and_shows_less() {
            Leaf marked = Leaf.asMarked(SET, mm("0.09"));
            assertThat(evidence(passes(FIVE), refuses(marked)).judge(LASH, AT_95))
                    .isEqualTo(Outcome.OPEN);
            assertThat(evidence(passes(FIVE), refuses(leaf("0.09", "0.090"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.PASSES);
        }

        @Test
        void what_measuring_a_leaf_could_change_can_be_told_beforehand() {
            Leaf five = Leaf.asMarked(SET, mm("0.05"));
            LeafStack nine = new LeafStack(List.of(five, Leaf.asMarked(SET, mm("0.04"))), mm("0.001"));
            GapEvidence marked = evidence(passes(five), refuses(nine));
            assertThat(marked.judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
            assertThat(marked.asIfMeasured().judge(LASH, AT_95)).isEqualTo(Outcome.PASSES);
            GapEvidence measured = evidence(passes(FIVE), refuses(TEN));
            assertThat(measured.asIfMeasured()).isEqualTo(measured);
        }

        @Test
        void nothing_is_credited_against_a_trial_that_speaks_against_it() {
            // A coarse leaf at 0.095 enters, which half suggests that the gap is too large; a fine one at 0.094
            // refuses.
            Leaf coarse = leaf("0.10", "0.095", "0.010");
            Leaf fine = leaf("0.09", "0.094");
            Conformity shown = evidence(passes(coarse), refuses(fine)).conformity(LASH);
            assertThat(evidence(passes(coarse), refuses(fine)).contradictions(AT_95))
                    .isEmpty();
            assertThat(shown.low()).isEqualTo(shown.high()).isLessThan(0.95);
        }
    }

    @Nested
    class Contradictions {
        @Test
        void a_leaf_that_enters_contradicts_a_thinner_one_that_refuses() {
            GapEvidence odd = evidence(passes(FIVE), refuses(FOUR));
            assertThat(odd.contradictions(AT_95)).containsExactly(new Contradiction(passes(FIVE), refuses(FOUR)));
            assertThat(odd.judge(LASH, AT_95)).isEqualTo(Outcome.CONTRADICTED);
        }

        @Test
        void leaves_whose_thickness_is_not_known_well_enough_to_tell_them_apart_do_not_contradict() {
            // 0.001 mm apart with u 0.001 each: 0.7 standard uncertainties of the difference, where 1.645 are asked.
            assertThat(evidence(passes(leaf("0.05", "0.051")), refuses(leaf("0.06", "0.050")))
                            .contradictions(AT_95))
                    .isEmpty();
            // 0.003 mm apart: 2.1.
            assertThat(evidence(passes(leaf("0.05", "0.053")), refuses(leaf("0.06", "0.050")))
                            .contradictions(AT_95))
                    .hasSize(1);
        }

        @Test
        void a_leaf_that_enters_and_refuses_contradicts_itself_however_badly_it_is_known() {
            Leaf marked = Leaf.asMarked(SET, mm("0.05"));
            assertThat(evidence(passes(marked), refuses(marked)).contradictions(AT_95))
                    .hasSize(1);
            assertThat(evidence(drags(marked, 0.005), refuses(marked)).contradictions(AT_95))
                    .hasSize(1);
        }

        @Test
        void a_stack_that_enters_contradicts_its_own_leaf_refusing_since_what_they_share_cancels() {
            Leaf coarse = leaf("0.05", "0.050", "0.020");
            Leaf thin = leaf("0.01", "0.010");
            LeafStack both = new LeafStack(List.of(coarse, thin), mm("0.001"));
            assertThat(evidence(passes(both), refuses(coarse)).contradictions(AT_95))
                    .hasSize(1);
            Leaf stranger = leaf("0.06", "0.061", "0.020");
            assertThat(evidence(passes(stranger), refuses(coarse)).contradictions(AT_95))
                    .isEmpty();
        }
    }

    @Nested
    class As_a_number {
        private static final String NEGLIGIBLE = "0.000000001";

        // Flat prior between go 0.05 and no-go 0.06: mean 0.055, u = 0.01/√12 = 0.002 886 751 mm (recomputed from the
        // rule
        // for a rectangular law, GUM 4.3.7, clause from memory).
        @Test
        void between_go_0_05_and_no_go_0_06_lies_0_055_with_u_0_002886751() {
            Estimate gap = evidence(passes(leaf("0.05", "0.05", NEGLIGIBLE)), refuses(leaf("0.06", "0.06", NEGLIGIBLE)))
                    .estimate("lash")
                    .orElseThrow();
            assertThat(gap.value()).isCloseTo(0.055 * MM, within(1e-15));
            assertThat(gap.standardUncertainty()).isCloseTo(0.002886751346 * MM, within(1e-12 * MM));
        }

        @Test
        void the_leaves_own_uncertainty_comes_on_top() {
            Estimate gap = evidence(passes(FIVE), refuses(leaf("0.06", "0.06")))
                    .estimate("lash")
                    .orElseThrow();
            double expected = Math.sqrt(0.005 * 0.005 / 3 + 2 * 0.0005 * 0.0005) * MM;
            assertThat(gap.standardUncertainty()).isCloseTo(expected, within(1e-12));
        }

        @Test
        void a_refusing_leaf_alone_leaves_everything_from_nothing_to_its_thickness() {
            Estimate gap = evidence(refuses(TEN)).estimate("lash").orElseThrow();
            assertThat(gap.value()).isCloseTo(0.055 * MM, within(1e-15));
        }

        @Test
        void a_passing_leaf_alone_gives_no_number_since_the_gap_may_be_any_larger() {
            assertThat(evidence(passes(TEN)).estimate("lash")).isEmpty();
            assertThat(GapEvidence.none().estimate("lash")).isEmpty();
        }

        @Test
        void where_two_gaps_lie_between_the_same_leaves_is_not_the_same_place() {
            GapEvidence same = evidence(passes(FIVE), refuses(TEN));
            Estimate intake = same.estimate("lash[intake]").orElseThrow();
            Estimate exhaust = same.estimate("lash[exhaust]").orElseThrow();
            double place = 0.03 / Math.sqrt(3) * MM;
            // The leaves are the same and cancel; the two places stay.
            assertThat(intake.minus(exhaust).standardUncertainty()).isCloseTo(Math.sqrt(2) * place, within(1e-12));
        }
    }

    @Nested
    class In_words {
        @Test
        void the_range_says_what_is_known_and_no_more() {
            assertThat(evidence(passes(FIVE), refuses(TEN)).rangeWords(UnitSystem.METRIC))
                    .isEqualTo("0.0500 mm to 0.1100 mm");
            assertThat(evidence(passes(TEN)).rangeWords(UnitSystem.METRIC)).isEqualTo("at least 0.1100 mm");
            assertThat(evidence(refuses(FIVE)).rangeWords(UnitSystem.METRIC)).isEqualTo("less than 0.0500 mm");
            assertThat(GapEvidence.none().rangeWords(UnitSystem.METRIC)).isEqualTo("nothing known");
            assertThat(evidence(passes(FIVE), refuses(TEN)).rangeWords(UnitSystem.INCH))
                    .isEqualTo("1.969 thou to 4.331 thou");
        }
    }
}
