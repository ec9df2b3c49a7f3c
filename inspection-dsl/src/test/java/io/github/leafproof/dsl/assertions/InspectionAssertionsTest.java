package io.github.leafproof.dsl.assertions;

import static io.github.leafproof.dsl.assertions.InspectionAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.leafproof.dsl.Golden;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.SheetFile;
import io.github.leafproof.inspection.record.TrayFile;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What a test can state of a report, on the bench of the examples; and what its writer reads when that is not so. */
class InspectionAssertionsTest {

    private static final Path BENCH = Path.of("..", "examples", "bench");

    /** The leaf marked 0.10 measures 0.110 mm, so that it says nothing about 0.10 mm. */
    private static final Report TRAP = judged("""
            enter lash passes "0.05" refuses "0.10", wide passes "0.10+0.06", thin refuses "0.03"
            enter head 24 degC, dry no, flips 3
            """);

    private static Report judged(String enter) {
        String text = """
                procedure trial "A trial" revision 1
                gauge leaves : leaf set
                gauge infrared : reading of temperature
                observe lash : gap with leaves ask "Lash"
                observe wide : gap with leaves ask "A wide one"
                observe thin : gap with leaves ask "A thin one"
                observe head : temperature with infrared ask "Head"
                observe dry : yes/no ask "Dry?"
                observe flips : count ask "Flips"
                observe smell : yes/no ask "Smell?"
                check cold "Cold" { require head at most 25 degC }
                check dry_inside "Dry" gate { require dry   if fails advise "Oil it." }
                check oiled "Oiled" { after dry_inside   require flips at most 4 }
                check smells "Smell" { require smell }
                check turns "Turns" { require flips at most 4 }
                check stands "Stands" { when flips at least 9 require dry }
                check inside "Lash" critical {
                  require lash between 0.03 mm and 0.10 mm
                  if open advise next_leaf(lash, 0.03 mm, 0.10 mm)
                }
                check wide_inside "Wide" { require wide between 0.03 mm and 0.10 mm }
                check thin_inside "Thin" { require thin between 0.04 mm and 0.10 mm }
                rehearse "it" {
                  engine "cards/quillan-15.json" variant "late cam"
                  gauges "trays/bench-one.json"
                """ + enter + "  expect turns passes\n}\n";
        return Reporting.of(Rehearsing.of(
                        Procedure.compile(SourceText.of("trial.inspection", text))
                                .orElseThrow(),
                        BENCH)
                .play()
                .get(0)
                .judgement()
                .orElseThrow());
    }

    @Test
    void a_report_is_told_check_by_check() {
        assertThat(TRAP)
                .isHeld()
                .hasRelease(Release.HOLD)
                .hasOpen("inside")
                .hasFailing("wide_inside", "dry_inside", "thin_inside")
                .hasUntested("smells")
                .hasCaution("instructions")
                .hasNote("decided at 95 % confidence")
                .hasNextStep("Offer 0.05 + 0.04 mm")
                .check("inside")
                .isOpen()
                .isMissingNothing()
                .holdsWithAtLeast(0)
                .holdsWithAtMost(1)
                .hasEvidence("leaf 0.10 mm, measured 0.1100 mm")
                .advises("0.05 + 0.04 mm")
                .check("wide_inside")
                .failsHigh()
                .check("thin_inside")
                .failsLow()
                .check("dry_inside")
                .fails()
                .advises("Oil it.")
                .check("oiled")
                .isBlocked()
                .isMissing("dry_inside")
                .check("smells")
                .isUntested()
                .isMissing("smell was not entered")
                .check("stands")
                .isNotApplicable()
                .advisesNothing()
                .check("turns")
                .passes()
                .and()
                .isHeld();
    }

    @Test
    void an_adjustment_is_told_as_it_was_found() {
        Report adjusted = Procedure.read(BENCH.resolve("first_look.inspection"))
                .orElseThrow()
                .judge(
                        CardFile.read(BENCH.resolve("cards/quillan-15.json")).orElseThrow(),
                        TrayFile.read(BENCH.resolve("trays/bench-one.json")).orElseThrow(),
                        SheetFile.read(BENCH.resolve("sheets/0417-adjusted.json"))
                                .orElseThrow(),
                        UnitSystem.METRIC)
                .orElseThrow();
        String name = adjusted.checks().stream()
                .filter(check -> check.asFound() != null && check.asFound().outcome() == Outcome.FAILS)
                .findFirst()
                .orElseThrow()
                .name();

        assertThat(adjusted).isReady().check(name).passes().wasFound(Outcome.FAILS);
        assertThat(catchThrowable(() -> assertThat(adjusted).check(name).wasFound(Outcome.OPEN)))
                .hasMessageContaining("expected " + name + " to be found open, and it was found fails");
    }

    /** Each statement that is not so, and what is said of it. */
    @Test
    void a_statement_that_is_not_so_teaches() {
        Map<String, ThrowingCallable> wrong = new LinkedHashMap<>();
        wrong.put("a misspelt check", () -> assertThat(TRAP).check("insyde"));
        wrong.put("an unknown check", () -> assertThat(TRAP).check("compression"));
        wrong.put("a release", () -> assertThat(TRAP).isReady());
        wrong.put("another release", () -> assertThat(TRAP).isRejected());
        wrong.put("unfinished", () -> assertThat(TRAP).isUnfinished());
        wrong.put("an outcome", () -> assertThat(TRAP).check("inside").passes());
        wrong.put("tolerated", () -> assertThat(TRAP).check("wide_inside").isTolerated());
        wrong.put("contradicted", () -> assertThat(TRAP).check("oiled").isContradicted());
        wrong.put("a side", () -> assertThat(TRAP).check("wide_inside").failsLow());
        wrong.put("no side", () -> assertThat(TRAP).check("dry_inside").failsHigh());
        wrong.put("a probability", () -> assertThat(TRAP).check("inside").holdsWithAtLeast(0.5));
        wrong.put("a lesser probability", () -> assertThat(TRAP).check("turns").holdsWithAtMost(0.9));
        wrong.put("nothing judged", () -> assertThat(TRAP).check("smells").holdsWithAtLeast(0.5));
        wrong.put("something missing", () -> assertThat(TRAP).check("smells").isMissing("head"));
        wrong.put("nothing missing", () -> assertThat(TRAP).check("smells").isMissingNothing());
        wrong.put("advice", () -> assertThat(TRAP).check("inside").advises("0.08 mm"));
        wrong.put("no advice", () -> assertThat(TRAP).check("dry_inside").advisesNothing());
        wrong.put("evidence", () -> assertThat(TRAP).check("turns").hasEvidence("leaf"));
        wrong.put("a note on a check", () -> assertThat(TRAP).check("turns").hasNote("leaf"));
        wrong.put("a caution of a check", () -> assertThat(TRAP).check("turns").cautions("hot"));
        wrong.put("never adjusted", () -> assertThat(TRAP).check("turns").wasFound(Outcome.FAILS));
        wrong.put("just these fail", () -> assertThat(TRAP).hasFailing("wide_inside", "inside"));
        wrong.put("none fails", () -> assertThat(TRAP).hasFailing());
        wrong.put("a next step", () -> assertThat(TRAP).hasNextStep("propeller"));
        wrong.put("a note", () -> assertThat(TRAP).hasNote("propeller"));

        String told = wrong.entrySet().stream()
                .map(each -> "## " + each.getKey() + "\n" + message(each.getValue()) + "\n")
                .collect(Collectors.joining("\n"));

        Golden.hold("assertions/wrong", told);
    }

    private static String message(ThrowingCallable statement) {
        Throwable thrown = catchThrowable(statement);
        return thrown == null
                ? "(nothing)"
                : String.valueOf(thrown.getMessage()).strip();
    }

    @Test
    void a_loops_check_without_its_round_is_told_which_rounds_there_are() {
        Report loop = Reporting.of(Rehearsing.of(
                        Procedure.compile(SourceText.of("loop.inspection", """
                                procedure loop "Loop" revision 1
                                for valve in intake, exhaust {
                                  observe free[valve] : yes/no ask "{valve} free?"
                                  check turns[valve] "{valve}" { require free[valve] }
                                }
                                rehearse "it" {
                                  engine "cards/quillan-15.json" gauges "trays/bench-one.json"
                                  enter free[intake] yes
                                  expect turns[intake] passes
                                }
                                """)).orElseThrow(), BENCH)
                .play()
                .get(0)
                .judgement()
                .orElseThrow());

        assertThat(loop).check("turns[intake]").passes();
        assertThat(catchThrowable(() -> assertThat(loop).check("turns")))
                .hasMessageContaining("loop has no check called turns; did you mean turns[intake] or turns[exhaust]?");
    }
}
