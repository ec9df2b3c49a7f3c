package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.listOfWords;
import static io.github.leafproof.dsl.html.Html.section;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.record.Report;
import java.util.List;

/** What whoever goes on with the engine has to mind, before anything else is said of the work. */
final class Precautions {

    private Precautions() {}

    static List<Element> of(Report report) {
        return List.of(
                section("cautions", heading(2, "Before anybody goes on"), List.of(listOfWords(report.cautions())))
                        .style("cautions"));
    }
}
