package io.github.leafproof.dsl.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Release;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure's own cases, on the bench of the examples. */
class RehearsingTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static final String PROCEDURE = """
            procedure trial "A trial" revision 1
            gauge leaves : leaf set
            observe lash : gap with leaves ask "Lash"
            observe cold : yes/no ask "Cold?"
            observe feel : grade none < soft < firm ask "Compression"
            observe flips : count ask "Flips"
            observe box : items ask "Box"
            observe remark : text optional ask "Remark"
            check inside "Lash" critical { require lash between engine.lash_min and engine.lash_max }
            check rest "Rest" minor { require cold and feel at least soft and flips at most 4 }
            check full "Box" minor { require box has all of engine.box }
            check said "Said" minor { require remark is "nothing" }
            """;

    private static Rehearsed run(String steps) {
        return run("cards/quillan-15.json", "trays/bench-one.json", steps);
    }

    private static Rehearsed run(String card, String tray, String steps) {
        String rehearsal = "rehearse \"a case\" {\n  engine \"" + card + "\" variant \"late cam\"\n  gauges \"" + tray
                + "\"\n" + steps + "}\n";
        Procedure procedure = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + rehearsal))
                .orElseThrow();
        List<Rehearsed> rehearsed = Rehearsing.run(procedure, BENCH);
        assertThat(rehearsed).hasSize(1);
        return rehearsed.get(0);
    }

    @Test
    void every_kind_of_entry_counts_as_on_a_sheet() {
        Rehearsed rehearsed = run("""
                  enter lash passes "0.05" refuses "0.04 mm + 0.05", cold yes, feel "soft", flips 4
                  enter box items "engine", "manual", remark "nothing"
                  expect inside passes, rest passes, full fails, said passes
                  expect release hold
                """);

        assertThat(rehearsed.isAsExpected()).isTrue();
        assertThat(rehearsed.title()).isEqualTo("a case");
    }

    @Test
    void a_surprise_says_where_what_and_why() {
        Rehearsed rehearsed = run("""
                  enter lash passes "0.05" refuses "0.10", box cannot "not sent"
                  expect inside passes, full passes
                  expect release ready
                """);

        assertThat(rehearsed.isAsExpected()).isFalse();
        assertThat(rehearsed.problems()).isEmpty();
        assertThat(rehearsed.surprises())
                .extracting(Rehearsed.Surprise::of, Rehearsed.Surprise::expected, Rehearsed.Surprise::got)
                .containsExactly(
                        tuple("inside", "passes", "open"),
                        tuple("full", "passes", "untested"),
                        tuple("release", "ready", "hold"));
        assertThat(rehearsed.surprises().get(0).why())
                .contains("   nothing shows that lash is at most 0.10 mm: the thinnest leaf that refuses measures"
                        + " 0.1100 mm");
        assertThat(rehearsed.surprises().get(1).why()).contains("here they part: box could not be observed: not sent");
    }

    @Test
    void cards_and_trays_that_cannot_be_read_are_told_both_at_once() {
        Rehearsed rehearsed = run("cards/none.json", "trays/none.json", "  expect release ready\n");

        assertThat(rehearsed.isAsExpected()).isFalse();
        assertThat(rehearsed.surprises()).isEmpty();
        assertThat(rehearsed.problems()).hasSize(2);
    }

    @Test
    void what_cannot_be_entered_is_told_with_its_place_in_the_procedure() {
        Rehearsed rehearsed = run("""
                  enter lash passes "thin"
                  enter flips 2000000000
                  expect release ready
                """);

        assertThat(rehearsed.problems())
                .extracting(problem -> problem.code() + " " + problem.file() + ":" + problem.place())
                .containsExactly("LP621 trial.inspection:16:9", "LP624 trial.inspection:17:9");
        assertThat(rehearsed.problems().get(0).message()).startsWith("\"thin\" is no marking: ");
    }

    @Test
    void an_engine_has_the_number_that_the_rehearsal_gives_it() {
        Procedure procedure =
                Procedure.compile(SourceText.of("trial.inspection", """
                        procedure trial "A trial" revision 1
                        observe number : text ask "Number?"
                        check same "Same" { require number is engine.serial }
                        rehearse "its own" {
                          engine "cards/quillan-15.json" variant "late cam" serial "Q15-1" gauges "trays/bench-one.json"
                          enter number "Q15-1" expect same passes
                        }
                        rehearse "another" {
                          engine "cards/quillan-10.json" serial "Q10-1" gauges "trays/bench-one.json"
                          enter number "Q15-1" expect same fails
                        }
                        rehearse "none" {
                          engine "cards/quillan-10.json" gauges "trays/bench-one.json"
                          enter number "Q15-1" expect same untested
                        }
                        """)).orElseThrow();

        assertThat(Rehearsing.run(procedure, BENCH)).hasSize(3).allMatch(Rehearsed::isAsExpected);
    }

    @Test
    void one_rehearsal_sees_nothing_of_another() {
        String two = """
                rehearse "first" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  enter cold no
                  expect rest fails
                }
                rehearse "second" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  expect rest untested
                }
                """;
        Procedure procedure = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + two))
                .orElseThrow();

        assertThat(Rehearsing.run(procedure, BENCH)).allMatch(Rehearsed::isAsExpected);
    }

    /** What a run says is the same however many threads share the work: on one, on two, on sixteen. */
    @Test
    void the_order_of_the_cases_and_every_word_is_the_same_whatever_the_number_of_threads() throws Exception {
        StringBuilder cases = new StringBuilder();
        for (int each = 1; each <= 40; each++) {
            cases.append("rehearse \"case " + each + "\" {\n  engine \"cards/quillan-15.json\" variant \"late cam\"\n"
                    + "  gauges \"trays/bench-one.json\"\n  enter flips " + each
                    + ", cold yes, feel \"soft\"\n  expect rest passes\n}\n");
        }
        Procedure procedure = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + cases))
                .orElseThrow();

        String alone = said(procedure, 1);

        assertThat(alone.lines().filter(line -> line.contains("surprises=[]"))).hasSize(4);
        assertThat(said(procedure, 2)).isEqualTo(alone);
        assertThat(said(procedure, 16)).isEqualTo(alone);
    }

    private static String said(Procedure procedure, int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> Rehearsing.run(procedure, BENCH).stream()
                            .map(Rehearsed::toString)
                            .collect(Collectors.joining("\n")))
                    .get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void a_card_is_read_once_for_all_the_cases_that_name_it(@TempDir Path folder) throws Exception {
        Files.createDirectories(folder.resolve("cards"));
        Files.createDirectories(folder.resolve("trays"));
        Path card = folder.resolve("cards/quillan-15.json");
        Files.copy(BENCH.resolve("cards/quillan-15.json"), card);
        Files.copy(BENCH.resolve("trays/bench-one.json"), folder.resolve("trays/bench-one.json"));
        Procedure procedure = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + """
                rehearse "a case" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  enter cold no
                  expect rest fails
                }
                """))
                .orElseThrow();
        Rehearsing rehearsing = Rehearsing.of(procedure, folder);
        assertThat(rehearsing.play()).allMatch(Played::isAsExpected);

        Files.delete(card);

        assertThat(rehearsing.with(procedure).play()).allMatch(Played::isAsExpected);
        assertThat(Rehearsing.of(procedure, folder).play())
                .noneMatch(Played::isAsExpected)
                .allMatch(played -> played.judgement().isEmpty());
    }

    @Test
    void a_played_case_keeps_the_judgement_and_only_the_asked_ones_are_played() {
        Procedure procedure = Procedure.compile(SourceText.of("trial.inspection", PROCEDURE + """
                rehearse "first" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  enter cold no
                  expect rest fails
                }
                rehearse "second" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  expect rest passes, release ready
                }
                """))
                .orElseThrow();

        List<Played> played = Rehearsing.of(procedure, BENCH)
                .play(each -> each.title().plain().equals("second"));

        assertThat(played).extracting(Played::title).containsExactly("second");
        assertThat(played.get(0).place()).isEqualTo("trial.inspection:19:10");
        assertThat(played.get(0).unexpected()).hasSize(2);
        assertThat(played.get(0).judgement().orElseThrow().release().release()).isEqualTo(Release.UNFINISHED);
    }
}
