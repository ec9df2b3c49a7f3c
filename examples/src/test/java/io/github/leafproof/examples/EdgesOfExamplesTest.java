package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.edges.Base;
import io.github.leafproof.dsl.edges.EdgeReport;
import io.github.leafproof.dsl.edges.Edges;
import io.github.leafproof.dsl.edges.EdgesText;
import io.github.leafproof.dsl.parts.ProcedureFolder;
import io.github.leafproof.dsl.rehearsal.Played;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The rehearsals that are written of the edges of the bench's procedures. */
class EdgesOfExamplesTest {

    /** The edges of a procedure as rehearsals. */
    static String written(Procedure procedure) {
        List<Base> cases = Rehearsing.of(procedure, Project.BENCH).play().stream()
                .map(played -> new Base(played.written(), played.judgement().orElseThrow()))
                .toList();
        EdgeReport report = Edges.of(procedure.graph(), cases);
        return EdgesText.of(report, "edges", source -> folderOf(source, procedure), Project.BENCH);
    }

    private static Path folderOf(SourceText source, Procedure procedure) {
        return procedure.parts().stream()
                .filter(part -> part.source() == source)
                .findFirst()
                .map(part -> Project.BENCH.resolve(part.name()).resolveSibling(""))
                .orElse(Project.BENCH);
    }

    @TestFactory
    List<DynamicTest> what_is_written_compiles_behind_the_procedure_and_comes_out_as_it_expects() {
        return Bench.procedures().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    Procedure procedure = Bench.procedure(name);
                    SourceText both = SourceText.of(
                            procedure.source().name(), procedure.source().text() + "\n" + written(procedure));

                    Procedure grown = Procedure.compile(both, ProcedureFolder.of(Project.BENCH))
                            .orElseThrow();

                    assertThat(grown.rehearsals().size())
                            .isGreaterThan(procedure.rehearsals().size() + 5);
                    assertThat(Rehearsing.of(grown, Project.BENCH).play())
                            .filteredOn(played -> !played.isAsExpected())
                            .extracting(Played::title)
                            .isEmpty();
                }))
                .toList();
    }

    /** A limit of the tank, a tenth higher: a rehearsal that stays far away from it sees nothing, one on its edge does. */
    @Test
    void a_changed_limit_is_caught_by_the_entry_on_its_edge() {
        Procedure tank = Bench.procedure("tank");
        String changed =
                tank.source().text().replace("require run_time at least 8 min", "require run_time at least 9 min");
        assertThat(changed).isNotEqualTo(tank.source().text());

        assertThat(surprised(changed)).noneMatch(title -> title.startsWith("sound tank"));
        assertThat(surprised(changed + "\n" + written(tank))).contains("lasts: volume 224 mL, the last that passes");
    }

    private static List<String> surprised(String text) {
        Procedure procedure = Procedure.compile(
                        SourceText.of("tank.inspection", text), ProcedureFolder.of(Project.BENCH))
                .orElseThrow();
        return Rehearsing.of(procedure, Project.BENCH).play().stream()
                .filter(played -> !played.isAsExpected())
                .map(Played::title)
                .toList();
    }
}
