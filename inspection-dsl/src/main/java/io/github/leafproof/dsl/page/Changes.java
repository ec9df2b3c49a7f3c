package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.listOfWords;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.html.Table;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Report;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** What was changed: the engine, from as found to as left, and the sheet, where a slip of the pen was put right. */
final class Changes {

    private Changes() {}

    static List<Element> of(Judgement judgement, Report report) {
        List<Element> sections = new ArrayList<>();
        List<Report.Check> adjusted = report.checks().stream()
                .filter(check -> check.asFound() != null)
                .toList();
        if (!adjusted.isEmpty()) {
            Table table = Table.of("Checks as found and as left", "Check", "As found", "As left")
                    .cards();
            adjusted.forEach(check -> table.row(words(check.title()), asFound(check), asLeft(check)));
            sections.add(section("adjusted", heading(2, "Adjusted"), List.of(table.element())));
        }
        List<String> slips = slips(judgement);
        if (!slips.isEmpty()) {
            sections.add(section("slips", heading(2, "Slips of the pen"), List.of(listOfWords(slips))));
        }
        return sections;
    }

    private static Part asFound(Report.Check check) {
        Report.AsFound found = Objects.requireNonNull(check.asFound());
        return span(EvidenceTable.said(found.outcome()), words(found.value() == null ? "" : " " + found.value()));
    }

    private static Part asLeft(Report.Check check) {
        return span(EvidenceTable.said(check.outcome()), words(check.value() == null ? "" : " " + check.value()));
    }

    private static List<String> slips(Judgement judgement) {
        List<String> slips = new ArrayList<>();
        for (Node.Observation observation : judgement.graph().observations()) {
            for (Evidence.Statement statement : judgement.evidence().statements(observation)) {
                if (statement.corrected()) {
                    Entry entry = statement.entry();
                    slips.add(observation.name() + ": " + Shown.measured(statement.value(), judgement.units())
                            + signed(entry) + " was a slip of the pen, corrected by a later entry");
                }
            }
        }
        return slips;
    }

    /** By whom, and when, as far as an entry says. */
    static String signed(Entry entry) {
        String by = entry.by() == null ? "" : ", by " + entry.by();
        return by + (entry.at() == null ? "" : ", " + entry.at());
    }
}
