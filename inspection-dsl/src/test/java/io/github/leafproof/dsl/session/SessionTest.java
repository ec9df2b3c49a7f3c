package io.github.leafproof.dsl.session;

import static io.github.leafproof.dsl.session.SmallBench.ahead;
import static io.github.leafproof.dsl.session.SmallBench.next;
import static io.github.leafproof.dsl.session.SmallBench.said;
import static io.github.leafproof.dsl.session.SmallBench.trials;
import static io.github.leafproof.dsl.session.SmallBench.words;
import static io.github.leafproof.dsl.session.SmallBench.yes;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import io.github.leafproof.inspection.clearance.NextLeaf;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Act;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** An inspection done at the bench, one thing after the other. */
class SessionTest {

    private static Outcome outcome(Standing standing, String check) {
        return standing.judgement().verdict(check).orElseThrow().outcome();
    }

    private static Session cold() {
        Session session = SmallBench.session();
        session.enter("marks", words("Q15-4")).orElseThrow();
        session.enter("head", words("21 °C")).orElseThrow();
        session.enter("room", words("21 °C")).orElseThrow();
        return session;
    }

    @Test
    void the_first_step_needs_no_change_of_the_bench_and_all_that_is_ahead_takes_the_fewest() {
        Session session = SmallBench.session();

        NextStep first = session.standing().next().orElseThrow();

        assertThat(first.observation().name()).isEqualTo("marks");
        assertThat(first.reason()).isEqualTo(NextStep.Reason.FIRST);
        assertThat(first.setup()).isEmpty();
        assertThat(first.ask()).isEqualTo("Read the marks");
        assertThat(first.gauge()).isNull();
        assertThat(ahead(session.standing()))
                .containsExactly(
                        "marks",
                        "head",
                        "room",
                        "rattle",
                        "Unscrew the plug",
                        "thread",
                        "Lift the covers",
                        "lash",
                        "gear",
                        "oiled_now",
                        "Fill the tank",
                        "primes");
        assertThat(session.standing().progress()).isEqualTo(new Progress(0, 0, 9, 0, 0, 0, 0, 3));
    }

    @Test
    void a_step_says_which_gauge_to_take() {
        Standing standing = SmallBench.session().enter("marks", words("Q15-4")).orElseThrow();

        assertThat(standing.next().orElseThrow().gauge())
                .isNotNull()
                .extracting(gauge -> gauge.name())
                .isEqualTo("infrared");
    }

    @Test
    void the_cautions_of_a_change_come_before_the_change_and_those_of_a_state_last_as_long_as_it_does() {
        Session session = cold();
        session.enter("lash", trials("passes 0.05 mm", "refuses 0.08 mm")).orElseThrow();

        NextStep primes = session.goTo("primes").orElseThrow().next().orElseThrow();

        assertThat(primes.setup()).singleElement().satisfies(fill -> {
            assertThat(fill.change().how()).isEqualTo("Fill the tank");
            assertThat(fill.cautions()).hasSize(2).anyMatch(caution -> caution.contains("poison"));
        });
        assertThat(primes.cautions()).hasSize(2).anyMatch(caution -> caution.contains("propeller"));
        session.bring("tank", "filled").orElseThrow();
        assertThat(session.goTo("marks").orElseThrow().next().orElseThrow().cautions())
                .singleElement()
                .asString()
                .contains("Methanol burns");
    }

    @Test
    void what_another_leaf_would_settle_is_asked_for_at_once_and_the_leaf_is_named() {
        Session session = cold();

        assertThat(session.goTo("lash").orElseThrow().next().orElseThrow().leaf())
                .isInstanceOf(NextLeaf.Try.class);
        Standing open = session.enter("lash", trials("passes 0.05 mm", "refuses 0.10 mm"))
                .orElseThrow();

        assertThat(outcome(open, "inside")).isEqualTo(Outcome.OPEN);
        NextStep more = open.next().orElseThrow();
        assertThat(more.observation().name()).isEqualTo("lash");
        assertThat(more.reason()).isEqualTo(NextStep.Reason.MORE);
        assertThat(more.setup()).isEmpty();
        assertThat(more.leaf()).isNotNull();
        assertThat(Objects.requireNonNull(more.leaf()).words(UnitSystem.METRIC))
                .contains("Offer 0.05 + 0.04 mm together");
        assertThat(open.bearingOn("lash"))
                .singleElement()
                .satisfies(inside -> assertThat(inside.advice()).isNotEmpty());

        Standing settled =
                session.enter("lash", trials("refuses 0.05 mm + 0.04 mm")).orElseThrow();

        assertThat(outcome(settled, "inside")).isEqualTo(Outcome.PASSES);
        assertThat(next(settled)).isEqualTo("gear");
    }

    @Test
    void a_gap_that_nobody_wants_to_try_further_is_left_open() {
        Session session = cold();
        session.enter("lash", trials("passes 0.05 mm", "refuses 0.10 mm")).orElseThrow();

        Standing passedOver = session.skip("lash").orElseThrow();

        assertThat(next(passedOver)).isEqualTo("gear");
        assertThat(passedOver.placeOf(passedOver.basis().graph().observations().get(3)))
                .isEqualTo(Place.DONE);
        assertThat(outcome(passedOver, "inside")).isEqualTo(Outcome.OPEN);
    }

    @Test
    void what_waits_for_a_gate_that_is_shut_is_not_asked_for_and_is_once_it_opens() {
        Session session = SmallBench.session();
        session.enter("head", words("41 °C")).orElseThrow();
        Standing warm = session.enter("room", words("21 °C")).orElseThrow();

        assertThat(ahead(warm)).doesNotContain("lash", "primes", "Fill the tank");
        assertThat(warm.progress().waiting()).isEqualTo(2);

        Standing cold = session.correct("head", words("22 °C")).orElseThrow();

        assertThat(ahead(cold)).contains("lash", "primes");
        assertThat(cold.progress().waiting()).isZero();
    }

    @Test
    void the_hazard_behind_a_gate_that_nobody_can_open_is_never_come_to() {
        Session session = cold();
        session.cannot("lash", "the leaf broke").orElseThrow();

        assertThat(ahead(session.standing())).doesNotContain("primes", "Fill the tank");

        session.undo().orElseThrow();
        session.skip("lash").orElseThrow();
        assertThat(ahead(session.standing())).doesNotContain("primes", "Fill the tank");
    }

    @Test
    void what_depends_on_an_answer_is_asked_for_by_that_answer() {
        Session session = SmallBench.session();

        Standing oiled = session.enter("gear", words("oiled")).orElseThrow();
        assertThat(ahead(oiled)).doesNotContain("oiled_now");
        assertThat(oiled.progress().notApplicable()).isEqualTo(1);

        Standing dry = session.correct("gear", words("dry")).orElseThrow();
        assertThat(ahead(dry)).contains("oiled_now");

        session.undo().orElseThrow();
        session.undo().orElseThrow();
        Standing skipped = session.skip("gear").orElseThrow();
        assertThat(ahead(skipped)).doesNotContain("gear", "oiled_now");
        assertThat(skipped.progress().waiting()).isEqualTo(1);
    }

    @Test
    void the_bench_is_where_the_last_step_left_it() {
        Session session = cold();
        Standing off = session.enter("gear", words("oiled")).orElseThrow();

        assertThat(off.bench("covers")).isEqualTo("off");
        assertThat(ahead(off))
                .containsExactly(
                        "lash", "rattle", "Unscrew the plug", "Refit the covers", "thread", "Fill the tank", "primes");
        Standing refitted = session.bring("covers", "fitted").orElseThrow();
        assertThat(ahead(refitted))
                .containsExactly(
                        "rattle", "Unscrew the plug", "thread", "Lift the covers", "lash", "Fill the tank", "primes");
    }

    @Test
    void what_could_not_be_looked_at_leaves_the_bench_as_it_was_said_to_be() {
        Session session = SmallBench.session();

        assertThat(session.cannot("gear", "the cover sticks").orElseThrow().bench("covers"))
                .isEqualTo("fitted");
        session.bring("covers", "off").orElseThrow();
        assertThat(session.cannot("lash", "too dark").orElseThrow().bench("covers"))
                .isEqualTo("off");
    }

    @Test
    void what_is_put_off_comes_when_nothing_else_is_left_and_what_is_put_off_again_comes_after_that() {
        Session session = SmallBench.session("""
                observe a : yes/no ask "A"
                observe b : yes/no ask "B"
                observe c : yes/no ask "C"
                check all "All" minor { require a and b and c }
                """);

        assertThat(ahead(session.later("a").orElseThrow())).containsExactly("b", "c", "a");
        assertThat(ahead(session.later("b").orElseThrow())).containsExactly("c", "a", "b");
        assertThat(ahead(session.enter("c", yes(true)).orElseThrow())).containsExactly("a", "b");
        assertThat(ahead(session.later("a").orElseThrow())).containsExactly("b", "a");
        assertThat(session.standing().progress()).isEqualTo(new Progress(1, 0, 0, 2, 0, 0, 0, 0));
        session.enter("b", yes(true)).orElseThrow();
        assertThat(next(session.later("a").orElseThrow())).isEqualTo("a");
    }

    @Test
    void one_goes_back_step_by_step_and_on_again() {
        Session session = cold();
        assertThat(next(session.standing())).isEqualTo("rattle");

        NextStep room = session.back().next().orElseThrow();
        assertThat(room.observation().name()).isEqualTo("room");
        assertThat(room.reason()).isEqualTo(NextStep.Reason.AGAIN);
        assertThat(next(session.back())).isEqualTo("head");
        assertThat(next(session.back())).isEqualTo("marks");
        assertThat(next(session.back())).isEqualTo("marks");
        assertThat(next(session.onward())).isEqualTo("rattle");

        session.goTo("head").orElseThrow();
        Standing corrected = session.correct("head", words("22 °C")).orElseThrow();
        assertThat(next(corrected)).isEqualTo("rattle");
        assertThat(next(SmallBench.session().back())).isEqualTo("marks");
    }

    @Test
    void going_to_what_the_procedure_does_not_observe_is_refused_with_what_may_have_been_meant() {
        Session session = SmallBench.session();

        assertThat(said(session.goTo("lahs"))).singleElement().asString().contains("did you mean lash?");
        assertThat(said(session.skip("lahs"))).singleElement().asString().contains("did you mean lash?");
        assertThat(said(session.later("nothing like it")))
                .containsExactly("0412: error LP676: the procedure observes nothing called nothing like it");
        assertThat(said(session.enter("lahs", yes(true))))
                .singleElement()
                .asString()
                .contains("did you mean lash?");
        assertThatIllegalArgumentException().isThrownBy(() -> session.bring("covrs", "off"));
        assertThatIllegalArgumentException().isThrownBy(() -> session.bring("covers", "open"));
        assertThat(session.standing().acts()).isEmpty();
    }

    @Test
    void an_entry_that_makes_no_sense_is_refused_in_words_and_nothing_has_happened() {
        Session session = SmallBench.session();
        Standing before = session.standing();

        assertThat(said(session.enter("head", words("21 mm"))))
                .singleElement()
                .asString()
                .contains("temperature");
        assertThat(said(session.enter("head", words("warm"))))
                .singleElement()
                .asString()
                .contains("LP621");
        assertThat(said(session.enter("gear", words("greasy"))))
                .singleElement()
                .asString()
                .contains("oiled");
        assertThat(said(session.enter("lash", trials("passes 0.07 mm")))).isNotEmpty();
        assertThat(said(session.cannot("lash", " "))).singleElement().asString().contains("LP615");
        assertThat(said(session.enter("marks", words("Q15"), Remark.of("a\u0007b"))))
                .isNotEmpty();
        assertThat(said(session.correct("head", words("21 °C"))))
                .singleElement()
                .asString()
                .contains("LP653");
        assertThat(session.standing()).isSameAs(before);
    }

    @Test
    void what_is_known_is_not_entered_again_but_corrected_and_the_slip_stays_visible() {
        Session session = SmallBench.session();
        session.enter("head", words("41 °C")).orElseThrow();

        assertThat(said(session.enter("head", words("21 °C"))))
                .singleElement()
                .asString()
                .contains("LP677");
        Standing corrected = session.correct("head", words("21 °C")).orElseThrow();

        assertThat(corrected.entries("head")).extracting(Entry::corrects).containsExactly(false, true);
        assertThat(SheetFile.toJson(corrected.sheet().content())).contains("41 °C", "\"corrects\": true");
    }

    @Test
    void what_could_not_be_observed_before_is_simply_entered_when_it_can() {
        Session session = SmallBench.session();
        session.cannot("gear", "the cover sticks").orElseThrow();

        Standing standing = session.enter("gear", words("oiled")).orElseThrow();

        assertThat(outcome(standing, "oiled")).isEqualTo(Outcome.PASSES);
        assertThat(standing.entries("gear")).extracting(Entry::corrects).containsExactly(false, true);
    }

    @Test
    void what_is_adjusted_is_asked_for_again_and_judged_as_found_and_as_left() {
        Session session = cold();
        session.enter("lash", trials("passes 0.15 mm")).orElseThrow();

        Standing adjusted = session.adjust("lash", Quantity.parse("50 deg")).orElseThrow();
        assertThat(next(adjusted)).isEqualTo("lash");
        assertThat(adjusted.next().orElseThrow().reason()).isEqualTo(NextStep.Reason.FIRST);

        Standing left = session.enter("lash", trials("passes 0.05 mm", "refuses 0.08 mm"))
                .orElseThrow();
        assertThat(outcome(left, "inside")).isEqualTo(Outcome.PASSES);
        assertThat(left.judgement()
                        .asFound(
                                left.judgement().verdict("inside").orElseThrow().check())
                        .orElseThrow()
                        .outcome())
                .isEqualTo(Outcome.FAILS);
    }

    @Test
    void acts_are_taken_back_one_by_one_and_what_is_taken_back_is_asked_for_again() {
        Session session = cold();

        Standing standing = session.undo().orElseThrow();
        assertThat(next(standing)).isEqualTo("room");
        assertThat(outcome(standing, "cold")).isEqualTo(Outcome.UNTESTED);
        assertThat(standing.sheet().content().entries()).hasSize(2);
        session.undo().orElseThrow();
        session.undo().orElseThrow();
        assertThat(session.standing().acts()).isEmpty();
        assertThat(said(session.undo())).singleElement().asString().contains("there is nothing to take back");
    }

    @Test
    void what_stands_on_a_written_sheet_is_not_taken_back_any_more() {
        Session session = cold();
        Finished finished = session.finish().orElseThrow();

        assertThat(finished.report().release()).isEqualTo(Release.UNFINISHED);
        assertThat(said(session.undo())).singleElement().asString().contains("can be corrected");
        session.correct("head", words("22 °C")).orElseThrow();
        assertThat(session.standing().last()).get().isInstanceOf(Act.Entered.class);
        session.undo().orElseThrow();
        assertThat(said(session.undo())).isNotEmpty();
    }

    @Test
    void the_sheet_that_is_handed_over_reads_back_as_what_was_entered() {
        Session session = cold();
        session.enter("lash", trials("passes 0.05 mm", "refuses 0.08 mm"), Remark.of("stem wiped"))
                .orElseThrow();
        session.cannot("thread", "the plug is seized").orElseThrow();

        Finished finished = session.finish().orElseThrow();

        assertThat(finished.sheet().content().entries())
                .extracting(Entry::given)
                .contains(new Given.Words("21 °C"), new Given.Cannot("the plug is seized"));
        assertThat(finished.report().sheet().sha256())
                .isEqualTo(finished.sheet().sha256());
        assertThat(SheetFile.toJson(finished.sheet().content())).isEqualTo("""
                {
                  "sheet": "0412",
                  "procedure": "trial",
                  "revision": 2,
                  "engine": {
                    "serial": "Q15-1",
                    "condition": "used"
                  },
                  "date": "2026-03-04",
                  "entries": [
                    {
                      "observe": "marks",
                      "value": "Q15-4",
                      "by": "mk",
                      "at": "2026-03-04T10:12:00Z"
                    },
                    {
                      "observe": "head",
                      "value": "21 °C",
                      "by": "mk",
                      "at": "2026-03-04T10:12:00Z"
                    },
                    {
                      "observe": "room",
                      "value": "21 °C",
                      "by": "mk",
                      "at": "2026-03-04T10:12:00Z"
                    },
                    {
                      "observe": "lash",
                      "trials": [
                        {
                          "leaf": "0.05 mm",
                          "result": "passes"
                        },
                        {
                          "leaf": "0.08 mm",
                          "result": "refuses"
                        }
                      ],
                      "note": "stem wiped",
                      "by": "mk",
                      "at": "2026-03-04T10:12:00Z"
                    },
                    {
                      "observe": "thread",
                      "cannot": "the plug is seized",
                      "by": "mk",
                      "at": "2026-03-04T10:12:00Z"
                    }
                  ]
                }
                """);
    }

    @Test
    void when_everything_is_known_nothing_is_left_to_ask() {
        Session session = cold();
        for (List<Object> entry : List.<List<Object>>of(
                List.of("lash", trials("passes 0.05 mm", "refuses 0.08 mm")),
                List.of("gear", words("oiled")),
                List.of("thread", yes(true)),
                List.of("rattle", yes(false)),
                List.of("primes", yes(true)))) {
            session.enter((String) entry.get(0), (Given) entry.get(1)).orElseThrow();
        }

        assertThat(session.standing().next()).isEmpty();
        assertThat(session.standing().progress()).isEqualTo(new Progress(8, 0, 0, 0, 0, 0, 1, 0));
        assertThat(session.finish().orElseThrow().report().release()).isEqualTo(Release.READY);
    }

    @Test
    void a_heading_that_no_sheet_can_have_and_a_card_that_does_not_fit_are_refused_at_the_beginning() {
        Basis basis = SmallBench.basis(SmallBench.DECLARATIONS);

        assertThat(said(Session.inMemory(basis, Heading.of(" ", SmallBench.HEADING.date()), SmallBench.MK)))
                .singleElement()
                .asString()
                .contains("LP615");
        assertThat(said(Session.inMemory(
                        basis,
                        SmallBench.HEADING.withEngine(
                                new io.github.leafproof.inspection.record.SheetEngine(null, null, null, "late kam")),
                        SmallBench.MK)))
                .singleElement()
                .asString()
                .contains("LP675");
    }

    @Test
    void a_session_that_was_closed_takes_nothing_any_more() {
        Session session = SmallBench.session();
        session.close();

        assertThatIllegalStateException().isThrownBy(() -> session.enter("marks", words("Q15-4")));
    }
}
