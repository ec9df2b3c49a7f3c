package io.github.leafproof.dsl.history;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.history.Finding.Standing;
import io.github.leafproof.inspection.verdict.Outcome;
import org.junit.jupiter.api.Test;

/** One fault put right is not the job closed. */
class FindingsOverTimeTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            observe lash : gap with leaves optional ask "Offer the leaves"
            observe pulls : yes/no optional ask "Does it pull?"
            check inside "Lash" critical { require lash between 0.03 mm and 0.10 mm }
            check power "It makes its power" major { require pulls }
            """);

    private static final String ADJUSTED = "{ \"adjust\": \"lash\", \"turn\": \"50 deg\" }";

    private static Workshop day(int day) {
        return BENCH.on("2025-03-0" + day);
    }

    private static Workshop wide(Workshop sheet) {
        return sheet.feel("lash", "passes 0.15 mm");
    }

    private static Workshop good(Workshop sheet) {
        return sheet.feel("lash", "passes 0.05 mm", "refuses 0.08 mm");
    }

    @Test
    void nothing_found_is_nothing_left() {
        History history =
                Life.of(good(day(1)).observe("pulls", "true"), good(day(2))).history();

        assertThat(history.findings()).isEmpty();
        assertThat(history.state()).isEqualTo(History.State.CLOSED);
    }

    @Test
    void what_a_later_look_shows_to_be_right_is_closed() {
        Life life = Life.of(wide(day(1)), good(day(2)));

        assertThat(life.finding("inside").standing()).isEqualTo(Standing.CLOSED);
        assertThat(life.history().state()).isEqualTo(History.State.CLOSED);
    }

    @Test
    void what_was_put_right_the_same_day_has_to_show_that_it_lasts() {
        Life life = Life.of(good(wide(day(1)).enter(ADJUSTED)));

        assertThat(life.finding("inside").standing()).isEqualTo(Standing.PUT_RIGHT);
        assertThat(life.finding("inside").seen().get(0).asFound())
                .isEqualTo(new Finding.Result(Outcome.FAILS, "at least 0.1500 mm"));
        assertThat(life.finding("inside").seen().get(0).adjusted()).containsExactly("lash by 50 deg");
        assertThat(life.history().state()).isEqualTo(History.State.CLOSED);
    }

    @Test
    void what_is_there_after_its_remedy_remains() {
        Life sameDay = Life.of(wide(wide(day(1)).enter(ADJUSTED)));
        Life later = Life.of(good(wide(day(1)).enter(ADJUSTED)), wide(day(2)));

        assertThat(sameDay.finding("inside").standing()).isEqualTo(Standing.REMAINS);
        assertThat(later.finding("inside").standing()).isEqualTo(Standing.REMAINS);
        assertThat(later.finding("inside").remedied()).isEqualTo(1);
        assertThat(later.history().state()).isEqualTo(History.State.REMAINS);
    }

    @Test
    void what_is_put_right_again_and_again_comes_back_until_a_look_shows_that_it_does_not() {
        Workshop first = good(wide(day(1)).enter(ADJUSTED));
        Workshop again = good(wide(day(2)).enter(ADJUSTED));

        assertThat(Life.of(first, again).finding("inside").standing()).isEqualTo(Standing.COMES_BACK);
        assertThat(Life.of(first, again).history().state()).isEqualTo(History.State.TO_BE_LOOKED_AT);
        assertThat(Life.of(first, again, good(day(3))).finding("inside").standing())
                .isEqualTo(Standing.CLOSED);
    }

    @Test
    void what_nobody_did_anything_about_stands() {
        Life life = Life.of(wide(day(1)), wide(day(2)));

        assertThat(life.finding("inside").standing()).isEqualTo(Standing.STANDS);
        assertThat(life.finding("inside").first()).isEqualTo(1);
        assertThat(life.finding("inside").lastLook()).isEqualTo(2);
        assertThat(life.history().state()).isEqualTo(History.State.REMAINS);
    }

    @Test
    void what_nobody_went_back_to_is_pointed_at() {
        Life life = Life.of(day(1).observe("pulls", "false"), good(day(2)));

        assertThat(life.finding("power").standing()).isEqualTo(Standing.NOT_LOOKED_AT_AGAIN);
        assertThat(life.history().state()).isEqualTo(History.State.TO_BE_LOOKED_AT);
    }

    @Test
    void what_was_adjusted_and_not_measured_again_is_pointed_at_even_if_it_was_right_before() {
        Life wrong = Life.of(wide(day(1)).enter(ADJUSTED));
        Life right = Life.of(good(day(1)).enter(ADJUSTED));

        assertThat(wrong.finding("inside").standing()).isEqualTo(Standing.NOT_LOOKED_AT_AGAIN);
        assertThat(wrong.finding("inside").adjustedSince()).isTrue();
        assertThat(right.finding("inside").standing()).isEqualTo(Standing.NOT_LOOKED_AT_AGAIN);
    }

    /** Common practice: an engine lacked power, its lash was far too wide, and setting it did not bring the power back. */
    @Test
    void what_is_left_when_the_fault_beside_it_is_mended_had_another_cause() {
        Life life = Life.of(wide(day(1)).observe("pulls", "false"), good(day(2)).observe("pulls", "false"));

        assertThat(life.finding("inside").standing()).isEqualTo(Standing.CLOSED);
        assertThat(life.finding("power").mended()).containsExactly("Lash");
    }

    @Test
    void of_many_faults_mended_beside_it_ten_are_named() {
        StringBuilder many = new StringBuilder("""
                observe pulls : yes/no ask "Pulls?"
                check power "Power" major { require pulls }
                """);
        for (int i = 0; i < 12; i++) {
            many.append("observe a").append(i).append(" : yes/no ask \"A?\"\n");
            many.append("check c")
                    .append(i)
                    .append(" \"C")
                    .append(i)
                    .append("\" minor { require a")
                    .append(i)
                    .append(" }\n");
        }
        Workshop first = Workshop.of(many.toString()).on("2025-03-01").observe("pulls", "false");
        Workshop second = Workshop.of(many.toString()).on("2025-03-02").observe("pulls", "false");
        for (int i = 0; i < 12; i++) {
            first = first.observe("a" + i, "false");
            second = second.observe("a" + i, "true");
        }

        assertThat(Life.of(first, second).finding("power").mended()).hasSize(10).startsWith("C0", "C1");
    }

    @Test
    void a_question_that_stays_open_waits_and_is_no_fault() {
        Life life = Life.of(day(1).feel("lash", "passes 0.05 mm", "refuses 0.10 mm"));

        assertThat(life.finding("inside").latest()).isEqualTo(Outcome.OPEN);
        assertThat(life.finding("inside").standing()).isEqualTo(Standing.STANDS);
        assertThat(life.history().state()).isEqualTo(History.State.TO_BE_LOOKED_AT);
    }
}
