package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Explaining;
import io.github.leafproof.dsl.report.Explanation;
import io.github.leafproof.dsl.report.ExplanationJson;
import io.github.leafproof.dsl.report.ExplanationText;
import io.github.leafproof.inspection.record.Report;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the bench's verdicts rest on, explained to the last step; a person has read each of these texts. */
class ExplanationsTest {
    private static final Path EXPECTED = Project.BENCH.resolve("expected/explained");

    private static Node.Check check(String name) {
        return (Node.Check) Bench.FIRST_LOOK.graph().node(name).orElseThrow();
    }

    /** One check for each kind of evidence and each outcome; what decides on each sheet is among them. */
    @ParameterizedTest
    @CsvSource({
        "0411-clean, high_needle_start",
        "0411-clean, throttle_works",
        "0411-clean, not_opened",
        "0412-trap, lash_within[intake]",
        "0412-trap, primes",
        "0413-warm, cold",
        "0413-warm, gear_oiled",
        "0413-warm, lash_within[intake]",
        "0414-leak, column_stands",
        "0415-unfinished, lash_within[exhaust]",
        "0416-contradiction, lash_within[intake]",
        "0417-adjusted, lash_within[intake]",
        "0418-plastic-arm, low_needle_datum"
    })
    void a_verdict_is_explained_as_a_person_has_read_it(String sheet, String name) throws IOException {
        Explanation explanation = Explaining.of(Bench.judgement(sheet + ".json"), check(name));

        Golden.holds(
                EXPECTED.resolve(sheet + "-" + name.replaceAll("\\W", "-").replaceAll("-$", "") + ".txt"),
                ExplanationText.of(explanation, false));
    }

    @Test
    void without_an_engine_every_check_of_the_procedure_tells_what_it_rests_on() throws IOException {
        String all = Bench.FIRST_LOOK.graph().checks().stream()
                .map(check -> ExplanationText.of(Explaining.of(Bench.FIRST_LOOK.graph(), check), false))
                .collect(Collectors.joining("\n----\n\n"));

        Golden.holds(EXPECTED.resolve("first_look.txt"), all);
    }

    @Test
    void programs_are_told_the_same() throws IOException {
        Explanation judged = Explaining.of(Bench.judgement("0413-warm.json"), check("cold"));
        Explanation general = Explaining.of(Bench.FIRST_LOOK.graph(), check("low_needle_datum"));

        Golden.holds(EXPECTED.resolve("0413-warm-cold.json"), ExplanationJson.write(judged));
        Golden.holds(EXPECTED.resolve("low_needle_datum.json"), ExplanationJson.write(general));
    }

    @ParameterizedTest
    @MethodSource("io.github.leafproof.examples.BenchSheetsTest#sheets")
    void every_verdict_of_every_sheet_is_explained_and_says_what_the_report_says(String sheet) {
        Judgement judgement = Bench.judgement(sheet);
        Report report = Bench.judge(sheet);
        for (Node.Check check : judgement.graph().checks()) {
            Explanation explanation = Explaining.of(judgement, check);
            Report.Check judged = Objects.requireNonNull(explanation.judged()).check();
            assertThat(judged).isEqualTo(report.checks().get(check.number()));
            assertThat(ExplanationText.of(explanation, false))
                    .contains(judged.outcome().word().replace('_', ' ').toUpperCase(Locale.ROOT));
        }
    }
}
