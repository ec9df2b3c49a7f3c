package io.github.leafproof.inspection.verdict;

import static io.github.leafproof.inspection.verdict.Outcome.BLOCKED;
import static io.github.leafproof.inspection.verdict.Outcome.CONTRADICTED;
import static io.github.leafproof.inspection.verdict.Outcome.FAILS;
import static io.github.leafproof.inspection.verdict.Outcome.NOT_APPLICABLE;
import static io.github.leafproof.inspection.verdict.Outcome.OPEN;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.TOLERATED;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static io.github.leafproof.inspection.verdict.Severity.CRITICAL;
import static io.github.leafproof.inspection.verdict.Severity.MAJOR;
import static io.github.leafproof.inspection.verdict.Severity.MINOR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.inspection.verdict.Condition.Always;
import io.github.leafproof.inspection.verdict.Condition.AnyCheck;
import io.github.leafproof.inspection.verdict.Condition.Both;
import io.github.leafproof.inspection.verdict.Condition.Either;
import io.github.leafproof.inspection.verdict.Condition.Not;
import io.github.leafproof.inspection.verdict.Condition.OneCheck;
import io.github.leafproof.inspection.verdict.ReleaseRule.Clause;
import io.github.leafproof.inspection.verdict.ReleaseRule.Decision;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a bench does with an engine (common practice of the trade). */
class ReleaseRuleTest {
    private static CheckOutcome check(String name, Severity severity, Outcome outcome) {
        return new CheckOutcome(name, severity, outcome);
    }

    private static Decision usual(CheckOutcome... outcomes) {
        return ReleaseRule.usual().decide(Tally.of(List.of(outcomes)));
    }

    @Test
    void an_engine_that_fails_a_critical_check_is_rejected() {
        assertThat(usual(
                        check("box", MINOR, FAILS),
                        check("prime", CRITICAL, FAILS),
                        check("lash", CRITICAL, FAILS),
                        check("plug", MAJOR, UNTESTED)))
                .isEqualTo(new Decision(Release.REJECT, List.of("prime", "lash")));
    }

    @Test
    void an_engine_with_anything_failed_open_or_contradicted_is_held() {
        for (Outcome outcome : List.of(FAILS, OPEN, CONTRADICTED)) {
            assertThat(usual(check("cold", MAJOR, PASSES), check("box", MINOR, outcome), check("x", MAJOR, BLOCKED)))
                    .isEqualTo(new Decision(Release.HOLD, List.of("box")));
        }
        assertThat(usual(check("lash", CRITICAL, OPEN)).release()).isEqualTo(Release.HOLD);
    }

    @Test
    void an_engine_not_wholly_looked_at_is_unfinished() {
        assertThat(usual(check("cold", MAJOR, UNTESTED), check("lash", CRITICAL, BLOCKED), check("box", MINOR, PASSES)))
                .isEqualTo(new Decision(Release.UNFINISHED, List.of("cold", "lash")));
    }

    @Test
    void an_engine_that_passes_all_that_concerns_it_is_ready() {
        assertThat(usual(
                        check("lash", CRITICAL, PASSES),
                        check("needle", MAJOR, TOLERATED),
                        check("choke", MAJOR, NOT_APPLICABLE)))
                .isEqualTo(new Decision(Release.READY, List.of()));
    }

    @Test
    void an_engine_nobody_has_checked_is_unfinished_and_never_ready() {
        assertThat(usual()).isEqualTo(new Decision(Release.UNFINISHED, List.of()));
        assertThat(new ReleaseRule(List.of(new Clause(Release.READY, new Always())))
                        .decide(Tally.of(List.of()))
                        .release())
                .isEqualTo(Release.UNFINISHED);
    }

    @Test
    void a_shop_may_write_a_rule_of_its_own() {
        Condition primeFails = new OneCheck("prime", Set.of(FAILS, OPEN));
        Condition anyMinor = new AnyCheck(Set.of(MINOR), Set.of(FAILS));
        Condition boxPasses = new OneCheck("box", Set.of(PASSES));
        ReleaseRule rule = new ReleaseRule(List.of(
                new Clause(Release.REJECT, new Both(List.of(primeFails, anyMinor))),
                new Clause(Release.HOLD, new Either(List.of(primeFails, anyMinor))),
                new Clause(Release.UNFINISHED, new Not(boxPasses)),
                new Clause(Release.READY, new Always())));
        CheckOutcome prime = check("prime", CRITICAL, FAILS);
        CheckOutcome primed = check("prime", CRITICAL, PASSES);
        CheckOutcome box = check("box", MINOR, FAILS);
        CheckOutcome whole = check("box", MINOR, PASSES);
        assertThat(rule.decide(Tally.of(List.of(box, prime))))
                .isEqualTo(new Decision(Release.REJECT, List.of("box", "prime")));
        assertThat(rule.decide(Tally.of(List.of(whole, prime))))
                .isEqualTo(new Decision(Release.HOLD, List.of("prime")));
        assertThat(rule.decide(Tally.of(List.of(box, primed)))).isEqualTo(new Decision(Release.HOLD, List.of("box")));
        assertThat(rule.decide(Tally.of(List.of(primed)))).isEqualTo(new Decision(Release.UNFINISHED, List.of()));
        assertThat(rule.decide(Tally.of(List.of(primed, whole)))).isEqualTo(new Decision(Release.READY, List.of()));
    }

    @Test
    void a_condition_that_does_not_hold_names_nobody() {
        Tally outcomes = Tally.of(List.of(check("prime", CRITICAL, PASSES), check("box", MINOR, FAILS)));
        Condition holds = new OneCheck("box", Set.of(FAILS));
        Condition doesNot = new OneCheck("prime", Set.of(FAILS));
        assertThat(doesNot.because(outcomes)).isEmpty();
        assertThat(new Both(List.of(holds, doesNot)).because(outcomes)).isEmpty();
        assertThat(new Not(doesNot).because(outcomes)).isEmpty();
        assertThat(new Always().because(outcomes)).isEmpty();
    }

    @Test
    void a_rule_ends_with_what_applies_otherwise() {
        Clause otherwise = new Clause(Release.READY, new Always());
        Clause reject = new Clause(Release.REJECT, new OneCheck("prime", Set.of(FAILS)));
        for (List<Clause> wrong : List.of(
                List.<Clause>of(), List.of(reject), List.of(otherwise, reject), List.of(otherwise, otherwise))) {
            assertThatThrownBy(() -> new ReleaseRule(wrong))
                    .hasMessage("a release rule ends with the one clause that applies otherwise");
        }
    }
}
