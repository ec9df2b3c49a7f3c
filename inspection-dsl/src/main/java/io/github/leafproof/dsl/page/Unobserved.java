package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.listOfWords;
import static io.github.leafproof.dsl.html.Html.section;

import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.List;

/** What somebody tried to observe and could not, and why. */
final class Unobserved {

    private Unobserved() {}

    static List<Element> of(Judgement judgement) {
        List<String> tried = new ArrayList<>();
        for (Node.Observation observation : judgement.graph().observations()) {
            for (Evidence.Statement statement : judgement.evidence().statements(observation)) {
                if (statement.entry().given() instanceof Given.Cannot cannot && !statement.corrected()) {
                    tried.add(observation.name() + ": " + cannot.why() + Changes.signed(statement.entry()));
                }
            }
        }
        return tried.isEmpty()
                ? List.of()
                : List.of(section("unobserved", heading(2, "What could not be observed"), List.of(listOfWords(tried))));
    }
}
