package io.github.leafproof.dsl.page;

import io.github.leafproof.dsl.draw.SvgDrawing;
import io.github.leafproof.dsl.figure.FigureStyle;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Html;
import io.github.leafproof.dsl.html.Page;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Report;
import java.util.List;
import java.util.stream.Stream;

/**
 * The report of one engine as a page: one file that loads nothing and runs nothing, for a screen, a phone and paper.
 *
 * <p>Numbers are in the units that the judgement was made for; all of them are the judgement's own.
 */
public final class ReportPage {

    private ReportPage() {}

    /**
     * The page's text, lines ending in {@code \n}; the same judgement gives the same text on every machine.
     *
     * @param judgement what the inspection came to, finished or not
     */
    public static String of(Judgement judgement) {
        return of(judgement, Reporting.of(judgement));
    }

    /**
     * The same where the report was made already, which is the larger part of the work.
     *
     * @param report the report of this judgement
     */
    public static String of(Judgement judgement, Report report) {
        List<Element> main = Stream.of(
                        Precautions.of(report),
                        NextThings.of(report),
                        Pictures.of(judgement, report),
                        Drawing.of(judgement),
                        EvidenceTable.of(report),
                        Gauges.of(judgement),
                        Changes.of(judgement, report),
                        Unobserved.of(judgement),
                        Remarks.of(report),
                        Sources.of(report))
                .flatMap(List::stream)
                .toList();
        String title = report.release().word() + ": " + engine(report) + ", "
                + report.procedure().title();
        return new Page(
                        title,
                        FigureStyle.CSS + SvgDrawing.STYLE + PageStyle.CSS,
                        List.of(Decision.of(judgement, report), Html.element("main", main), Sources.footer(report)))
                .text();
    }

    private static String engine(Report report) {
        Report.Engine engine = report.engine();
        return engine.serial() == null ? report.sheet().name() : engine.serial();
    }
}
