package io.github.leafproof.dsl.mutants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What rehearsals notice, and what they do not. */
class MutantReportTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    private static final String ONE_LIMIT = """
            procedure trial "A trial" revision 1
            observe flips : count ask "Flips"
            check few "Few" critical { require flips at most 4 }
            """;

    private static String rehearsal(String title, String steps) {
        return "rehearse \"" + title + "\" {\n  engine \"cards/quillan-15.json\"\n  gauges \"trays/bench-one.json\"\n"
                + steps + "}\n";
    }

    private static Watched watched(String text) {
        return watched("trial.inspection", text, Shelf.empty());
    }

    private static Watched watched(String name, String text, Shelf shelf) {
        Procedure procedure =
                Procedure.compile(SourceText.of(name, text), shelf).orElseThrow();
        return Watched.of(procedure, Rehearsing.of(procedure, BENCH));
    }

    private static Fate fate(MutantReport report, String name) {
        return report.mutants().stream()
                .filter(each -> each.mutant().name().equals(name))
                .findFirst()
                .orElseThrow()
                .fate();
    }

    @Test
    void a_limit_is_watched_by_the_last_that_passes_and_the_first_that_fails() {
        String four = rehearsal("four will do", "  enter flips 4\n  expect few passes, release ready\n");
        String five = rehearsal("five are too many", "  enter flips 5\n  expect few fails, release reject\n");

        assertThat(MutantReport.of(List.of(watched(ONE_LIMIT + four + five))).surviving())
                .isEmpty();
        MutantReport report = MutantReport.of(List.of(watched(ONE_LIMIT + four)));
        assertThat(report.surviving())
                .extracting(each -> each.mutant().name())
                .containsExactlyInAnyOrder(
                        "trial.inspection check few: critical -> major",
                        "trial.inspection check few: at most -> at least",
                        "trial.inspection check few: 4 -> 5",
                        "trial.inspection check few: flips at most 4 -> yes");
        assertThat(fate(report, "trial.inspection check few: 4 -> 3")).isEqualTo(new Fate.Noticed("four will do"));
    }

    @Test
    void without_a_rehearsal_nothing_is_noticed() {
        MutantReport report = MutantReport.of(List.of(watched(ONE_LIMIT)));

        assertThat(report.noticed()).isZero();
        assertThat(report.surviving())
                .hasSize(6)
                .allSatisfy(each -> assertThat(each.fate()).isEqualTo(new Fate.Survives(Optional.empty())));
    }

    @Test
    void the_nearest_rehearsal_is_the_one_whose_outcome_nobody_expects_and_else_whose_probability_moves_most() {
        String depth = """
                procedure trial "A trial" revision 1
                gauge depth : reading of length
                observe step : length with depth ask "Step"
                observe cold : yes/no ask "Cold?"
                check small "Small" { require step at most 2.00 mm }
                check chilled "Chilled" minor { require cold }
                """;
        String far = rehearsal("far off", "  enter step 1.50 mm, cold yes\n  expect small passes\n");
        String near = rehearsal("near", "  enter step 1.96 mm, cold yes\n  expect small passes\n");
        String silent = rehearsal("silent", "  enter step 2.30 mm, cold yes\n  expect chilled passes\n");

        MutantReport report = MutantReport.of(List.of(watched(depth + far + near + silent)));

        String up = "trial.inspection check small: 2.00 mm -> 2.20 mm";
        assertThat(((Fate.Survives) fate(report, up)).nearest().orElseThrow())
                .satisfies(nearest -> assertThat(nearest.isOtherwise()).isFalse());
        String turned = "trial.inspection check chilled: cold -> yes";
        assertThat(((Fate.Survives) fate(report, turned)).nearest()).isEmpty();
        String flipped = "trial.inspection check small: major -> critical";
        assertThat(((Fate.Survives) fate(report, flipped)).nearest().orElseThrow())
                .satisfies(nearest -> {
                    assertThat(nearest.title()).isEqualTo("silent");
                    assertThat(nearest.of()).isEqualTo("release");
                    assertThat(nearest.becomes()).isEqualTo("reject");
                });
    }

    @Test
    void a_gate_that_another_gate_waits_for_may_go_without_a_difference() {
        String gates = """
                procedure trial "A trial" revision 1
                observe a : yes/no ask "A?"
                observe b : yes/no ask "B?"
                check one "One" gate { require a }
                check two "Two" gate { after one require b }
                check three "Three" { after one, two require a or b }
                """;

        MutantReport report = MutantReport.of(List.of(watched(gates)));

        assertThat(fate(report, "trial.inspection check three: after one -> nothing"))
                .isEqualTo(new Fate.SameMeaning());
        assertThat(fate(report, "trial.inspection check three: after two -> nothing"))
                .isInstanceOf(Fate.Survives.class);
    }

    @Test
    void a_part_is_watched_over_by_the_rehearsals_of_every_procedure_that_uses_it() {
        Shelf shelf = Shelf.of(Map.of("flips.inspection", ONE_LIMIT.replaceFirst("(?m)^procedure.*\n", "")));
        String header = "procedure %s \"A trial\" revision 1\nuse \"flips.inspection\"\n";
        Watched one = watched(
                "one.inspection",
                header.formatted("one") + rehearsal("four", "  enter flips 4\n  expect few passes\n"),
                shelf);
        Watched two = watched(
                "two.inspection",
                header.formatted("two") + rehearsal("five", "  enter flips 5\n  expect release reject\n"),
                shelf);

        assertThat(MutantReport.of(List.of(one)).surviving()).isNotEmpty();
        assertThat(MutantReport.of(List.of(two)).surviving()).isNotEmpty();
        assertThat(MutantReport.of(List.of(one, two)).surviving()).isEmpty();
    }

    @Test
    void what_is_accepted_has_a_reason_and_survives() {
        MutantReport report = MutantReport.of(List.of(watched(
                ONE_LIMIT + rehearsal("four will do", "  enter flips 4\n  expect few passes, release ready\n"))));
        Accepted accepted = Accepted.of(SourceText.of("accepted.txt", """
                // Ours.
                trial.inspection check few: 4 -> 5 because the engine decides, not the count
                trial.inspection check few: 4 -> 3 because it does

                trial.inspection check few: 4 -> 6 because it is none
                trial.inspection check few: critical -> major
                """));

        assertThat(report.surviving().stream().flatMap(each -> accepted.reason(each.mutant()).stream()))
                .containsExactly("the engine decides, not the count");
        assertThat(accepted.problemsWith(report))
                .extracting(
                        each -> each.code() + " " + each.source().at(each.span().start()), Diagnostic::message)
                .containsExactly(
                        tuple("LP741 3:1", "no such mutant survives: the rehearsal \"four will do\" notices it"),
                        tuple("LP741 5:1", "no such mutant survives; none of these procedures has one of this name"),
                        tuple("LP740 6:1", "this line gives no reason"));
    }
}
