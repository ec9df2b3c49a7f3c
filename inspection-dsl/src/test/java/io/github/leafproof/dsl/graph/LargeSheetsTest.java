package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.CONTRADICTED;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.inspection.record.Problem;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A sheet may come from a stranger, too: what nobody enters by hand is refused, and what somebody might is judged. */
class LargeSheetsTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            observe lash : gap with leaves
            observe flips : series of count
            observe found : items
            check gap "Gap" { require lash at most 0.2 mm }
            check few "Few" { require mean(flips) at most 8 and count(flips) at least 2 }
            check whole "Whole" { require found has all of engine.box }
            """);

    private static Workshop tried(int times, Workshop bench) {
        String[] trials = Collections.nCopies(times, "refuses 0.15 mm").toArray(String[]::new);
        return bench.feel("lash", trials);
    }

    private static Workshop read(int readings, Workshop bench) {
        return bench.enter("{ \"observe\": \"flips\", \"series\": "
                + IntStream.range(0, readings).map(i -> i % 7).boxed().toList() + " }");
    }

    private static Workshop found(int things) {
        List<String> items =
                IntStream.range(0, things).mapToObj(i -> "\"thing " + i + "\"").toList();
        return BENCH.enter("{ \"observe\": \"found\", \"items\": " + items + " }");
    }

    private static List<String> codes(Workshop bench) {
        return bench.evidence().problems().stream().map(Problem::code).toList();
    }

    @Test
    void a_gap_may_be_tried_two_hundred_times_however_many_entries_that_takes() {
        assertThat(tried(100, tried(100, BENCH)).outcome("gap")).isEqualTo(PASSES);
        assertThat(codes(tried(101, tried(100, BENCH)))).containsExactly("LP667");
    }

    @Test
    void what_was_tried_before_an_adjustment_counts_by_itself() {
        Workshop adjusted = tried(200, BENCH).enter("{ \"adjust\": \"lash\" }");

        assertThat(codes(tried(200, adjusted))).isEmpty();
        assertThat(codes(tried(201, adjusted))).containsExactly("LP667");
        assertThat(codes(tried(1, tried(200, BENCH)).enter("{ \"adjust\": \"lash\" }")))
                .containsExactly("LP667");
    }

    @Test
    void the_one_leaf_that_contradicts_is_found_among_two_hundred_trials() {
        assertThat(tried(199, BENCH).feel("lash", "passes 0.10 mm").outcome("gap"))
                .isEqualTo(PASSES);
        assertThat(tried(198, BENCH).feel("lash", "passes 0.15 mm + 0.10 mm").outcome("gap"))
                .isEqualTo(CONTRADICTED);
    }

    @Test
    void ten_thousand_readings_are_taken_together_and_no_more() {
        assertThat(read(4_000, read(6_000, BENCH)).outcome("few")).isEqualTo(PASSES);
        assertThat(codes(read(4_001, read(6_000, BENCH)))).containsExactly("LP667");
    }

    @Test
    void a_thousand_things_are_found_and_no_more() {
        assertThat(codes(found(1_000))).isEmpty();
        assertThat(codes(found(1_001))).containsExactly("LP667");
    }

    @Test
    void of_very_many_entries_that_nobody_asked_for_the_first_are_told_and_that_there_are_more() {
        List<String> entries = IntStream.range(0, 20_000)
                .mapToObj(i -> "{ \"observe\": \"lish" + i + "\", \"value\": 3 }")
                .toList();

        List<String> codes = codes(BENCH.entries(entries));

        assertThat(codes).hasSize(501).endsWith("LP676", "LP609");
        assertThat(codes.subList(0, 500)).containsOnly("LP676");
    }
}
