package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.mutants.Accepted;
import io.github.leafproof.dsl.mutants.MutantReport;
import io.github.leafproof.dsl.mutants.MutantsText;
import io.github.leafproof.dsl.mutants.Watched;
import io.github.leafproof.dsl.source.SourceText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A slip in a procedure of the bench, whichever it is: its rehearsals tell, or the list beside it says why none can. */
class MutantsOfExamplesTest {

    private static final String LIST = "accepted-mutants.txt";

    private static Watched watched(String name) {
        Procedure procedure = Bench.procedure(name);
        return Watched.of(procedure, Bench.rehearsing(name, procedure));
    }

    @Test
    void no_slip_in_the_procedures_of_the_bench_stays_unseen_but_those_with_a_reason() {
        List<Watched> all = Bench.allProcedures().stream()
                .map(MutantsOfExamplesTest::watched)
                .toList();
        Accepted accepted = Accepted.of(SourceText.of(LIST, Project.text(Project.BENCH.resolve(LIST))));

        MutantReport report = MutantReport.of(all);

        assertThat(accepted.problemsWith(report)).as(LIST).isEmpty();
        assertThat(report.surviving())
                .as(() -> MutantsText.of(report, accepted))
                .allMatch(survivor -> accepted.reason(survivor.mutant()).isPresent());
        assertThat(report.noticed()).isGreaterThan(1000);
    }
}
