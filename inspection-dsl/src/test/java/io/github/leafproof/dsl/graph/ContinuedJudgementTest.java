package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.BothJudges;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.ReportFile;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** A sheet that grows, or loses its last entries, is judged on, and comes to what the whole sheet would. */
class ContinuedJudgementTest {

    private static final Workshop BENCH = Workshop.of("""
            gauge leaves : leaf set
            gauge infrared : reading of temperature
            observe head : temperature with infrared ask "Head"
            observe room : temperature with infrared ask "Room"
            observe lash : gap with leaves ask "Lash"
            observe gear : one of oiled, dry, rusty ask "Valve gear"
            observe oiled_now : yes/no when gear is not oiled ask "Oiled?"
            observe kind : one of mineral, castor when oiled ask "Which oil?"
            observe rattle : yes/no optional ask "Does it rattle?"
            let warmer = head - room
            let oiled = gear is dry and oiled_now
            check cold "Cold" major gate { require warmer within 3 K of 0 K }
            check wet "Oiled" major gate { require oiled_now }
            check right_oil "The right oil" minor { require kind is mineral }
            check inside "Lash" critical gate {
              after cold, wet
              require lash between engine.lash_min and engine.lash_max tolerate to engine.lash_tolerated
              if open advise next_leaf(lash, engine.lash_min, engine.lash_max)
            }
            check quiet "Quiet" minor { after inside when gear is oiled or gear is dry require not rattle }
            """);
    private static final CheckGraph GRAPH = BENCH.compiled().graph();

    private static Read<Evidence> evidence(CheckGraph graph, Workshop bench) {
        Evidence.Files files = bench.evidence().orElseThrow().files();
        return Evidence.of(graph, files.card(), files.tray(), files.sheet());
    }

    private static Judgement judged(CheckGraph graph, Workshop bench) {
        return BothJudges.judge(evidence(graph, bench).orElseThrow(), UnitSystem.METRIC);
    }

    /** The whole report, to the last letter. */
    private static String told(Judgement judgement) {
        return ReportFile.toJson(Reporting.of(judgement));
    }

    @Provide
    Arbitrary<List<String>> entries() {
        Arbitrary<String> degrees = Combinators.combine(
                        Arbitraries.of("head", "room"), Arbitraries.integers().between(18, 30))
                .as((name, number) -> value(name, "\"" + number + " °C\""));
        Arbitrary<String> words = Arbitraries.of(
                value("gear", "\"oiled\""),
                value("gear", "\"dry\""),
                value("oiled_now", "true"),
                value("oiled_now", "false"),
                value("kind", "\"castor\""),
                value("rattle", "true"),
                "{ \"observe\": \"gear\", \"cannot\": \"the cover sticks\" }");
        Arbitrary<String> trials = Combinators.combine(
                        Arbitraries.of("0.04 mm", "0.05 mm", "0.08 mm", "0.10 mm", "0.15 mm", "0.20 mm"),
                        Arbitraries.of("passes", "refuses", "drags"))
                .as((leaf, result) -> "{ \"observe\": \"lash\", \"trials\": [ { \"leaf\": \"" + leaf
                        + "\", \"result\": \"" + result + "\" } ] }");
        Arbitrary<String> adjusted =
                Arbitraries.of("lash", "gear", "head").map(name -> "{ \"adjust\": \"" + name + "\" }");
        return Arbitraries.oneOf(degrees, words, words, trials, trials, adjusted)
                .list()
                .ofMinSize(1)
                .ofMaxSize(9);
    }

    private static String value(String name, String value) {
        return "{ \"observe\": \"" + name + "\", \"value\": " + value + " }";
    }

    @Property(seed = "1", tries = 120, edgeCases = EdgeCasesMode.NONE)
    void entry_by_entry_it_comes_to_what_the_whole_sheet_comes_to(@ForAll("entries") List<String> entries) {
        Workshop bench = BENCH;
        Judgement judgement = judged(GRAPH, bench);
        for (String entry : entries) {
            Workshop longer = bench.enter(entry);
            Document<JobSheet> sheet = longer.sheetRead();
            Read<Judgement> continued = judgement.continuedWith(sheet);
            Read<Evidence> whole = Evidence.of(
                    GRAPH,
                    judgement.evidence().files().card(),
                    judgement.evidence().files().tray(),
                    sheet);
            assertThat(said(continued.problems())).isEqualTo(said(whole.problems()));
            if (whole.value().isPresent()) {
                bench = longer;
                judgement = continued.orElseThrow();
                assertThat(told(judgement)).isEqualTo(told(BothJudges.judge(whole.orElseThrow(), UnitSystem.METRIC)));
            }
        }
    }

    @Property(seed = "1", tries = 80, edgeCases = EdgeCasesMode.NONE)
    void what_is_taken_back_leaves_what_the_shorter_sheet_comes_to(
            @ForAll("entries") List<String> entries, @ForAll("entries") List<String> instead) {
        Workshop bench = BENCH;
        for (String entry : entries) {
            Workshop longer = bench.enter(entry);
            bench = longer.evidence(GRAPH).value().isPresent() ? longer : bench;
        }
        Judgement judgement = judged(GRAPH, bench);
        for (int kept = bench.entries().size(); kept >= 0; kept--) {
            Workshop shorter = BENCH.entries(bench.entries().subList(0, kept));
            judgement = judgement.continuedWith(shorter.sheetRead()).orElseThrow();
            assertThat(told(judgement)).isEqualTo(told(judged(GRAPH, shorter)));
        }
        Workshop other = BENCH.enter(instead.get(0));
        if (other.evidence(GRAPH).value().isPresent()) {
            Judgement exchanged =
                    judged(GRAPH, bench).continuedWith(other.sheetRead()).orElseThrow();
            assertThat(told(exchanged)).isEqualTo(told(judged(GRAPH, other)));
        }
    }

    private static List<String> said(List<Problem> problems) {
        return problems.stream().map(Problem::toString).toList();
    }

    @Test
    void a_correction_is_judged_on_like_any_other_entry() {
        Workshop first = BENCH.observe("head", "\"30 °C\"").observe("room", "\"21 °C\"");
        Workshop corrected = first.enter("{ \"observe\": \"head\", \"value\": \"21 °C\", \"corrects\": true }");

        Judgement judgement =
                judged(GRAPH, first).continuedWith(corrected.sheetRead()).orElseThrow();

        assertThat(told(judgement)).isEqualTo(told(judged(GRAPH, corrected)));
    }

    @Test
    void what_does_not_go_together_with_the_procedure_is_told_and_the_judgement_before_still_stands() {
        Judgement before = judged(GRAPH, BENCH.observe("gear", "\"dry\""));

        Read<Judgement> refused = before.continuedWith(
                BENCH.observe("gear", "\"dry\"").observe("lahs", "3").sheetRead());

        assertThat(said(refused.problems())).singleElement().asString().contains("did you mean lash?");
        assertThat(told(before)).isEqualTo(told(judged(GRAPH, BENCH.observe("gear", "\"dry\""))));
    }

    @Test
    void a_sheet_that_says_something_else_is_judged_by_what_it_says() {
        Judgement before = judged(GRAPH, BENCH.observe("gear", "\"dry\""));
        Workshop other = BENCH.observe("gear", "\"oiled\"").observe("head", "\"21 °C\"");

        assertThat(told(before.continuedWith(other.sheetRead()).orElseThrow())).isEqualTo(told(judged(GRAPH, other)));
        Workshop variant = BENCH.observe("gear", "\"dry\"").engine("{ \"variant\": \"early cam\" }");
        assertThat(told(before.continuedWith(variant.sheetRead()).orElseThrow()))
                .isEqualTo(told(judged(GRAPH, variant)));
    }

    @Test
    void of_a_hundred_checks_only_the_one_that_hangs_on_what_was_entered_or_taken_back_is_judged_anew() {
        StringBuilder text = new StringBuilder("for valve in ");
        List<String> valves = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            valves.add("v" + i);
        }
        text.append(String.join(", ", valves)).append("""
                 {
                  observe turns[valve] : yes/no ask "?"
                  check free[valve] "Free" minor { require turns[valve] }
                }
                """);
        Workshop bench = Workshop.of(text.toString());
        AtomicInteger count = new AtomicInteger();
        CheckGraph graph = counting(bench.compiled().graph(), count);
        Judgement before = Judge.judge(evidence(graph, bench).orElseThrow(), UnitSystem.METRIC);
        assertThat(count).hasValue(100);

        count.set(0);
        Judgement after = before.continuedWith(
                        bench.observe("turns[v41]", "true").sheetRead())
                .orElseThrow();

        assertThat(count).hasValue(1);
        assertThat(after.verdict("free[v41]").orElseThrow().outcome()).hasToString("PASSES");
        assertThat(after.verdict("free[v42]").orElseThrow().outcome()).hasToString("UNTESTED");

        count.set(0);
        Judgement back = after.continuedWith(bench.sheetRead()).orElseThrow();

        assertThat(count).hasValue(1);
        assertThat(back.verdict("free[v41]").orElseThrow().outcome()).hasToString("UNTESTED");
    }

    private static CheckGraph counting(CheckGraph graph, AtomicInteger count) {
        return CheckGraph.of(
                graph.identity(),
                new CheckGraph.Parts(
                        graph.states(),
                        graph.gauges(),
                        graph.facts(),
                        graph.observations(),
                        graph.derived(),
                        graph.checks().stream()
                                .map(check -> new Node.Check(
                                        check.number(),
                                        check.name(),
                                        check.title(),
                                        check.stage(),
                                        check.severity(),
                                        check.gate(),
                                        check.after(),
                                        check.when(),
                                        new Counted(check.requirement(), count),
                                        check.rule(),
                                        check.advice(),
                                        check.because()))
                                .toList(),
                        null,
                        graph.rule(),
                        graph.release()));
    }
}
