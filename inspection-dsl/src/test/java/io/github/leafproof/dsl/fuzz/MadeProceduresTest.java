package io.github.leafproof.dsl.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.BothJudges;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.coverage.Impossible;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.layout.GraphWords;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Whatever makes sense to the compiler can be judged, however its sheet is filled in. */
class MadeProceduresTest {

    @Property(tries = 60, seed = "1")
    void what_makes_sense_compiles_and_is_judged(@ForAll long seed) {
        assertCompilesAndIsJudged(Chance.of(seed));
    }

    @Property(tries = 60, seed = "1")
    void said_in_several_files_it_means_the_same(@ForAll long seed) {
        Chance chance = Chance.of(seed);
        MadeProcedure made = MadeProcedure.of(chance);
        Procedure whole = Workshop.of(made.text()).compiled();
        SeveralFiles files = SeveralFiles.of(made.pieces(), chance);
        SourceText main =
                SourceText.of("trial.inspection", Workshop.of(files.main()).procedure());

        Procedure parted = Invariants.compiled(main, files.shelf()).orElseThrow();

        assertThat(GraphWords.of(parted.graph()).lines().toList())
                .isEqualTo(GraphWords.of(whole.graph()).lines().toList());
    }

    @Test
    void chance_leaves_nothing_out_that_procedures_are_made_of() {
        String made = LongStream.range(0, 500)
                .mapToObj(seed -> MadeProcedure.of(Chance.of(seed)).text())
                .collect(Collectors.joining());

        assertThat(made)
                .contains("series of", "mean(", "spread(", "slope(", "count(", " ± ", "(u ", "(U ", ", k 2)")
                .contains("is before", "is not after", "card fact_", "engine.fact_", "let ", "define ", "for v in")
                .contains(Mechanisms.all().stream()
                        .map(mechanism -> mechanism.name() + "(")
                        .toList());
    }

    static void assertCompilesAndIsJudged(Chance chance) {
        MadeProcedure made = MadeProcedure.of(chance);
        Workshop empty = Workshop.of(made.text())
                .card("\"choke\": false,", "\"choke\": false, \"shop\": { " + made.shopFacts() + " },");
        List<Diagnostic> errors = Invariants.compiled(empty.procedure()).diagnostics().stream()
                .filter(Diagnostic::isError)
                .toList();
        assertThat(errors)
                .as(() -> empty.procedure() + DiagnosticPrinter.print(errors, false))
                .isEmpty();
        Procedure procedure = empty.compiled();
        Read<Evidence> evidence =
                empty.entries(MadeSheet.entries(procedure.graph(), chance)).evidence(procedure.graph());
        assertThat(evidence.problems()).filteredOn(Problem::isError).isEmpty();
        Invariants.assertJudged(evidence);
        evidence.value()
                .map(sound -> BothJudges.judge(sound, UnitSystem.METRIC))
                .ifPresent(judgement -> assertThat(Impossible.shownBy(procedure, judgement))
                        .as(() -> "called impossible in " + empty.procedure())
                        .isEmpty());
    }
}
