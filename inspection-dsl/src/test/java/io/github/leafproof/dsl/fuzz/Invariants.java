package io.github.leafproof.dsl.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.BothJudges;
import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticJson;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.record.ReportFile;
import java.util.List;

/** What holds whatever is compiled, and whatever is judged. */
final class Invariants {

    private Invariants() {}

    /** A text compiles or is refused, with messages that stand at places of this text, and the same ones each time. */
    static Compiled compiled(String text) {
        return compiled(SourceText.of("any", text), Shelf.empty());
    }

    /** The same of a text and the files that it uses. */
    static Compiled compiled(SourceText text, Shelf shelf) {
        Compiled compiled = Procedure.compile(text, shelf);
        List<Diagnostic> diagnostics = compiled.diagnostics();

        assertThat(compiled.procedure().isEmpty())
                .isEqualTo(diagnostics.stream().anyMatch(Diagnostic::isError));
        assertSaid(diagnostics);
        assertThat(DiagnosticJson.write(Procedure.compile(text, shelf).diagnostics()))
                .isEqualTo(DiagnosticJson.write(diagnostics));
        return compiled;
    }

    /** Messages stand file by file, in the order of each text, at places in it, and can be shown. */
    static void assertSaid(List<Diagnostic> diagnostics) {
        List<SourceText> files =
                diagnostics.stream().map(Diagnostic::source).distinct().toList();
        assertThat(diagnostics).isSortedAccordingTo(Diagnostic.inOrderOf(files));
        for (Diagnostic diagnostic : diagnostics) {
            assertInside(diagnostic.span());
            diagnostic.labels().forEach(label -> assertInside(label.span()));
        }
        assertThat(DiagnosticPrinter.print(diagnostics, true)).doesNotContain("Exception");
    }

    private static void assertInside(Span span) {
        int length = span.source().text().length();
        assertThat(span.start()).isBetween(0, length);
        assertThat(span.end()).isBetween(span.start(), length);
    }

    /** Evidence is judged, or refused with reasons; the report can be read back, and is the same each time. */
    static void assertJudged(Read<Evidence> evidence) {
        assertThat(evidence.problems()).extracting(Problem::message).doesNotContain("");
        evidence.value().ifPresent(sound -> {
            Report report = report(sound, UnitSystem.METRIC);
            String json = ReportFile.toJson(report);
            assertThat(ReportFile.toJson(report(sound, UnitSystem.METRIC))).isEqualTo(json);
            assertThat(ReportFile.parse("report.json", json.getBytes(UTF_8))
                            .orElseThrow()
                            .content())
                    .isEqualTo(report);
            assertThat(TextReport.of(report, false)).contains("Release: ");
        });
    }

    private static Report report(Evidence evidence, UnitSystem units) {
        Judgement judgement = BothJudges.judge(evidence, units);
        Report report = Reporting.of(judgement);
        for (Report.Check check : report.checks()) {
            Report.Probability p = check.probability();
            if (p != null) {
                assertThat(p.low()).isBetween(0.0, p.high());
                assertThat(p.high()).isLessThanOrEqualTo(1.0);
            }
        }
        return report;
    }
}
