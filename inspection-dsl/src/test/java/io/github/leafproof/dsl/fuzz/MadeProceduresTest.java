package io.github.leafproof.dsl.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.BothJudges;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.coverage.Impossible;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.layout.GraphWords;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.mechanism.Mechanisms;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import io.github.leafproof.inspection.verdict.Tally;
import java.util.ArrayList;
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

    @Property(tries = 40, seed = "1")
    void entry_by_entry_there_and_back_it_comes_to_what_the_whole_sheet_comes_to(@ForAll long seed) {
        Chance chance = Chance.of(seed);
        Workshop empty = bench(MadeProcedure.of(chance));
        CheckGraph graph = empty.compiled().graph();
        Document<JobSheet> whole =
                empty.entries(MadeSheet.entries(graph, chance)).sheetRead();
        Judgement judgement = Judge.judge(empty.evidence(graph).orElseThrow(), UnitSystem.METRIC);
        OpenSheet sheet = judgement.evidence().sheet();
        for (Entry entry : whole.content().entries()) {
            sheet = sheet.with(entry).orElseThrow();
            judgement = judgedOn(judgement, sheet);
            while (chance.oneIn(4) && sheet.size() > 0) {
                Entry last = sheet.last().orElseThrow();
                judgement = judgedOn(judgement, sheet.withoutLast());
                judgement = judgedOn(judgement, sheet.withoutLast().with(last).orElseThrow());
                sheet = judgement.evidence().sheet();
            }
        }
        while (sheet.size() > 0) {
            sheet = sheet.withoutLast();
            judgement = judgedOn(judgement, sheet);
        }
    }

    private static Judgement judgedOn(Judgement before, OpenSheet sheet) {
        Judgement judged = before.continuedWith(sheet).orElseThrow();
        Judgement anew = Judge.judge(
                Evidence.of(
                                judged.graph(),
                                judged.evidence().card(),
                                judged.evidence().tray(),
                                sheet.document())
                        .orElseThrow(),
                UnitSystem.METRIC);
        assertThat(told(judged)).isEqualTo(told(anew));
        Tally oneByOne = Tally.of(judged.verdicts().checks().toList());
        assertThat(judged.release()).isEqualTo(judged.graph().release().decide(oneByOne));
        assertThat(judged.released()).isEqualTo(judged.release().release());
        return judged;
    }

    /** All that a judgement answers. */
    private static List<Object> told(Judgement judgement) {
        List<Object> told = new ArrayList<>();
        told.add(judgement.release());
        told.add(judgement.released());
        told.add(judgement.worthDoing());
        for (Node.Check check : judgement.graph().checks()) {
            told.add(judgement.verdicts().get(check.number()));
            told.add(judgement.asFound(check));
            told.add(judgement.asIfMeasured(check));
        }
        for (Severity severity : Severity.values()) {
            for (Outcome outcome : Outcome.values()) {
                told.add(judgement.verdicts().count(severity, outcome));
            }
        }
        for (Node.Observation observation : judgement.graph().observations()) {
            told.add(judgement.evidence().value(observation).toString());
            told.add(judgement.evidence().statements(observation).toString());
            told.add(judgement.evidence().isAdjusted(observation));
        }
        return told;
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

    private static Workshop bench(MadeProcedure made) {
        return Workshop.of(made.text())
                .card("\"choke\": false,", "\"choke\": false, \"shop\": { " + made.shopFacts() + " },");
    }

    static void assertCompilesAndIsJudged(Chance chance) {
        MadeProcedure made = MadeProcedure.of(chance);
        Workshop empty = bench(made);
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
