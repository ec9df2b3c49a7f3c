package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the procedures of the bench are compiled to comes to what the interpreter comes to. */
class CompiledProceduresTest {

    private static final Path HISTORY = Project.BENCH.resolve("history");

    static Stream<Path> procedures() {
        return Stream.concat(
                Bench.procedures().stream().map(name -> Project.BENCH.resolve(name + ".inspection")),
                Stream.of("between_runs", "cold_look").map(name -> HISTORY.resolve(name + ".inspection")));
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void every_rehearsed_case_comes_out_alike(Path file) {
        Procedure procedure = Procedure.read(file).orElseThrow();
        QuickJudge judge = QuickJudge.compiled(procedure.graph());
        Outcomes outcomes = judge.blank();
        List<Played> played = Rehearsing.of(procedure, file.resolveSibling("")).play();
        assertThat(played).isNotEmpty();
        for (Played each : played) {
            Judgement judgement = each.judgement().orElseThrow();
            judge.judge(judge.figures(judgement.evidence()), outcomes);
            assertThat(compiled(outcomes)).as(each.title()).isEqualTo(interpreted(judgement));
        }
    }

    private static List<String> interpreted(Judgement judgement) {
        List<String> words = new ArrayList<>();
        judgement.verdicts().forEach(verdict -> words.add(verdict.outcome().word()));
        words.add(judgement.release().release().word());
        return words;
    }

    private static List<String> compiled(Outcomes outcomes) {
        List<String> words = new ArrayList<>();
        for (int check = 0; check < outcomes.size(); check++) {
            words.add(outcomes.of(check).word());
        }
        words.add(outcomes.release().word());
        return words;
    }

    @Test
    void so_many_checks_of_each_procedure_are_compiled_as_a_whole() {
        Map<String, String> compiled = new TreeMap<>();
        procedures().forEach(file -> {
            Procedure procedure = Procedure.read(file).orElseThrow();
            int checks = QuickJudge.of(procedure.graph()).compile().compiledChecks();
            compiled.put(
                    procedure.graph().identity().name(),
                    checks + " of " + procedure.graph().checks().size());
        });
        assertThat(compiled)
                .containsExactlyInAnyOrderEntriesOf(Map.ofEntries(
                        Map.entry("after_run_cold_check", "31 of 42"),
                        Map.entry("between_runs", "6 of 7"),
                        Map.entry("cold_look", "6 of 7"),
                        Map.entry("first_look", "40 of 42"),
                        Map.entry("flight_setup", "28 of 40"),
                        Map.entry("needle_setting", "28 of 42"),
                        Map.entry("old_stock", "48 of 53"),
                        Map.entry("receiving", "19 of 21"),
                        Map.entry("release_to_owner", "15 of 21"),
                        Map.entry("running_in", "37 of 57"),
                        Map.entry("stand_and_first_start", "33 of 43"),
                        Map.entry("tank", "6 of 6"),
                        Map.entry("used_engine", "61 of 77")));
    }
}
