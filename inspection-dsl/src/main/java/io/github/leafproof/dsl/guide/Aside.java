package io.github.leafproof.dsl.guide;

import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.reckon.Reckoned;
import io.github.leafproof.dsl.reckon.Reckoner;
import io.github.leafproof.dsl.report.Lines;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.dsl.session.Finished;
import io.github.leafproof.dsl.session.Session;
import io.github.leafproof.dsl.session.Standing;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.record.Report;
import java.util.Locale;

/** What can be had at any prompt without getting on: help, the report as it stands, the calculator; and the last word. */
final class Aside {

    /** More than these at the end is read in the report. */
    private static final int MOST_NEXT = 5;

    private final Session session;
    private Reckoner reckoner;
    private int reckonedLines;

    Aside(Session session) {
        this.session = session;
        Standing standing = session.standing();
        this.reckoner = Reckoner.in(standing.inspector().units())
                .with(
                        standing.basis().card().content(),
                        standing.heading().engine().variant());
    }

    String help(Look look) {
        Lines lines = look.lines();
        lines.block("", "Type what is asked for, or one of these:");
        for (Command command : Command.values()) {
            lines.block(String.format(Locale.ROOT, "  %-8s", command.word()), command.meaning());
        }
        lines.block("  = 4 thou + 1 thou  ", "reckons; engine.lash_max and the like are known");
        lines.block(
                "",
                "An empty line says that the bench is as the step wants it, and leaves as it is what one went back to. Behind // stands a remark on the entry.");
        return lines.toString();
    }

    String report(Look look) {
        return TextReport.of(session.standing().report(), look.colour());
    }

    String reckon(String expression, Look look) {
        reckonedLines++;
        Reckoned reckoned = reckoner.reckon(SourceText.fromLine(reckonedLines, "reckoned", expression.strip()));
        if (reckoned instanceof Reckoned.Refused refused) {
            return DiagnosticPrinter.print(refused.diagnostics(), look.colour());
        }
        Lines lines = look.lines();
        if (reckoned instanceof Reckoned.Answer answer) {
            reckoner = answer.after();
            lines.block("  = ", answer.words());
        } else if (reckoned instanceof Reckoned.Unanswered unanswered) {
            return look.unclear(unanswered.why(), "");
        }
        return lines.toString();
    }

    /** What it came to, what is next, and where everything is. */
    String handedOver(Finished finished, String files, Look look) {
        Report report = finished.report();
        Lines lines = look.lines();
        lines.line("");
        lines.line(look.paint()
                .release(report.release(), "Release: " + report.release().word().toUpperCase(Locale.ROOT)));
        lines.block("", report.releaseReason());
        lines.line("");
        int number = 1;
        for (Report.Step step :
                report.next().subList(0, Math.min(MOST_NEXT, report.next().size()))) {
            lines.line(number == 1 ? "Next:" : "");
            step.cautions().forEach(caution -> lines.block("     CAUTION ", caution));
            lines.block(String.format(Locale.ROOT, "  %2d. ", number), step.step());
            number++;
        }
        if (report.next().size() > MOST_NEXT) {
            lines.block("      ", "and " + (report.next().size() - MOST_NEXT) + " more, which the report has");
        }
        return lines + (number > 1 ? "\n" : "") + files;
    }
}
