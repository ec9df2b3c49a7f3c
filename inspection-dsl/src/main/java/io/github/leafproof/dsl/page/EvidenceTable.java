package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.div;
import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.listOfWords;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.figure.OutcomeMark;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Ink;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.html.Table;
import io.github.leafproof.dsl.report.Reporting;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;

/** Every check with all that there is to say of it, stage by stage. */
final class EvidenceTable {

    private EvidenceTable() {}

    static List<Element> of(Report report) {
        Table table = Table.of("Every check, stage by stage", "Check", "Outcome", "Required", "Found", "Evidence")
                .cards();
        String stage = "";
        for (Report.Check check : report.checks()) {
            String here = check.stage() == null ? "" : check.stage();
            if (!here.equals(stage)) {
                table.group(here);
                stage = here;
            }
            table.row("check", id(check), title(check), outcome(check), required(check), found(check), evidence(check));
        }
        return List.of(section(
                "evidence",
                heading(2, "Evidence, check by check"),
                List.of(table.element().style("cards evidence"))));
    }

    /** Where the page tells of a check. */
    static String id(Report.Check check) {
        return "check-" + check.name().replaceAll("[^A-Za-z0-9_]+", "-");
    }

    private static Part title(Report.Check check) {
        String weight = check.severity().word() + (check.gate() ? ", gate" : "");
        return div(words(check.title()), p(check.name() + " · " + weight).style("quiet"));
    }

    private static Part outcome(Report.Check check) {
        List<Part> parts = new ArrayList<>(List.of(said(check.outcome())));
        if (check.asFound() != null) {
            parts.add(p("As found: " + Ink.of(check.asFound().outcome()).word()));
        }
        return div(parts.toArray(Part[]::new));
    }

    /** An outcome by mark and word. */
    static Element said(Outcome outcome) {
        return span(OutcomeMark.of(outcome), words(Ink.of(outcome).word())).style("said " + outcome.word());
    }

    private static Part required(Report.Check check) {
        List<Part> parts = new ArrayList<>();
        if (check.requirement() != null) {
            parts.add(p(check.requirement()));
        }
        check.because().forEach(reason -> parts.add(p(reason).style("quiet")));
        return div(parts.toArray(Part[]::new));
    }

    private static Part found(Report.Check check) {
        List<Part> parts = new ArrayList<>();
        if (check.value() != null) {
            parts.add(p(check.value()));
        }
        if (check.asFound() != null && check.asFound().value() != null) {
            parts.add(p("As found: " + check.asFound().value()));
        }
        if (check.probability() != null && !isCertain(check.probability())) {
            String probability = Reporting.probabilityWords(
                    check.probability().low(), check.probability().high());
            parts.add(p("Probability of conforming: " + probability).style("quiet"));
        }
        return div(parts.toArray(Part[]::new));
    }

    /** Whether there is nothing to weigh: a yes or a no, or something counted. */
    private static boolean isCertain(Report.Probability probability) {
        return probability.low() == probability.high() && (probability.low() == 0 || probability.low() == 1);
    }

    private static Part evidence(Report.Check check) {
        List<String> lines = new ArrayList<>();
        check.missing().forEach(missing -> lines.add("Missing: " + missing));
        check.evidence().stream()
                .filter(evidence -> check.missing().stream().noneMatch(evidence::startsWith))
                .forEach(lines::add);
        check.notes().forEach(note -> lines.add("Note: " + note));
        List<Part> parts = new ArrayList<>();
        if (!lines.isEmpty()) {
            parts.add(listOfWords(lines));
        }
        if (!check.advice().isEmpty()) {
            check.cautions().forEach(caution -> parts.add(NextThings.caution(caution)));
            check.advice().forEach(advice -> parts.add(p(strong("Advice: "), words(advice))));
        }
        return div(parts.toArray(Part[]::new));
    }
}
