package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;

/**
 * A session's sheet as it was handed over.
 *
 * @param sheet as its file says it, with the digest of the file's bytes
 * @param judgement the judgement on just this sheet
 */
public record Finished(Document<JobSheet> sheet, Judgement judgement) {

    /** The report of the judgement. */
    public Report report() {
        return Reporting.of(judgement);
    }
}
