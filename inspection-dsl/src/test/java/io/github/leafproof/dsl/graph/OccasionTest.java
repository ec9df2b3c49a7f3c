package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import org.junit.jupiter.api.Test;

/** When a piece of advice is given. */
class OccasionTest {

    @Test
    void high_and_low_are_fails_on_that_side_and_nothing_else() {
        assertThat(Occasion.HIGH.is(Outcome.FAILS, Side.HIGH)).isTrue();
        assertThat(Occasion.HIGH.is(Outcome.FAILS, Side.LOW)).isFalse();
        assertThat(Occasion.HIGH.is(Outcome.TOLERATED, Side.HIGH)).isFalse();
        assertThat(Occasion.LOW.is(Outcome.FAILS, Side.LOW)).isTrue();
        assertThat(Occasion.LOW.is(Outcome.FAILS, Side.NONE)).isFalse();
        assertThat(Occasion.LOW.is(Outcome.OPEN, Side.LOW)).isFalse();
    }

    @Test
    void a_fail_on_either_side_is_a_fail() {
        for (Side side : Side.values()) {
            assertThat(Occasion.FAILS.is(Outcome.FAILS, side)).isTrue();
            assertThat(Occasion.FAILS.is(Outcome.OPEN, side)).isFalse();
        }
    }

    @Test
    void every_other_occasion_is_the_outcome_of_its_name() {
        for (Outcome outcome : Outcome.values()) {
            assertThat(Occasion.OPEN.is(outcome, Side.NONE)).isEqualTo(outcome == Outcome.OPEN);
            assertThat(Occasion.BLOCKED.is(outcome, Side.NONE)).isEqualTo(outcome == Outcome.BLOCKED);
        }
    }

    @Test
    void an_occasion_is_found_by_its_word() {
        for (Occasion occasion : Occasion.values()) {
            assertThat(Occasion.named(occasion.word())).hasValue(occasion);
        }
        assertThat(Occasion.named("fails")).hasValue(Occasion.FAILS);
        assertThat(Occasion.named("FAILS")).isEmpty();
        assertThat(Occasion.named("sometimes")).isEmpty();
    }
}
