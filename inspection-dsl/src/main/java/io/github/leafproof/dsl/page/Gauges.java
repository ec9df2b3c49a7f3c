package io.github.leafproof.dsl.page;

import static io.github.leafproof.dsl.html.Html.heading;
import static io.github.leafproof.dsl.html.Html.p;
import static io.github.leafproof.dsl.html.Html.section;
import static io.github.leafproof.dsl.html.Html.strong;
import static io.github.leafproof.dsl.html.Html.words;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Part;
import io.github.leafproof.dsl.html.Table;
import io.github.leafproof.inspection.gauge.Calibration;
import io.github.leafproof.inspection.gauge.Counter;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The gauges that something was measured with: how well each is known, since when, and whether it was due. */
final class Gauges {

    private final LocalDate day;
    private final Map<Leaf, Set<String>> leaves = new LinkedHashMap<>();
    private final Map<Gauge, Set<String>> instruments = new LinkedHashMap<>();

    private Gauges(LocalDate day) {
        this.day = day;
    }

    static List<Element> of(Judgement judgement) {
        Evidence evidence = judgement.evidence();
        Gauges gauges = new Gauges(evidence.sheet().heading().date());
        judgement.graph().observations().forEach(observation -> gauges.look(evidence, observation));
        return gauges.sections();
    }

    private void look(Evidence evidence, Node.Observation observation) {
        for (Evidence.Statement statement : evidence.statements(observation)) {
            Value value = statement.value();
            if (value instanceof Value.Felt felt) {
                felt.evidence().leaves().forEach(leaf -> note(leaves, leaf, observation));
            } else if (observation.gauge() != null
                    && (value instanceof Value.Amount || value instanceof Value.Readings)) {
                evidence.tray()
                        .content()
                        .gauge(observation.gauge().name())
                        .ifPresent(gauge -> note(instruments, gauge, observation));
            }
        }
    }

    private static <T> void note(Map<T, Set<String>> uses, T gauge, Node.Observation observation) {
        uses.computeIfAbsent(gauge, same -> new LinkedHashSet<>()).add(observation.name());
    }

    private List<Element> sections() {
        if (leaves.isEmpty() && instruments.isEmpty()) {
            return List.of();
        }
        Table table = Table.of("The gauges that were used", "Gauge", "What is known of it", "Calibration", "Used for")
                .cards();
        leaves.forEach((leaf, uses) ->
                table.row(words(leaf.set() + " " + leaf.label()), words(known(leaf)), state(leaf), uses(uses)));
        instruments.forEach(
                (gauge, uses) -> table.row(words(gauge.name()), words(known(gauge)), state(gauge), uses(uses)));
        return List.of(section(
                "gauges",
                heading(2, "Gauges"),
                List.of(p("As they stood on " + day + ", the day of the sheet.").style("quiet"), table.element())));
    }

    private static Part uses(Set<String> uses) {
        return words(String.join(", ", uses));
    }

    private static String known(Leaf leaf) {
        return leaf.measured() == null
                ? "only its marking, " + leaf.uncertainty().words()
                : "measured " + leaf.measured() + ", " + leaf.uncertainty().words();
    }

    private static String known(Gauge gauge) {
        if (!(gauge instanceof ReadingInstrument instrument)) {
            return gauge instanceof Counter ? "a count is exact" : gauge.kind();
        }
        List<String> known = new ArrayList<>();
        if (instrument.resolution() != null) {
            known.add("steps of " + instrument.resolution());
        }
        if (instrument.uncertainty() != null) {
            known.add("its own error " + instrument.uncertainty().words());
        }
        return String.join(", ", known);
    }

    private Part state(Leaf leaf) {
        return leaf.measured() == null ? strong("never measured") : state(leaf.calibration());
    }

    private Part state(Gauge gauge) {
        return gauge instanceof ReadingInstrument instrument ? state(instrument.calibration()) : words("needs none");
    }

    private Part state(Calibration calibration) {
        if (calibration.overdueOn(day)) {
            return strong("PAST DUE since " + calibration.due());
        }
        if (calibration.due() != null) {
            return words("in date until " + calibration.due());
        }
        return words(
                calibration.calibrated() == null
                        ? "no date stated"
                        : "calibrated " + calibration.calibrated() + ", no due date stated");
    }
}
