package io.github.leafproof.dsl.graph;

import static io.github.leafproof.inspection.verdict.Outcome.NOT_APPLICABLE;
import static io.github.leafproof.inspection.verdict.Outcome.PASSES;
import static io.github.leafproof.inspection.verdict.Outcome.UNTESTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What hangs on something that was left out is left out with it, wherever it stands and whatever lies between. */
class SettlingOrderTest {

    private static final int LENGTH = 300;

    /** Each is asked for where the next one, or what is made of it, says yes; the last one decides for all. */
    private static Workshop chain() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            boolean direct = i % 2 == 0;
            text.append("observe o%d : yes/no when %s\n".formatted(i, (direct ? "o" : "v") + (i + 1)));
            text.append(direct ? "" : "let v%d = o%d\n".formatted(i + 1, i + 1));
        }
        return Workshop.of(text + "observe o" + LENGTH + " : yes/no\ncheck first \"First\" { require o0 }");
    }

    @Test
    void a_chain_that_is_written_from_its_end_falls_away_as_a_whole() {
        assertThat(chain().observe("o" + LENGTH, "false").outcome("first")).isEqualTo(NOT_APPLICABLE);
        assertThat(chain().observe("o" + LENGTH, "true").outcome("first")).isEqualTo(UNTESTED);
        assertThat(chain().observe("o0", "true").outcome("first")).isEqualTo(PASSES);
    }

    @Test
    void each_condition_of_such_a_chain_is_looked_at_once() {
        Workshop bench = chain().observe("o" + LENGTH, "false");
        AtomicInteger count = new AtomicInteger();
        CheckGraph graph = counting(bench.compiled().graph(), count);

        Judge.judge(bench.evidence(graph).orElseThrow(), UnitSystem.METRIC);

        assertThat(count).hasValue(LENGTH);
    }

    @Test
    void a_sheet_that_grows_falls_away_as_the_whole_sheet_does() {
        Judgement before = chain().judged();
        Workshop grown = chain().observe("o" + LENGTH, "false");

        Judgement after = before.continuedWith(grown.sheetRead()).orElseThrow();

        assertThat(before.verdict("first").orElseThrow().outcome()).isEqualTo(UNTESTED);
        assertThat(after.verdict("first").orElseThrow().outcome()).isEqualTo(NOT_APPLICABLE);
    }

    @Test
    void observations_that_wait_for_each_other_make_no_graph() {
        CheckGraph graph = Workshop.of("""
                observe a : yes/no
                observe b : yes/no
                check c "C" { require a and b }
                """).compiled().graph();
        int a = ((Node.Observation) graph.node("a").orElseThrow()).slot();
        int b = ((Node.Observation) graph.node("b").orElseThrow()).slot();

        assertThatThrownBy(() -> with(
                        graph,
                        graph.observations().stream()
                                .map(each -> when(each, new Slot(each.slot() == a ? b : a, each.name())))
                                .toList()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("values and observations hang on each other in a circle");
    }

    private static CheckGraph counting(CheckGraph graph, AtomicInteger count) {
        List<Node.Observation> observations = new ArrayList<>();
        for (Node.Observation each : graph.observations()) {
            Formula when = each.when();
            observations.add(when == null ? each : when(each, new Counted(when, count)));
        }
        return with(graph, observations);
    }

    private static CheckGraph with(CheckGraph graph, List<Node.Observation> observations) {
        return CheckGraph.of(
                graph.identity(),
                new CheckGraph.Parts(
                        graph.states(),
                        graph.gauges(),
                        graph.facts(),
                        observations,
                        graph.derived(),
                        graph.checks(),
                        null,
                        graph.rule(),
                        graph.release()));
    }

    private static Node.Observation when(Node.Observation each, @Nullable Formula when) {
        return new Node.Observation(
                each.slot(),
                each.name(),
                each.type(),
                each.ask(),
                each.gauge(),
                each.needs(),
                each.hazards(),
                each.notes(),
                each.optional(),
                when,
                each.stage());
    }
}
