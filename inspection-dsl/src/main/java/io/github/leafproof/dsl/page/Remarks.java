package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.listOfWords;
import static io.github.leafproof.dsl.html.Html.section;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.record.Report;
import java.util.List;

/** How sure was sure enough, and what a reader should know of the evidence. */
final class Remarks {

    private Remarks() {}

    static List<Element> of(Report report) {
        return report.notes().isEmpty()
                ? List.of()
                : List.of(section("notes", heading(2, "Notes"), List.of(listOfWords(report.notes()))));
    }
}
