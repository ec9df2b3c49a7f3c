package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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

    /** A formula of a new kind is interpreted until somebody teaches the compiler about it; here it shows. */
    @ParameterizedTest
    @MethodSource("procedures")
    void every_check_is_compiled_as_a_whole(Path file) {
        CheckGraph graph = Procedure.read(file).orElseThrow().graph();
        assertThat(QuickJudge.of(graph).compile().compiledChecks())
                .isEqualTo(graph.checks().size());
    }
}
