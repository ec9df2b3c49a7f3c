package io.github.leafproof.dsl.workcard;

import static io.github.leafproof.dsl.html.Html.element;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.span;
import static io.github.leafproof.dsl.html.Html.tick;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Room on paper for what is found in one step: a line with its unit, boxes for the answers that there are, a row for each
 * leaf of the set.
 */
record EntryRoom(WorkCard.Step step, UnitSystem units) {

    private static final int READINGS = 6;
    private static final int STACKS = 2;

    List<Part> parts() {
        Type type = step.type();
        if (type instanceof Type.Gap && step.gauge() instanceof FeelSet set) {
            return List.of(with(set.name()), trials(set));
        }
        if (type instanceof Type.YesNo) {
            return List.of(boxes(List.of("yes", "no")));
        }
        if (type instanceof Type.Choice choice) {
            return List.of(boxes(choice.options()));
        }
        if (type instanceof Type.Items) {
            return List.of(p(span().style("blank long")), p(span().style("blank long")));
        }
        if (type instanceof Type.Series series) {
            List<Part> readings = new ArrayList<>();
            for (int i = 0; i < READINGS; i++) {
                readings.add(span().style("blank"));
            }
            readings.add(words(" " + unit(series.of())));
            return List.of(with(taken()), element("p", readings));
        }
        boolean longer = type instanceof Type.Text;
        return List.of(p(
                span().style(longer ? "blank long" : "blank"),
                words(" " + unit(type) + (taken().isEmpty() ? "" : ", with " + taken()))));
    }

    private Element boxes(List<String> answers) {
        List<Part> parts = new ArrayList<>();
        answers.forEach(answer ->
                parts.add(span(tick(), words(" " + CardLines.plain(answer))).style("answer")));
        return element("p", parts);
    }

    private static Element with(String gauge) {
        return p(gauge.isEmpty() ? "" : "with " + gauge).style("small");
    }

    /** The gauge to take, and how fine it shows. */
    private String taken() {
        Gauge gauge = step.gauge();
        if (gauge == null) {
            return "";
        }
        return gauge instanceof ReadingInstrument instrument && instrument.resolution() != null
                ? gauge.name() + " (shows " + instrument.resolution() + ")"
                : gauge.name();
    }

    private String unit(Type type) {
        if (type instanceof Type.Measure measure) {
            Dimension dimension = measure.dimension();
            return dimension.isRatio()
                    ? ""
                    : shownBy(dimension)
                            .orElseGet(() -> units.unitFor(dimension, 0).toString());
        }
        if (type instanceof Type.Count) {
            return "(a whole number)";
        }
        return type instanceof Type.Date ? "(year-month-day)" : "";
    }

    /** The unit that the gauge itself shows, where the reader likes it. */
    private Optional<String> shownBy(Dimension dimension) {
        return step.gauge() instanceof ReadingInstrument instrument
                ? Optional.ofNullable(instrument.resolution())
                        .map(Quantity::unit)
                        .filter(unit -> unit.dimension().equals(dimension) && units.isAtHome(unit))
                        .map(Object::toString)
                : Optional.empty();
    }

    /** Every leaf of the set, with what it is known to measure; stacks are written in below. */
    private Element trials(FeelSet set) {
        List<String> results =
                Arrays.stream(TrialResult.values()).map(TrialResult::word).toList();
        List<Part> rows = new ArrayList<>();
        for (Leaf leaf : set.leaves()) {
            String measured = leaf.measured() == null ? "not measured" : Display.of(leaf.thickness(), units);
            rows.add(row(leaf.label(), words(measured), results.size()));
        }
        if (set instanceof LeafSet) {
            for (int i = 0; i < STACKS; i++) {
                rows.add(row("stack", span().style("blank"), results.size()));
            }
        }
        List<Part> heads = new ArrayList<>();
        Stream.concat(Stream.of("marked", "measures"), results.stream())
                .forEach(head -> heads.add(element("th", head).with("scope", "col")));
        return element("table", element("thead", element("tr", heads)), element("tbody", rows))
                .style("trials");
    }

    private static Element row(String marked, Part measured, int results) {
        List<Part> cells =
                new ArrayList<>(List.of(element("th", marked).with("scope", "row"), element("td", measured)));
        for (int i = 0; i < results; i++) {
            cells.add(element("td", tick()));
        }
        return element("tr", cells);
    }
}
