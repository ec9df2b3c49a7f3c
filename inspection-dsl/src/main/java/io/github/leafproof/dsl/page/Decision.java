package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.div;
import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.item;
import static io.github.leafproof.dsl.html.Html.link;
import static io.github.leafproof.dsl.html.Html.list;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.figure.OutcomeMark;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.report.TextReport;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What the owner wants to know: released or not, and why; which engine, when, and by whom. */
final class Decision {

    private static final int MOST_NAMED = 6;

    private Decision() {}

    static Element of(Judgement judgement, Report report) {
        Release release = report.release();
        Element said = p(
                        OutcomeMark.of(release),
                        strong(release.word().toUpperCase(Locale.ROOT)),
                        words(" " + released(release)))
                .style("decision " + like(release).word());
        return element(
                "header",
                heading(1, report.procedure().title()),
                div(said, p(report.releaseReason()).style("why")).style("verdict"),
                facts(judgement, report),
                outcomes(report));
    }

    /** The outcome whose mark and colour a release shares. */
    private static Outcome like(Release release) {
        return switch (release) {
            case READY -> Outcome.PASSES;
            case HOLD -> Outcome.OPEN;
            case REJECT -> Outcome.FAILS;
            case UNFINISHED -> Outcome.UNTESTED;
        };
    }

    private static String released(Release release) {
        return switch (release) {
            case READY -> "This engine is released.";
            case HOLD -> "This engine is not released: it is held.";
            case REJECT -> "This engine is not released: it is rejected as it is.";
            case UNFINISHED -> "This engine is not released: the inspection is not finished.";
        };
    }

    private static Element facts(Judgement judgement, Report report) {
        Report.Engine engine = report.engine();
        JobSheet sheet = judgement.evidence().files().sheet().content();
        List<Part> facts = new ArrayList<>();
        fact(facts, "Engine", TextReport.model(engine.maker(), engine.model()));
        fact(facts, "Serial number", engine.serial());
        fact(facts, "Variant", engine.variant());
        fact(facts, "Came in as", engine.condition());
        fact(facts, "Owner or job", sheet.engine().owner());
        fact(
                facts,
                "Had run",
                sheet.runningTime() == null ? null : sheet.runningTime().toString());
        fact(facts, "Sheet", sheet.sheet());
        fact(facts, "Date", report.date().toString());
        fact(facts, "Entered by", by(sheet));
        Report.Procedure procedure = report.procedure();
        fact(facts, "Procedure", procedure.name() + ", revision " + procedure.revision());
        return element("dl", facts).style("facts");
    }

    private static void fact(List<Part> facts, String name, @Nullable String words) {
        if (words != null && !words.isBlank()) {
            facts.add(div(element("dt", name), element("dd", words)));
        }
    }

    private static String by(JobSheet sheet) {
        List<String> names = sheet.entries().stream()
                .map(Entry::by)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return names.isEmpty() ? "the sheet does not say" : String.join(", ", names);
    }

    /** How many checks came out how, and which of them are in the way. */
    private static Element outcomes(Report report) {
        List<Element> items = new ArrayList<>();
        for (Outcome outcome : inOrderOfWeight()) {
            List<Report.Check> checks = report.checks().stream()
                    .filter(check -> check.outcome() == outcome)
                    .toList();
            if (!checks.isEmpty()) {
                items.add(outcome(outcome, checks));
            }
        }
        return list(items).style("outcomes");
    }

    private static List<Outcome> inOrderOfWeight() {
        return List.of(
                Outcome.FAILS,
                Outcome.CONTRADICTED,
                Outcome.OPEN,
                Outcome.UNTESTED,
                Outcome.BLOCKED,
                Outcome.TOLERATED,
                Outcome.PASSES,
                Outcome.NOT_APPLICABLE);
    }

    private static String counted(Outcome outcome, int count) {
        String several = switch (outcome) {
            case PASSES -> "pass";
            case FAILS -> "fail";
            default -> Ink.of(outcome).word();
        };
        return count + " " + (count == 1 ? Ink.of(outcome).word() : several);
    }

    private static Element outcome(Outcome outcome, List<Report.Check> checks) {
        List<Part> parts = new ArrayList<>(List.of(
                OutcomeMark.of(outcome), span(counted(outcome, checks.size())).style("said " + outcome.word())));
        boolean quiet = outcome == Outcome.PASSES || outcome == Outcome.NOT_APPLICABLE;
        for (int i = 0; i < checks.size() && !quiet && i < MOST_NAMED; i++) {
            parts.add(words(i == 0 ? ": " : "; "));
            parts.add(link(
                    "#" + EvidenceTable.id(checks.get(i)), words(checks.get(i).title())));
        }
        if (!quiet && checks.size() > MOST_NAMED) {
            parts.add(words("; and " + (checks.size() - MOST_NAMED) + " more"));
        }
        return item(parts.toArray(Part[]::new));
    }
}
