package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.item;
import static io.github.leafproof.dsl.html.Html.ordered;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.inspection.record.Report;
import java.util.ArrayList;
import java.util.List;

/** What is worth doing next, in bench order; each step's cautions stand before it. */
final class NextThings {

    private NextThings() {}

    static List<Element> of(Report report) {
        if (report.next().isEmpty()) {
            return List.of();
        }
        return List.of(section(
                "next",
                heading(2, "What to do next"),
                List.of(ordered(report.next().stream().map(NextThings::step).toList())
                        .style("steps"))));
    }

    private static Element step(Report.Step step) {
        List<Part> parts = new ArrayList<>();
        step.cautions().forEach(caution -> parts.add(caution(caution)));
        parts.add(p(step.step()));
        return item(parts.toArray(Part[]::new));
    }

    /** A caution as it stands before a step. */
    static Element caution(String caution) {
        return p(strong("Caution: "), words(caution)).style("caution");
    }
}
