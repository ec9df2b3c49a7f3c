package io.github.leafproof.dsl.edges;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Outcome;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Where the edges of limits lie, held against the guard bands of JCGM 106 (clause 8, from memory) worked out by hand. */
class EdgesTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");
    private static final String HEADER = "procedure trial \"A trial\" revision 1\n";

    private static String rehearsal(String title, String entries, String expected) {
        return "rehearse \"" + title + "\" {\n  engine \"cards/quillan-15.json\" variant \"late cam\"\n"
                + "  gauges \"trays/bench-one.json\"\n  enter " + entries + "\n  expect " + expected + "\n}\n";
    }

    private static Procedure compiled(String text) {
        return Procedure.compile(SourceText.of("trial.inspection", HEADER + text))
                .orElseThrow();
    }

    private static EdgeReport edges(String text) {
        Procedure procedure = compiled(text);
        return Edges.of(
                procedure.graph(),
                Rehearsing.of(procedure, BENCH).play().stream()
                        .map(played ->
                                new Base(played.written(), played.judgement().orElseThrow()))
                        .toList());
    }

    private static Stream<String> titles(EdgeReport report) {
        return report.edges().stream().map(Edge::title);
    }

    @Test
    void a_reading_has_to_keep_a_guard_band_from_its_limit() {
        // Depth gauge of the bench: limits 0.03 mm, steps of 0.01 mm: u = sqrt(0.03²/3 + 0.01²/12) mm = 0.01756 mm, and
        // 1.645 u = 0.0289 mm on either side of the limit.
        EdgeReport report = edges("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                check small "Small" { require step at most 10 mm }
                """ + rehearsal("small", "step 3.20 mm", "small passes"));

        assertThat(titles(report))
                .containsExactly(
                        "small: step 9.97 mm, the last that passes",
                        "small: step 9.98 mm, the first that proves nothing",
                        "small: step 10.03 mm, the first that fails");
        assertThat(report.notReached()).isEmpty();
    }

    @Test
    void a_window_has_edges_on_both_sides_and_what_is_tolerated_beyond_it() {
        // z u = 0.0289 mm as above; within a window both sides share the risk only where they are near each other.
        EdgeReport report = edges("""
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                check small "Small" { require step between 2 mm and 10 mm tolerate to 11 mm }
                """ + rehearsal("small", "step 3.20 mm", "small passes"));

        assertThat(titles(report))
                .containsExactlyInAnyOrder(
                        "small: step 2.03 mm, the last that passes",
                        "small: step 2.02 mm, the first that proves nothing",
                        "small: step 1.97 mm, the first that fails",
                        "small: step 9.97 mm, the last that passes",
                        "small: step 9.98 mm, the first that is tolerated",
                        "small: step 10.97 mm, the last that is tolerated",
                        "small: step 10.98 mm, the first that proves nothing",
                        "small: step 11.03 mm, the first that fails");
    }

    @Test
    void what_is_counted_or_stated_has_no_guard_band() {
        EdgeReport report = edges("""
                observe flips : count ask "Flips"
                observe volume : volume ask "Volume, as marked"
                observe made : date ask "Date on the box"
                check few "Few" critical { require flips at most 4 }
                check large "Large" minor { require volume at least 350 mL }
                check old "Old" minor { require made is not after 2003-12-31 }
                """
                + rehearsal(
                        "fine", "flips 2, volume 400 mL, made \"2001-05-06\"", "few passes, large passes, old passes"));

        assertThat(titles(report))
                .containsExactlyInAnyOrder(
                        "few: flips 4, the last that passes",
                        "few: flips 5, the first that fails",
                        "large: volume 350 mL, the last that passes",
                        "large: volume 349 mL, the first that fails",
                        "old: made 2003-12-31, the last that passes",
                        "old: made 2004-01-01, the first that fails");
        assertThat(report.edges().get(1).expected()).containsExactly("few fails");
        assertThat(report.edges().get(1).release()).isEqualTo("reject");
    }

    @Test
    void words_and_lists_have_neighbours() {
        EdgeReport report = edges("""
                observe dry : yes/no ask "Dry?"
                observe oil : one of clear, amber, "grey metal" ask "Oil"
                observe feel : grade none < soft < firm ask "Compression"
                observe box : items ask "Box"
                check is_dry "Dry" gate { require dry }
                check oil_clean "Oil" { after is_dry require oil is one of clear, amber }
                check compresses "Compression" { require feel at least soft }
                check whole "Whole" minor { require box has all of engine.box }
                """
                + rehearsal(
                        "fine",
                        "dry yes, oil clear, feel firm, box items \"engine\", \"exhaust\", \"glow plug\","
                                + " \"feeler leaf\", \"open-end wrench\", \"manual\", \"a cup\"",
                        "is_dry passes, oil_clean passes, compresses passes, whole passes"));

        assertThat(titles(report))
                .contains(
                        "is_dry: dry no, which fails",
                        "oil_clean: oil grey metal, which fails",
                        "oil_clean: oil amber, which passes",
                        "compresses: feel soft, the last that passes",
                        "compresses: feel none, the first that fails",
                        "whole: box without engine, which fails")
                .noneMatch(title -> title.contains("a cup"));
        assertThat(report.edges().get(0).expected()).containsExactly("is_dry fails", "oil_clean blocked");
    }

    @Test
    void a_gap_turns_on_the_pairs_of_leaves_that_prove_the_least() {
        // Of the bench's leaves, 0.04 and 0.05 measure so, 0.08 measures 0.081, and the one marked 0.10 measures 0.110.
        EdgeReport report = edges("""
                gauge leaves : leaf set
                observe lash : gap with leaves ask "Lash"
                check inside "Inside" { require lash between 0.03 mm and 0.10 mm }
                """ + rehearsal("inside", "lash passes \"0.05\" refuses \"0.08\"", "inside passes"));

        assertThat(titles(report))
                .containsExactly(
                        "inside: lash takes 0.04 mm and not 0.08 mm, which passes",
                        "inside: lash takes 0.03 mm and not 0.08 mm, which proves nothing",
                        "inside: lash takes 0.04 mm and not 0.10 mm, which proves nothing",
                        "inside: lash takes 0.10 mm, which fails",
                        "inside: lash takes 0.08 mm, which proves nothing");
        assertThat(report.edges().get(0).entered()).isEqualTo("passes \"0.04 mm\" refuses \"0.08 mm\"");
    }

    @Test
    void readings_are_moved_together_and_there_may_be_fewer() {
        EdgeReport report = edges("""
                gauge clock : reading of time
                observe runs : series of time with clock ask "Runs"
                check made "Made" { require count(runs) at least 3 }
                check timed "Timed" { require mean(runs) at most 150 s }
                check even "Even" { require spread(runs) at most 5 s }
                check steady "Steady" { require slope(runs) at most 10 s }
                """
                + rehearsal(
                        "fine",
                        "runs series 119.8 s, 121.0 s, 120.4 s",
                        "made passes, timed passes, even passes, steady passes"));

        assertThat(titles(report))
                .contains("made: runs of 2 readings, the first that fails")
                .anyMatch(title -> title.matches("timed: runs from 14.*, the last that passes"))
                .anyMatch(title -> title.matches("timed: runs from 15.*, the first that fails"))
                .anyMatch(title -> title.matches("even: .*, the last that passes"))
                .anyMatch(title -> title.matches("steady: runs from 119.8 s to 1[34].*, the last that passes"))
                .noneMatch(title -> title.matches("timed: .* readings.*"));
    }

    @Test
    void where_there_is_no_edge_the_reason_is_given() {
        EdgeReport report = edges("""
                gauge rule : reading of length
                observe a : yes/no ask "A?"
                observe step : length with rule ask "Step"
                observe gap : length with rule ask "Gap"
                check first "First" gate { require a }
                check later "Later" { after first require a or not a }
                check tight "Tight" { require gap within 0.1 mm of 5 mm }
                check missing "Missing" { require step at most 4 mm }
                """ + rehearsal("a", "a yes, gap 5 mm", "first passes"));

        assertThat(report.notReached())
                .extracting(none -> none.check() + ": " + none.why())
                .containsExactly(
                        "later: the check comes to the same whatever else is entered for a",
                        "tight: nothing that is entered for gap lets it pass: with this gauge and these limits it stays"
                                + " open at best",
                        "missing: no rehearsal decides the check: in the first step was not entered");
    }

    @Property(tries = 40)
    void every_edge_of_a_limit_is_one_step_from_another_outcome(
            @ForAll @IntRange(min = 100, max = 5000) int hundredths, @ForAll boolean atMost) {
        BigDecimal limit = BigDecimal.valueOf(hundredths, 2);
        String text = "gauge depth : reading of length\nobserve step : length with depth ask \"Step\"\n"
                + "check held \"Held\" { require step at " + (atMost ? "most " : "least ") + limit + " mm }\n";
        BigDecimal inside = atMost ? limit.subtract(BigDecimal.ONE) : limit.add(BigDecimal.ONE);
        BigDecimal inwards = atMost ? new BigDecimal("-0.01") : new BigDecimal("0.01");

        EdgeReport report = edges(text + rehearsal("inside", "step " + inside + " mm", "held passes"));

        assertThat(report.edges()).hasSize(3);
        for (Edge edge : report.edges()) {
            BigDecimal entered = new BigDecimal(edge.entered().replace(" mm", ""));
            BigDecimal beside = edge.title().contains("last") ? entered.subtract(inwards) : entered.add(inwards);
            assertThat(outcome(text, entered)).isEqualTo(edge.outcome());
            assertThat(outcome(text, beside)).isNotEqualTo(edge.outcome());
        }
    }

    private static Outcome outcome(String text, BigDecimal entered) {
        Procedure procedure = compiled(text + rehearsal("one", "step " + entered + " mm", "release ready"));
        Played played = Rehearsing.of(procedure, BENCH).play().get(0);
        return played.judgement().orElseThrow().verdict("held").orElseThrow().outcome();
    }
}
