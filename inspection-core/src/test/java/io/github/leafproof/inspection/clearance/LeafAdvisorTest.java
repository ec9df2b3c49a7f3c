package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.AT_95;
import static io.github.leafproof.inspection.clearance.Bench.MM;
import static io.github.leafproof.inspection.clearance.Bench.SET;
import static io.github.leafproof.inspection.clearance.Bench.evidence;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.mm;
import static io.github.leafproof.inspection.clearance.Bench.passes;
import static io.github.leafproof.inspection.clearance.Bench.refuses;
import static io.github.leafproof.inspection.clearance.Bench.set;
import static io.github.leafproof.inspection.clearance.Bench.singles;
import static io.github.leafproof.inspection.clearance.Bench.window;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.LeafStack;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class LeafAdvisorTest {
    private static final Limits LASH = window(0.03, 0.10);
    private static final Leaf THREE = leaf("0.03", "0.030");
    private static final Leaf FOUR = leaf("0.04", "0.040");
    private static final Leaf FIVE = leaf("0.05", "0.050");
    private static final Leaf TEN = leaf("0.10", "0.110");
    private static final LeafSet BENCH = set(THREE, FOUR, FIVE, TEN);
    private static final LeafStack FIVE_AND_FOUR = new LeafStack(List.of(FIVE, FOUR), mm("0.001"));

    private static NextLeaf next(GapEvidence evidence, Limits limits, FeelSet set) {
        return LeafAdvisor.next(evidence, limits, AT_95, set);
    }

    private static String words(GapEvidence evidence, Limits limits, FeelSet set) {
        return next(evidence, limits, set).words(UnitSystem.METRIC);
    }

    @Nested
    class The_worked_case {
        private final GapEvidence open = evidence(passes(FIVE), refuses(TEN));

        @Test
        void the_stack_that_would_settle_it_is_found() {
            NextLeaf.Try advice = (NextLeaf.Try) next(open, LASH, BENCH);
            assertThat(advice.feeler()).isEqualTo(FIVE_AND_FOUR);
            assertThat(advice.ifRefuses()).isEqualTo(new NextLeaf.Settled(Outcome.PASSES, Side.NONE));
            assertThat(advice.ifPasses()).isInstanceOf(NextLeaf.CannotSettle.class);
            // Of the range from 0.050 to 0.110 the stack of 0.091 settles the lower part.
            assertThat(advice.shareSettled()).isCloseTo(0.041 / 0.060, within(1e-9));
            assertThat(advice.expectedTrials()).isCloseTo(1, within(1e-9));
        }

        @Test
        void it_is_said_in_plain_words() {
            assertThat(words(open, LASH, BENCH))
                    .isEqualTo("Offer 0.05 + 0.04 mm together (0.0910 mm): if it refuses, the gap is inside the limits;"
                            + " if it passes, nothing in this set can settle it.");
        }

        @Test
        void in_inches_the_markings_stay_as_they_are_stamped() {
            assertThat(next(open, LASH, BENCH).words(UnitSystem.INCH))
                    .isEqualTo(
                            "Offer 0.05 + 0.04 mm together (3.583 thou): if it refuses, the gap is inside the limits;"
                                    + " if it passes, nothing in this set can settle it.");
        }

        @Test
        void what_was_announced_is_what_comes_of_the_trial() {
            assertThat(open.with(refuses(FIVE_AND_FOUR)).judge(LASH, AT_95)).isEqualTo(Outcome.PASSES);
            assertThat(open.with(passes(FIVE_AND_FOUR)).judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void when_the_stack_enters_the_leaf_that_is_lacking_is_described() {
            // At 95 % a leaf keeps 1.645 u from a limit: 0.09836 and 0.10164 mm for u 0.001.
            NextLeaf.CannotSettle stuck = (NextLeaf.CannotSettle) next(open.with(passes(FIVE_AND_FOUR)), LASH, BENCH);
            assertThat(stuck.wanted()).hasSize(2);
            assertThat(stuck.wanted().get(0).thickest()).isCloseTo(0.098355146 * MM, within(1e-9 * MM));
            assertThat(stuck.wanted().get(1).thinnest()).isCloseTo(0.101644854 * MM, within(1e-9 * MM));
            assertThat(stuck.words(UnitSystem.METRIC))
                    .isEqualTo(
                            "No leaf or stack in this set can settle it. It takes a leaf measuring between 0.0910 mm and"
                                    + " 0.0983 mm that refuses, or a leaf measuring between 0.1017 mm and 0.1100 mm that passes"
                                    + " (measured to u 0.0010 mm).");
        }

        @Test
        void a_leaf_as_described_does_settle_it() {
            GapEvidence stuck = open.with(passes(FIVE_AND_FOUR));
            assertThat(stuck.with(refuses(leaf("0.095", "0.0983"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.PASSES);
            assertThat(stuck.with(refuses(leaf("0.095", "0.0985"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.OPEN);
            assertThat(stuck.with(passes(leaf("0.102", "0.1017"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.FAILS);
            assertThat(stuck.with(passes(leaf("0.102", "0.1015"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.OPEN);
        }
    }

    @Nested
    class From_the_start {
        @Test
        void an_untried_gap_is_first_tried_where_half_of_it_may_be_settled_at_once() {
            assertThat(words(GapEvidence.none(), LASH, BENCH))
                    .isEqualTo("Offer 0.10 mm (measures 0.1100 mm): if it passes, the gap is too large;"
                            + " if it refuses, offer 0.04 mm (measures 0.0400 mm).");
        }

        @Test
        void following_the_advice_ends_with_a_settled_matter_or_with_a_reason() {
            for (double micrometres = 0.5; micrometres < 200; micrometres++) {
                double gap = micrometres * 1e-6;
                GapEvidence evidence = GapEvidence.none();
                NextLeaf advice = next(evidence, LASH, BENCH);
                int trials = 0;
                while (advice instanceof NextLeaf.Try offer) {
                    boolean enters = gap >= offer.feeler().thickness().value();
                    evidence = evidence.with(enters ? passes(offer.feeler()) : refuses(offer.feeler()));
                    advice = next(evidence, LASH, BENCH);
                    trials++;
                }
                // Between 0.040 and the stack of 0.091, or past 0.110: there this tray can tell, elsewhere it cannot.
                boolean canTell = (micrometres > 40 && micrometres < 91) || micrometres > 110;
                assertThat(advice instanceof NextLeaf.Settled)
                        .as(micrometres + " µm")
                        .isEqualTo(canTell);
                assertThat(trials).isBetween(1, 3);
            }
        }

        @Test
        void when_nothing_in_the_set_can_tell_two_leaves_inside_the_limits_are_wanted() {
            assertThat(words(GapEvidence.none(), LASH, set(THREE)))
                    .isEqualTo(
                            "No leaf or stack in this set can settle it. It takes two leaves measuring between 0.0320 mm"
                                    + " and 0.0980 mm, of which the thinner passes and the thicker refuses, or a leaf measuring at"
                                    + " least 0.1017 mm that passes, or a leaf measuring at most 0.0283 mm that refuses (measured to"
                                    + " u 0.0010 mm).");
        }

        @Test
        void of_two_feelers_as_thick_as_each_other_the_one_with_fewer_leaves_is_offered() {
            Leaf nine = leaf("0.09", "0.0908");
            NextLeaf.Try advice =
                    (NextLeaf.Try) next(evidence(passes(FIVE), refuses(TEN)), LASH, set(THREE, FOUR, FIVE, nine, TEN));
            assertThat(advice.feeler()).isEqualTo(nine);
        }
    }

    @Nested
    class Settled_or_odd {
        @Test
        void a_settled_matter_needs_no_more_leaves() {
            assertThat(words(evidence(passes(TEN)), LASH, BENCH))
                    .isEqualTo("Nothing more to offer: the gap is too large.");
            assertThat(words(evidence(refuses(leaf("0.02", "0.020"))), LASH, BENCH))
                    .isEqualTo("Nothing more to offer: the gap is too small.");
            assertThat(words(evidence(passes(FIVE), refuses(leaf("0.09", "0.090"))), LASH, BENCH))
                    .isEqualTo("Nothing more to offer: the gap is inside the limits.");
        }

        @Test
        void contradicting_trials_are_to_be_made_again() {
            assertThat(words(evidence(passes(FIVE), refuses(FOUR)), LASH, BENCH))
                    .isEqualTo("0.05 mm (measures 0.0500 mm) entered, though 0.04 mm (measures 0.0400 mm) refused; both"
                            + " cannot be: wipe the leaves, check that the engine is cold and at the right dead centre, and"
                            + " offer both again.");
            assertThat(words(evidence(passes(FIVE), refuses(FIVE)), LASH, BENCH))
                    .isEqualTo(
                            "0.05 mm (measures 0.0500 mm) was found both to enter and to refuse: wipe the leaves, check"
                                    + " that the engine is cold and at the right dead centre, and offer it again.");
        }

        @Test
        void a_better_known_leaf_is_offered_even_where_a_badly_known_one_has_entered_already() {
            // 0.05 as marked may be as thin as 0.0375 and shows nothing about 0.042; 0.045 measured does, and will
            // enter.
            Leaf marked = Leaf.asMarked(SET, mm("0.05"));
            Leaf fine = leaf("0.045", "0.045");
            Leaf thick = leaf("0.09", "0.090");
            NextLeaf.Try advice = (NextLeaf.Try) next(
                    evidence(passes(marked), refuses(thick)),
                    window(0.042, 0.10),
                    singles(List.of(marked, fine, thick)));
            assertThat(advice.feeler()).isEqualTo(fine);
            assertThat(advice.ifPasses()).isEqualTo(new NextLeaf.Settled(Outcome.PASSES, Side.NONE));
            assertThat(advice.shareSettled()).isCloseTo(1, within(1e-9));
        }

        @Test
        void where_one_leaf_does_as_well_as_a_stack_the_one_leaf_is_offered() {
            Leaf marked = Leaf.asMarked(SET, mm("0.05"));
            Leaf single = leaf("0.047", "0.047");
            LeafSet set = set(leaf("0.02", "0.020"), leaf("0.025", "0.0245"), single);
            NextLeaf.Try advice = (NextLeaf.Try)
                    next(evidence(passes(marked), refuses(leaf("0.09", "0.090"))), window(0.042, 0.10), set);
            assertThat(advice.feeler()).isEqualTo(single);
        }

        @Test
        void a_leaf_as_it_is_asked_for_in_words_is_never_a_little_too_thick() {
            // 0.098 355 mm at most; 0.0984 would be the nearer decimal, and would leave the matter open.
            GapEvidence open = evidence(passes(FIVE), refuses(TEN));
            assertThat(words(open, LASH, singles(List.of(FIVE, TEN)))).contains("and 0.0983 mm that refuses");
            assertThat(open.with(refuses(leaf("0.09", "0.0983"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.PASSES);
            assertThat(open.with(refuses(leaf("0.09", "0.0984"))).judge(LASH, AT_95))
                    .isEqualTo(Outcome.OPEN);
        }

        @Test
        void a_trial_that_would_contradict_an_earlier_one_is_announced_as_such() {
            // Φ(2) of the lower and Φ(1.8) of the upper limit: 0.977 + 0.964 − 1 is not yet 95 %.
            GapEvidence nearly = evidence(passes(leaf("0.05", "0.050", "0.010")), refuses(leaf("0.10", "0.0982")));
            assertThat(words(nearly, LASH, singles(List.of(leaf("0.03", "0.0325", "0.0005")))))
                    .isEqualTo("Offer 0.03 mm (measures 0.03250 mm): if it passes, the gap is inside the limits;"
                            + " if it refuses, that contradicts an earlier trial, and both are to be made again.");
        }

        @Test
        void leaves_never_measured_are_named_since_measuring_may_be_all_it_takes() {
            Leaf five = Leaf.asMarked(SET, mm("0.05"));
            Leaf ten = Leaf.asMarked(SET, mm("0.1"));
            assertThat(words(evidence(passes(five), refuses(ten)), LASH, singles(List.of(five, ten))))
                    .isEqualTo(
                            "No leaf or stack in this set can settle it. It takes a leaf measuring between 0.0500 mm and"
                                    + " 0.0961 mm that refuses (measured to u 0.0023 mm). Never measured: 0.05 mm, 0.10 mm;"
                                    + " measuring may be all it takes.");
            assertThat(words(evidence(), window(0.02, 0.10), singles(List.of(five))))
                    .startsWith("No leaf or stack in this set can settle it. It takes two leaves measuring");
        }

        @Test
        void when_even_the_leaves_speak_against_each_other_only_showing_the_contrary_is_left() {
            // The coarse leaf entered at 0.095: perhaps the gap is too large. Passing can no longer be shown.
            GapEvidence spoiled = evidence(passes(leaf("0.10", "0.095", "0.010")), refuses(TEN), passes(FIVE));
            assertThat(words(spoiled, LASH, singles(List.of(FIVE, TEN))))
                    .isEqualTo(
                            "No leaf or stack in this set can settle it. It takes a leaf measuring between 0.1017 mm and"
                                    + " 0.1100 mm that passes (measured to u 0.0010 mm).");
        }
    }

    @Nested
    class Beyond_help {
        @Test
        void between_trials_that_speak_against_each_other_no_leaf_can_help() {
            GapEvidence spoiled =
                    evidence(passes(leaf("0.10", "0.095", "0.010")), refuses(leaf("0.11", "0.101")), passes(FIVE));
            assertThat(words(spoiled, LASH, singles(List.of(FIVE))))
                    .isEqualTo("No leaf or stack in this set can settle it.");
        }
    }

    @Nested
    class One_limit_and_tolerance {
        @Test
        void for_a_limit_leaf_alone_one_trial_decides() {
            // Common practice: the gap is set by other means, and a 0.10 leaf only must not enter.
            assertThat(words(GapEvidence.none(), Limits.atMost(mm("0.10")), set(leaf("0.09", "0.092"), TEN)))
                    .isEqualTo("Offer 0.10 mm (measures 0.1100 mm): if it passes, the gap is too large;"
                            + " if it refuses, offer 0.09 mm (measures 0.0920 mm).");
            assertThat(words(GapEvidence.none(), Limits.atMost(mm("0.10")), set(TEN)))
                    .isEqualTo("Offer 0.10 mm (measures 0.1100 mm): if it passes, the gap is too large;"
                            + " if it refuses, nothing in this set can settle it.");
        }

        @Test
        void pins_never_measured_are_said_to_be_taken_at_their_marking() {
            // Common practice: the idle opening of a throttle barrel is felt with pins.
            FeelSet pins = singles(List.of(Leaf.asMarked(SET, mm("0.6"))));
            assertThat(words(GapEvidence.none(), Limits.atMost(mm("0.85")), pins))
                    .isEqualTo("Offer 0.60 mm (never measured, taken as 0.600 mm): if it refuses, the gap is inside the"
                            + " limits; if it passes, nothing in this set can settle it.");
        }

        @Test
        void for_a_lower_limit_alone_a_leaf_a_little_over_it_is_sought() {
            assertThat(words(GapEvidence.none(), Limits.atLeast(mm("0.03")), set(FOUR, TEN)))
                    .isEqualTo("Offer 0.04 mm (measures 0.0400 mm): if it passes, the gap is inside the limits;"
                            + " if it refuses, nothing in this set can settle it.");
        }

        @Test
        void every_gap_is_at_least_zero_so_nothing_need_be_offered() {
            assertThat(words(GapEvidence.none(), Limits.atLeast(mm("0")), BENCH))
                    .isEqualTo("Nothing more to offer: the gap is inside the limits.");
        }

        @Test
        void a_limit_of_zero_leaves_a_hair_to_plan_with() {
            assertThat(words(GapEvidence.none(), Limits.atMost(mm("0")), singles(List.of(FIVE))))
                    .startsWith("Offer 0.05 mm (measures 0.0500 mm): if it passes, the gap is too large;");
        }

        @Test
        void a_gap_shown_to_be_tolerated_is_still_tried_for_the_limits_aimed_for() {
            Limits tolerant = LASH.tolerating(mm("0.03"), mm("0.14"));
            assertThat(words(evidence(passes(FIVE), refuses(TEN)), tolerant, BENCH))
                    .isEqualTo("Offer 0.05 + 0.04 mm together (0.0910 mm): if it refuses, the gap is inside the limits;"
                            + " if it passes, the gap is inside what is tolerated.");
            assertThat(words(evidence(passes(FIVE_AND_FOUR), refuses(TEN)), tolerant, BENCH))
                    .isEqualTo("Nothing more to offer: the gap is inside what is tolerated.");
        }

        @Test
        void beyond_the_aim_the_tolerance_is_asked_about() {
            Limits tolerant = LASH.tolerating(mm("0.03"), mm("0.14"));
            NextLeaf.Try advice = (NextLeaf.Try) next(evidence(passes(TEN)), tolerant, BENCH);
            assertThat(advice.feeler().label()).isEqualTo("0.10 + 0.04 mm");
            assertThat(advice.ifPasses()).isEqualTo(new NextLeaf.Settled(Outcome.FAILS, Side.HIGH));
            NextLeaf.CannotSettle stuck =
                    (NextLeaf.CannotSettle) next(evidence(passes(TEN)), tolerant, singles(List.of(THREE, TEN)));
            assertThat(stuck.words(UnitSystem.METRIC))
                    .isEqualTo(
                            "No leaf or stack in this set can settle it. It takes a leaf measuring between 0.1100 mm and"
                                    + " 0.1383 mm that refuses, or a leaf measuring at least 0.1417 mm that passes (measured to"
                                    + " u 0.0010 mm).");
        }
    }

    @Nested
    class What_a_tray_can_show {
        @Test
        void leaves_of_exactly_the_limit_sizes_can_never_show_the_window() {
            assertThat(LeafAdvisor.canShowInside(LASH, AT_95, singles(List.of(THREE, leaf("0.10", "0.100")))))
                    .isFalse();
            assertThat(LeafAdvisor.canShowInside(
                            LASH, AT_95, singles(List.of(leaf("0.03", "0.032"), leaf("0.10", "0.098")))))
                    .isTrue();
        }

        @Test
        void one_leaf_inside_the_window_is_not_enough_but_a_stack_of_two_may_be() {
            assertThat(LeafAdvisor.canShowInside(LASH, AT_95, singles(List.of(FOUR))))
                    .isFalse();
            assertThat(LeafAdvisor.canShowInside(LASH, AT_95, set(FOUR, FIVE))).isTrue();
        }

        @Test
        void for_one_limit_one_leaf_is_enough_and_for_none_none() {
            assertThat(LeafAdvisor.canShowInside(Limits.atMost(mm("0.10")), AT_95, singles(List.of(FIVE))))
                    .isTrue();
            assertThat(LeafAdvisor.canShowInside(Limits.atLeast(mm("0.03")), AT_95, singles(List.of(FIVE))))
                    .isTrue();
            assertThat(LeafAdvisor.canShowInside(Limits.atMost(mm("0.05")), AT_95, singles(List.of(FIVE))))
                    .isFalse();
            assertThat(LeafAdvisor.canShowInside(Limits.atLeast(mm("0")), AT_95, singles(List.of(FIVE))))
                    .isTrue();
        }
    }

    @Nested
    class The_pair_to_own {
        // z for a two-sided 95 % is 1.959 964, for a one-sided 1.644 854 (JCGM 106 table 1 and standard tables, from
        // memory).
        @Test
        void the_best_pair_lies_a_little_inside_the_window() {
            LeafPair pair = LeafAdvisor.bestPair(LASH, AT_95, 0.001 * MM);
            assertThat(pair.go().orElseThrow()).isCloseTo(0.031959964 * MM, within(1e-9 * MM));
            assertThat(pair.noGo().orElseThrow()).isCloseTo(0.098040036 * MM, within(1e-9 * MM));
            assertThat(pair.words(UnitSystem.METRIC))
                    .isEqualTo("The pair to own measures 0.0320 mm, which must pass, and 0.0980 mm, which must refuse"
                            + " (u 0.0010 mm).");
        }

        @Test
        void the_pair_to_own_just_shows_the_window() {
            LeafPair pair = LeafAdvisor.bestPair(LASH, AT_95, 0.001 * MM);
            Leaf go = leaf("0.03", Double.toString(pair.go().orElseThrow() / MM + 1e-9));
            Leaf noGo = leaf("0.10", Double.toString(pair.noGo().orElseThrow() / MM - 1e-9));
            assertThat(evidence(passes(go), refuses(noGo)).judge(LASH, AT_95)).isEqualTo(Outcome.PASSES);
            Leaf closer = leaf("0.10", Double.toString(pair.noGo().orElseThrow() / MM + 1e-5));
            assertThat(evidence(passes(go), refuses(closer)).judge(LASH, AT_95)).isEqualTo(Outcome.OPEN);
        }

        @Test
        void for_one_limit_one_leaf_is_owned() {
            LeafPair noGo = LeafAdvisor.bestPair(Limits.atMost(mm("0.10")), AT_95, 0.001 * MM);
            assertThat(noGo.go()).isEmpty();
            assertThat(noGo.canShowInside()).isTrue();
            assertThat(noGo.words(UnitSystem.METRIC))
                    .isEqualTo("The leaf to own measures 0.0983 mm (u 0.0010 mm) and must refuse.");
            LeafPair go = LeafAdvisor.bestPair(Limits.atLeast(mm("0.03")), AT_95, 0.001 * MM);
            assertThat(go.noGo()).isEmpty();
            assertThat(go.canShowInside()).isTrue();
            assertThat(go.words(UnitSystem.METRIC))
                    .isEqualTo("The leaf to own measures 0.0317 mm (u 0.0010 mm) and must pass.");
        }

        @Test
        void for_a_narrow_window_no_pair_known_this_badly_will_do() {
            LeafPair pair = LeafAdvisor.bestPair(window(0.01, 0.03), AT_95, 0.010 * MM);
            assertThat(pair.canShowInside()).isFalse();
            assertThat(pair.words(UnitSystem.METRIC))
                    .isEqualTo("No two leaves can show this window (u 0.010 mm): it is too narrow for how well they are"
                            + " known.");
        }

        @Test
        void a_leaf_without_uncertainty_does_not_exist() {
            assertThatThrownBy(() -> LeafAdvisor.bestPair(LASH, AT_95, 0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("the uncertainty of a leaf must be above zero, not 0.0");
            assertThatThrownBy(() -> LeafAdvisor.bestPair(LASH, AT_95, Double.POSITIVE_INFINITY))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LeafAdvisor.bestPair(LASH, AT_95, Double.NaN))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Nested
    class At_the_bench {
        @Test
        void advice_for_the_largest_set_does_not_keep_anybody_waiting() {
            List<Leaf> all = new ArrayList<>();
            for (int i = 1; i <= FeelSet.MOST_LEAVES; i++) {
                String hundredths = Double.toString(i / 100.0);
                all.add(leaf(hundredths, hundredths, i % 3 == 0 ? "0.010" : "0.001"));
            }
            LeafSet large = set(all.toArray(Leaf[]::new));
            NextLeaf advice = Assertions.assertTimeout(
                    Duration.ofSeconds(20), () -> next(GapEvidence.none(), window(0.1, 0.4), large));
            assertThat(advice).isInstanceOf(NextLeaf.Try.class);
        }

        @Test
        void badly_known_leaves_in_a_wide_window_leave_many_to_choose_from_and_still_an_answer() {
            List<Leaf> all = new ArrayList<>();
            for (int i = 1; i <= 60; i++) {
                all.add(leaf(Double.toString(i / 100.0), Double.toString(i / 100.0), "0.040"));
            }
            Limits wide = window(0.1, 0.9).tolerating(mm("0.05"), mm("1.2"));
            NextLeaf.Try advice = (NextLeaf.Try) next(GapEvidence.none(), wide, set(all.toArray(Leaf[]::new)));
            // Of 0 to 2.4 mm about 0.17 to 0.81 can be shown to be inside, and 0.99 to 1.11 to be no more than
            // tolerated.
            assertThat(advice.shareSettled()).isCloseTo(0.76 / 2.4, within(0.02));
            assertThat(advice.expectedTrials()).isBetween(1.0, 4.0);
        }
    }
}
