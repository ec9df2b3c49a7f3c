package io.github.leafproof.dsl.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever makes sense to the compiler can be judged, however its sheet is filled in. */
class MadeProceduresTest {

    @Property(tries = 60, seed = "1")
    void what_makes_sense_compiles_and_is_judged(@ForAll long seed) {
        assertCompilesAndIsJudged(Chance.of(seed));
    }

    static void assertCompilesAndIsJudged(Chance chance) {
        Workshop empty = Workshop.of(MadeProcedure.declarations(chance));
        List<Diagnostic> errors = Invariants.compiled(empty.procedure()).diagnostics().stream()
                .filter(Diagnostic::isError)
                .toList();
        assertThat(errors)
                .as(() -> empty.procedure() + DiagnosticPrinter.print(errors, false))
                .isEmpty();
        Procedure procedure = empty.compiled();
        Read<Evidence> evidence =
                empty.entries(MadeSheet.entries(procedure.graph(), chance)).evidence();
        assertThat(evidence.problems()).filteredOn(Problem::isError).isEmpty();
        Invariants.assertJudged(evidence);
    }
}
