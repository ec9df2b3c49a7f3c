package io.github.leafproof.dsl.bytecode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.BothJudges;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class QuickJudgeTest {

    /** A bit of everything that is compiled. */
    private static final Workshop BENCH = Workshop.of("""
                    gauge leaves : leaf set
                    gauge infrared : reading of temperature
                    gauge depth : reading of length
                    observe head : temperature with infrared ask "Head"
                    observe room : temperature with infrared ask "Room"
                    let warmer = head - room
                    check cold "Cold" major { require warmer at most 5 K and head at least room - 3 K }
                    check warm "Warm" major gate { require head at least 10 degC }
                    observe lash : gap with leaves ask "Lash"
                    check inside "Inside" critical {
                      after warm
                      require lash between engine.lash_min and engine.lash_max tolerate to engine.lash_tolerated
                    }
                    observe arm : one of metal, plastic ask "Arm"
                    observe recess : length ask "Recess"
                    let datum = choose arm { metal: 0 mm   plastic: 1.0 mm }
                    check at_datum "Datum" major { require recess (u 0.05 mm) within 0.2 mm of datum }
                    observe found : items ask "Box"
                    check full "Box" minor { require found has all of engine.box }
                    observe stroke : length with depth ask "Stroke"
                    let swept = displacement_of(22 mm, stroke)
                    check swept_right "Swept" minor { require swept between 1 cm3 and 90 cm3 }
                    observe made : date ask "Made"
                    check old "Old" minor { require made + 10 d is before 2020-01-01 and made - 2019-01-01 at least 9 d or arm is metal }
                    observe play : series of length ask "Play"
                    check steady "Steady" minor { require spread(play) at most 0.05 mm and count(play) at least 3 }
                    """)
            .observe("head", "\"21 degC\"")
            .observe("room", "\"20 degC\"")
            .feel("lash", "passes 0.05 mm", "refuses 0.10 mm")
            .observe("arm", "\"plastic\"")
            .observe("recess", "\"1.05 mm\"")
            .enter("{ \"observe\": \"found\", \"items\": [\"manual\", \"engine\", \"a rag\", \"glow plug\"] }")
            .observe("stroke", "\"19.5 mm\"")
            .observe("made", "\"2019-05-05\"")
            .enter("{ \"observe\": \"play\", \"series\": [\"0.11 mm\", \"0.12 mm\", \"0.11 mm\"] }");

    @Test
    void everything_that_is_compiled_comes_to_what_the_interpreter_says() {
        CheckGraph graph = BENCH.compiled().graph();
        QuickJudge judge = QuickJudge.of(graph);
        assertThat(judge.compile().compiledChecks()).isEqualTo(graph.checks().size());
        BothJudges.agreeing(judge, BENCH.evidence(graph).orElseThrow(), UnitSystem.METRIC);
    }

    @Test
    void the_first_engines_are_interpreted_and_the_others_judged_by_bytecode_and_nobody_sees_a_difference() {
        CheckGraph graph = BENCH.compiled().graph();
        QuickJudge judge = QuickJudge.of(graph);
        Figures figures = judge.figures(BENCH.evidence(graph).orElseThrow());
        Outcomes outcomes = judge.blank();
        for (int engine = 0; engine < 2 * QuickJudge.HOT; engine++) {
            assertThat(judge.isCompiled()).isEqualTo(engine >= QuickJudge.HOT);
            judge.judge(figures, outcomes);
            assertThat(IntStream.range(0, outcomes.size()).mapToObj(outcomes::of))
                    .containsOnly(Outcome.PASSES, Outcome.TOLERATED);
            assertThat(outcomes.release()).isEqualTo(Release.READY);
        }
    }

    @Test
    void judging_allocates_nothing() {
        CheckGraph graph = BENCH.compiled().graph();
        QuickJudge judge = QuickJudge.compiled(graph);
        Figures figures = judge.figures(BENCH.evidence(graph).orElseThrow());
        Outcomes outcomes = judge.blank();
        judge.judge(figures, outcomes);
        long before = allocated();
        int engines = 10_000;
        for (int engine = 0; engine < engines; engine++) {
            judge.judge(figures, outcomes);
        }
        // Less than a byte for each: what the machine itself allocates in between is not its.
        assertThat(allocated() - before).isLessThan(engines);
    }

    private static long allocated() {
        return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean())
                .getThreadAllocatedBytes(Thread.currentThread().getId());
    }

    @Test
    void no_method_is_too_long_for_the_machine_to_compile_it_further() {
        String checks = IntStream.range(0, 3_000)
                .mapToObj(i -> "observe n" + i + " : length ask \"?\"\n"
                        + "check c" + i + " \"C\" minor " + (i % 100 == 0 ? "gate " : "") + "{ "
                        + (i % 100 == 0 ? "" : "after c" + i / 100 * 100)
                        + " require n" + i + " between 1 mm and 2 mm and not (n" + i + " (u 0.1 mm) at least 1.9 mm) }")
                .collect(Collectors.joining("\n"));
        Workshop bench = Workshop.of(checks).observe("n0", "\"1.2 mm\"").observe("n1", "\"1.95 mm\"");
        CheckGraph graph = bench.compiled().graph();
        QuickJudge judge = QuickJudge.of(graph);
        assertThat(judge.compile().longestMethod()).isLessThan(8_000);
        assertThat(judge.compile().classes()).hasSizeGreaterThan(1);
        assertThat(judge.compile().compiledChecks()).isEqualTo(3_000);
        BothJudges.agreeing(judge, bench.evidence(graph).orElseThrow(), UnitSystem.METRIC);
    }

    @Test
    void one_formula_as_long_as_a_whole_procedure_is_left_to_the_interpreter() {
        String observed = IntStream.range(0, 400)
                .mapToObj(i -> "observe n" + i + " : yes/no optional ask \"?\"\n")
                .collect(Collectors.joining());
        String all = IntStream.range(0, 400).mapToObj(i -> "n" + i).collect(Collectors.joining(" and "));
        Workshop bench = Workshop.of(observed + "check all \"All\" minor { require " + all + " }\n"
                        + "check first \"First\" minor { require n0 }")
                .observe("n0", "true");
        CheckGraph graph = bench.compiled().graph();
        QuickJudge judge = QuickJudge.of(graph);
        assertThat(judge.compile().compiledChecks()).isEqualTo(1);
        assertThat(judge.compile().longestMethod()).isLessThan(8_000);
        BothJudges.agreeing(judge, bench.evidence(graph).orElseThrow(), UnitSystem.METRIC);
    }

    @Test
    void what_was_read_for_one_procedure_is_not_judged_by_another() {
        CheckGraph graph = BENCH.compiled().graph();
        QuickJudge other = QuickJudge.of(BENCH.compiled().graph());
        Evidence evidence = BENCH.evidence(graph).orElseThrow();
        Figures figures = QuickJudge.of(graph).figures(evidence);
        for (QuickJudge judge : List.of(other, QuickJudge.compiled(other.graph()))) {
            assertThatThrownBy(() -> judge.judge(figures, judge.blank()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("another procedure");
        }
    }

    @Test
    void words_and_days_that_only_one_engine_knows_are_told_apart() {
        Workshop bench = Workshop.of("""
                observe said : text ask "?"
                observe sealed : date ask "?"
                check same "Same" minor { require said is "as new" }
                check owner "Owner" minor { require said is engine.owner }
                check not_owner "Not the owner" minor { require said is not engine.owner }
                check late "Late" minor { require sealed is 2026-03-04 }
                """);
        for (String said : List.of("as new", "Anna", "neither")) {
            for (String day : List.of("2026-03-04", "2026-03-05")) {
                bench.engine("{ \"serial\": \"1\", \"condition\": \"used\", \"owner\": \"Anna\" }")
                        .observe("said", "\"" + said + "\"")
                        .observe("sealed", "\"" + day + "\"")
                        .judged();
            }
        }
        bench.judged();
    }

    @Test
    void everything_in_the_box_counts_however_many_words_there_are() {
        Workshop bench = Workshop.of("""
                observe found : items ask "?"
                check full "Full" minor { require found has all of engine.box }
                """);
        List<String> others =
                IntStream.range(0, 150).mapToObj(i -> "\"thing " + i + "\"").toList();
        for (Stream<String> own : List.of(
                Stream.of("\"engine\"", "\"glow plug\"", "\"manual\""), Stream.of("\"engine\"", "\"manual\""))) {
            String items = Stream.concat(others.stream(), own).collect(Collectors.joining(", "));
            bench.enter("{ \"observe\": \"found\", \"items\": [" + items + "] }")
                    .judged();
        }
        bench.enter("{ \"observe\": \"found\", \"items\": [] }").judged();
    }
}
