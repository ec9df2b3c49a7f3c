package io.github.leafproof.dsl.assertions;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Report;

/**
 * Where statements about reports begin. To be imported beside AssertJ's own:
 *
 * <pre>
 * assertThat(report).isHeld().check("lash_within[intake]").isOpen().advises("0.08 mm");
 * </pre>
 */
public final class InspectionAssertions {

    private InspectionAssertions() {}

    /** States something about a report. */
    public static ReportAssert assertThat(Report report) {
        return new ReportAssert(report);
    }

    /** States something about a judgement, as its report has it. */
    public static ReportAssert assertThat(Judgement judgement) {
        return new ReportAssert(Reporting.of(judgement));
    }
}
