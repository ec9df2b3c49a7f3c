package io.github.leafproof.dsl.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.history.Followed.Adjusting;
import io.github.leafproof.dsl.history.Followed.Change;
import io.github.leafproof.dsl.history.Followed.NextCheck;
import io.github.leafproof.dsl.history.Followed.Pace;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** How values change with running, and when to look again. */
class RatesTest {
    private static final double HOUR = 3600;
    private static final double MM_PER_HOUR = 1e-3 / HOUR;

    /** Lash read with a depth gauge of u 0.003 mm that is not off by the same each time, as in the trade's worked example. */
    private static final Workshop READ = Workshop.of("""
            gauge first : reading of length
            gauge second : reading of length
            gauge third : reading of length
            observe which : one of first, second, third ask "Which gauge?"
            observe by_first : length with first when which is first ask "Lash"
            observe by_second : length with second when which is second ask "Lash"
            observe by_third : length with third when which is third ask "Lash"
            let lash = choose which { first: by_first   second: by_second   third: by_third }
            check inside "Lash" critical { require lash between engine.lash_min and engine.lash_max }
            """).tray("{ \"name\": \"clicks\", \"kind\": \"counter\" }", """
                    { "name": "first", "kind": "reading", "of": "length", "u": "0.003 mm" },
                    { "name": "second", "kind": "reading", "of": "length", "u": "0.003 mm" },
                    { "name": "third", "kind": "reading", "of": "length", "u": "0.003 mm" }
                    """);

    private static Workshop read(String gauge, String lash, String date, String running) {
        return Life.day(READ, date, running)
                .observe("which", "\"" + gauge + "\"")
                .observe("by_" + gauge, "\"" + lash + "\"");
    }

    private static final Workshop FELT = Workshop.of("""
            gauge leaves : leaf set
            gauge infrared : reading of temperature
            observe head : temperature with infrared ask "Head"
            check cold "Cold" major gate { require head at most 30 degC }
            observe lash : gap with leaves ask "Offer the leaves"
            check inside "Lash" critical { after cold require lash between 0.03 mm and 0.12 mm }
            """);

    private static Workshop felt(String date, String running, String passes, String refuses) {
        return Life.day(FELT, date, running)
                .observe("head", "\"21 °C\"")
                .feel("lash", "passes " + passes, "refuses " + refuses);
    }

    private static double rate(Change change) {
        return Objects.requireNonNull(change.rate()).value();
    }

    private static NextCheck next(Life life, String name) {
        return Objects.requireNonNull(life.value(name).nextCheck());
    }

    /** Common practice: 0.06 to 0.075 mm in 0.7 h, limit 0.10 mm, u 0.003 mm: 0.0214 mm an hour, and about 1.0 h left. */
    @Test
    void the_next_lash_check_is_when_the_trade_works_it_out() {
        Life life = Life.of(
                read("first", "0.06 mm", "2025-03-03", "0 h"), read("second", "0.075 mm", "2025-03-05", "0.7 h"));

        Change change = life.value("lash").changes().get(0);
        NextCheck next = next(life, "lash");

        assertThat(rate(change)).isCloseTo(0.0214 * MM_PER_HOUR, within(0.0001 * MM_PER_HOUR));
        assertThat(change.told()).isTrue();
        assertThat(next.state()).isEqualTo(NextCheck.State.DUE);
        assertThat(Objects.requireNonNull(next.left()).value() / HOUR).isCloseTo(1.0, within(0.05));
        // The bound that 95 % takes is worked out in OutlookTest.
        assertThat(next.sure() / HOUR).isCloseTo(0.667, within(0.001));
    }

    @Test
    void what_one_gauge_is_off_cancels_in_a_change_and_what_two_are_off_does_not() {
        Life one =
                Life.of(read("first", "0.06 mm", "2025-03-03", "0 h"), read("first", "0.07 mm", "2025-03-05", "1 h"));
        Life two =
                Life.of(read("first", "0.06 mm", "2025-03-03", "0 h"), read("second", "0.07 mm", "2025-03-05", "1 h"));

        assertThat(u(one)).isZero();
        assertThat(u(two)).isCloseTo(Math.sqrt(2) * 3e-6, within(1e-12));
    }

    @Test
    void the_same_gauge_measured_again_is_another_gauge() {
        Workshop before = read("first", "0.06 mm", "2025-03-03", "0 h");
        Workshop after = read("first", "0.07 mm", "2025-03-05", "1 h").tray("Bench one", "Bench one, a year on");

        assertThat(u(Life.of(before, after))).isCloseTo(Math.sqrt(2) * 3e-6, within(1e-12));
    }

    private static double u(Life life) {
        return life.value("lash").changes().get(0).amount().standardUncertainty();
    }

    @Test
    void where_a_gap_lies_between_its_leaves_is_open_anew_at_each_look() {
        Life life = Life.of(
                felt("2025-03-03", "0 h", "0.05 mm", "0.08 mm"), felt("2025-03-05", "1 h", "0.05 mm", "0.08 mm"));

        Change change = life.value("lash").changes().get(0);

        // Leaves 0.050 and 0.081 mm: half of that as a rectangle, twice; the leaves' own u cancels.
        assertThat(change.amount().value()).isZero();
        assertThat(change.amount().standardUncertainty()).isCloseTo(Math.sqrt(2.0 / 3) * 15.5e-6, within(1e-9));
        assertThat(change.told()).isFalse();
    }

    @Test
    void an_adjustment_is_no_wear() {
        Workshop adjusted = felt("2025-03-03", "0 h", "0.10 mm", "0.15 mm")
                .enter("{ \"adjust\": \"lash\", \"turn\": \"50 deg\" }")
                .feel("lash", "passes 0.04 mm", "refuses 0.05 mm");
        Life life = Life.of(adjusted, felt("2025-03-05", "2 h", "0.05 mm", "0.08 mm"));

        Change change = life.value("lash").changes().get(0);

        assertThat(change.amount().value()).isCloseTo((65.5 - 45) * 1e-6, within(1e-12));
        assertThat(rate(change)).isCloseTo(0.01025 * MM_PER_HOUR, within(1e-6 * MM_PER_HOUR));
    }

    /** By hand: halves of 40 and 10 µm as rectangles, and four leaves of 1 µm by halves: √((20² + 5²)/3 + 1) µm. */
    @Test
    void where_a_gap_lies_between_its_leaves_is_open_anew_after_an_adjustment() {
        Workshop adjusted = felt("2025-03-03", "0 h", "0.10 mm", "0.15 mm")
                .enter("{ \"adjust\": \"lash\", \"turn\": \"50 deg\" }")
                .feel("lash", "passes 0.04 mm", "refuses 0.05 mm");
        Followed value = Life.of(adjusted, felt("2025-03-05", "2 h", "0.05 mm", "0.08 mm"))
                .value("lash");

        assertThat(value.adjustings().get(0).moved().standardUncertainty()).isCloseTo(11.94e-6, within(0.01e-6));
    }

    /** By hand: an eighth of a turn on a pitch of 0.45 mm is 0.05625 mm. */
    @Test
    void what_a_turn_of_the_screw_did_tells_its_pitch_by_its_lever() {
        Workshop turned = read("first", "0.121 mm", "2025-03-03", "0 h")
                .enter("{ \"adjust\": \"by_first\", \"turn\": \"45 deg\" }")
                .observe("by_first", "\"0.06475 mm\"");
        Workshop twice = turned.enter("{ \"adjust\": \"by_first\", \"turn\": \"10 deg\" }")
                .observe("by_first", "\"0.05 mm\"");
        Workshop later = read("first", "0.06 mm", "2025-03-05", "1 h");

        Adjusting once = Life.of(turned, later).value("by_first").adjustings().get(0);
        Adjusting more = Life.of(twice, later).value("by_first").adjustings().get(0);

        assertThat(once.moved().value()).isCloseTo(-56.25e-6, within(1e-12));
        assertThat(Objects.requireNonNull(once.perTurn()).value())
                .isCloseTo(Quantity.parse("0.45 mm per turn").base(), within(1e-12));
        assertThat(more.moved().value()).isCloseTo(-71e-6, within(1e-12));
        assertThat(more.perTurn()).isNull();
    }

    @Test
    void lash_that_was_adjusted_and_not_measured_again_has_no_change_and_no_next_look() {
        Workshop adjusted = felt("2025-03-03", "0 h", "0.05 mm", "0.08 mm").enter("{ \"adjust\": \"lash\" }");
        Followed value = Life.of(adjusted, felt("2025-03-05", "2 h", "0.05 mm", "0.08 mm"))
                .value("lash");

        assertThat(value.changes()).isEmpty();
        assertThat(value.nextCheck()).isNull();
    }

    @Test
    void lash_read_on_a_warm_engine_is_no_link_in_the_chain() {
        Workshop warm = Life.day(FELT, "2025-03-04", "1 h")
                .observe("head", "\"60 °C\"")
                .feel("lash", "passes 0.10 mm", "refuses 0.15 mm");
        Followed value = Life.of(
                        felt("2025-03-03", "0 h", "0.05 mm", "0.08 mm"),
                        warm,
                        felt("2025-03-05", "2 h", "0.05 mm", "0.08 mm"))
                .value("lash");

        assertThat(value.sights().get(1).asLeft().unfit()).isEqualTo("not established: cold was not shown");
        assertThat(value.changes()).extracting(Change::from, Change::to).containsExactly(tuple(1, 3));
    }

    @Test
    void trials_that_contradict_each_other_are_no_link_either() {
        Workshop odd = Life.day(FELT, "2025-03-04", "1 h")
                .observe("head", "\"21 °C\"")
                .feel("lash", "passes 0.15 mm", "refuses 0.05 mm");
        Followed value =
                Life.of(felt("2025-03-03", "0 h", "0.05 mm", "0.08 mm"), odd).value("lash");

        assertThat(value.sights().get(1).asLeft().unfit()).isEqualTo("its trials contradict each other");
        assertThat(value.changes()).isEmpty();
    }

    @Test
    void a_rate_that_falls_is_bedding_in_and_one_that_rises_is_a_finding() {
        Life falls = Life.of(
                read("first", "0.04 mm", "2025-03-03", "0 h"),
                read("second", "0.06 mm", "2025-03-05", "0.5 h"),
                read("third", "0.065 mm", "2025-03-07", "2.5 h"));
        Life rises = Life.of(
                read("first", "0.04 mm", "2025-03-03", "0 h"),
                read("second", "0.045 mm", "2025-03-05", "2 h"),
                read("third", "0.065 mm", "2025-03-07", "2.5 h"));
        Life cannotBeTold = Life.of(
                read("first", "0.04 mm", "2025-03-03", "0 h"),
                read("second", "0.045 mm", "2025-03-05", "1 h"),
                read("third", "0.051 mm", "2025-03-07", "2 h"));

        assertThat(falls.value("lash").pace()).isEqualTo(Pace.SLOWER);
        assertThat(falls.history().state()).isEqualTo(History.State.CLOSED);
        assertThat(rises.value("lash").pace()).isEqualTo(Pace.FASTER);
        assertThat(rises.history().state()).isEqualTo(History.State.REMAINS);
        assertThat(cannotBeTold.value("lash").pace()).isEqualTo(Pace.NOT_TOLD);
    }

    @Test
    void where_the_rate_is_not_told_from_none_the_next_look_is_open_and_still_has_a_bound() {
        NextCheck next = next(
                Life.of(
                        read("first", "0.06 mm", "2025-03-03", "0 h"),
                        read("second", "0.062 mm", "2025-03-05", "0.7 h")),
                "lash");

        assertThat(next.state()).isEqualTo(NextCheck.State.OPEN);
        assertThat(next.left()).isNull();
        assertThat(next.sure()).isBetween(0.5 * HOUR, 10 * HOUR);
    }

    @Test
    void what_may_be_beyond_its_limit_today_is_due_now() {
        Life life = Life.of(
                read("first", "0.06 mm", "2025-03-03", "0 h"), read("second", "0.098 mm", "2025-03-05", "0.7 h"));

        assertThat(next(life, "lash").state()).isEqualTo(NextCheck.State.DUE_NOW);
        assertThat(life.history().state()).isEqualTo(History.State.TO_BE_LOOKED_AT);
    }

    @Test
    void lash_that_closes_goes_to_its_lower_limit() {
        NextCheck next = next(
                Life.of(read("first", "0.09 mm", "2025-03-03", "0 h"), read("second", "0.05 mm", "2025-03-05", "1 h")),
                "lash");

        assertThat(next.limit()).isEqualTo("0.03 mm (engine.lash_min)");
        assertThat(next.state()).isEqualTo(NextCheck.State.DUE);
        assertThat(Objects.requireNonNull(next.left()).value() / HOUR).isCloseTo((20 - 3) / 40.0, within(1e-9));
    }

    @Test
    void what_surely_moves_away_from_its_only_limit_is_not_due() {
        Workshop bench = Workshop.of("""
                gauge depth : reading of length
                observe play : length with depth ask "Play"
                check small "Play" minor { require play at most 1 mm }
                """);
        NextCheck next = next(
                Life.of(
                        Life.day(bench, "2025-03-03", "0 h").observe("play", "\"0.8 mm\""),
                        Life.day(bench, "2025-03-05", "1 h").observe("play", "\"0.5 mm\"")),
                "play");

        assertThat(next.state()).isEqualTo(NextCheck.State.MOVES_AWAY);
    }

    @Test
    void beyond_the_limit_aimed_for_the_tolerated_one_counts() {
        Workshop bench = Workshop.of("""
                gauge depth : reading of length
                observe play : length with depth ask "Play"
                check small "Play" minor { require play at most 1 mm tolerate to 2 mm }
                """);
        NextCheck next = next(
                Life.of(
                        Life.day(bench, "2025-03-03", "0 h").observe("play", "\"0.8 mm\""),
                        Life.day(bench, "2025-03-05", "1 h").observe("play", "\"1.2 mm\"")),
                "play");

        assertThat(next.limit()).isEqualTo("2 mm, which is tolerated");
        assertThat(Objects.requireNonNull(next.left()).value() / HOUR).isCloseTo((0.8 - 0.01) / 0.4, within(1e-9));
    }

    @Test
    void without_running_times_a_change_is_told_and_no_rate() {
        Workshop first =
                read("first", "0.06 mm", "2025-03-03", "0 h").heading("\"procedure\": \"trial\", \"revision\": 2");
        Life life = Life.of(first, read("second", "0.075 mm", "2025-03-05", "0.7 h"));

        assertThat(life.value("lash").changes().get(0).amount().value()).isCloseTo(15e-6, within(1e-12));
        assertThat(life.value("lash").changes().get(0).rate()).isNull();
        assertThat(life.value("lash").nextCheck()).isNull();
        assertThat(life.history().notes())
                .anyMatch(note -> note.startsWith("look 1 does not say how long the engine had run by then"));
    }

    @Test
    void an_engine_that_only_stood_has_changes_and_no_rate() {
        Followed value = Life.of(
                        read("first", "0.06 mm", "2025-03-03", "1 h"), read("second", "0.07 mm", "2026-03-05", "1 h"))
                .value("lash");

        assertThat(Objects.requireNonNull(value.changes().get(0).hours()).value())
                .isZero();
        assertThat(value.changes().get(0).rate()).isNull();
    }

    /** Readings of three runs and three more: 10, 20 … 60 rpm on a straight line (by hand: 10 rpm a run). */
    @Test
    void peak_speeds_of_all_runs_lie_on_one_line() {
        Workshop bench = Workshop.of("""
                observe peak : series of rotational speed hazard propeller, hot, fuel, eyes ask "Peaks"
                check known "Known" minor { require count(peak) at least 3 }
                """);
        Followed value = Life.of(
                        Life.day(bench, "2025-03-03", "0.5 h")
                                .enter(
                                        "{ \"observe\": \"peak\", \"series\": [\"9010 rpm\", \"9020 rpm\", \"9030 rpm\"] }"),
                        Life.day(bench, "2025-03-05", "1 h")
                                .enter(
                                        "{ \"observe\": \"peak\", \"series\": [\"9040 rpm\", \"9050 rpm\", \"9060 rpm\"] }"))
                .value("peak");

        Estimate perReading = Objects.requireNonNull(value.perReading());
        assertThat(perReading.value()).isCloseTo(Quantity.parse("10 rpm").base(), within(1e-9));
        assertThat(value.changes().get(0).amount().value())
                .isCloseTo(Quantity.parse("30 rpm").base(), within(1e-9));
    }

    /** Three looks on a straight line with nothing adjusted: 0.01 mm an hour (by hand). */
    @Test
    void three_looks_have_a_line_through_them() {
        Followed value = Life.of(
                        read("first", "0.04 mm", "2025-03-03", "0 h"),
                        read("second", "0.05 mm", "2025-03-05", "1 h"),
                        read("third", "0.06 mm", "2025-03-07", "2 h"))
                .value("lash");

        Estimate slope = Objects.requireNonNull(value.slope());
        assertThat(slope.value()).isCloseTo(0.01 * MM_PER_HOUR, within(1e-9 * MM_PER_HOUR));
        assertThat(slope.standardUncertainty())
                .isCloseTo(0.003 / Math.sqrt(2) * MM_PER_HOUR, within(1e-9 * MM_PER_HOUR));
    }

    @Test
    void an_engine_that_ran_while_its_sheet_was_filled_in_had_run_so_long_by_each_entry() {
        Workshop ran = Life.day(FELT, "2025-03-03", "0 h")
                .observe("head", "\"21 °C\"")
                .enter("{ \"observe\": \"lash\", \"trials\": [ { \"leaf\": \"0.05 mm\", \"result\": \"passes\" },"
                        + " { \"leaf\": \"0.08 mm\", \"result\": \"refuses\" } ], \"running_time\": \"0.5 h\" }");
        Change change = Life.of(ran, felt("2025-03-05", "1.5 h", "0.08 mm", "0.10 mm"))
                .value("lash")
                .changes()
                .get(0);

        assertThat(Objects.requireNonNull(change.hours()).value()).isEqualTo(HOUR);
    }

    /** Forty values, each computed twice from the one before: a walk along every path would not end. */
    @Test
    void what_is_computed_from_much_is_followed_as_quickly() {
        StringBuilder chain = new StringBuilder("observe a0 : length ask \"A\"\nlet b0 = a0 + 1 mm\n");
        for (int i = 1; i < 40; i++) {
            chain.append("let x")
                    .append(i)
                    .append(" = ")
                    .append(i == 1 ? "a0" : "x" + (i - 1))
                    .append(" + ");
            chain.append(i == 1 ? "b0" : "y" + (i - 1)).append('\n');
            chain.append("let y").append(i).append(" = x").append(i).append(" - ");
            chain.append(i == 1 ? "b0" : "y" + (i - 1)).append('\n');
        }
        Workshop bench =
                Workshop.of(chain + "check small \"Small\" minor { require x39 at most 1 km and y39 at most 1 km }\n");
        Followed value = Life.of(
                        Life.day(bench, "2025-03-03", "0 h").observe("a0", "\"1 mm\""),
                        Life.day(bench, "2025-03-05", "1 h").observe("a0", "\"2 mm\""))
                .value("x39");

        assertThat(value.changes()).hasSize(1);
        assertThat(value.nextCheck()).isNotNull();
    }

    @Test
    void what_two_procedures_call_alike_and_is_not_is_not_compared() {
        Workshop length = Workshop.of("""
                observe size : length ask "Size"
                check small "Small" minor { require size at most 1 mm }
                """);
        Workshop angle = Workshop.of("""
                observe size : angle ask "Size"
                check small "Small" minor { require size at most 1 turn }
                """);
        Followed value = Life.of(
                        Life.day(length, "2025-03-03", "0 h").observe("size", "\"0.5 mm\""),
                        Life.day(angle, "2025-03-05", "1 h").observe("size", "\"90 deg\""))
                .value("size");

        assertThat(value.sights()).hasSize(2);
        assertThat(value.changes()).isEmpty();
        assertThat(value.nextCheck()).isNull();
    }
}
