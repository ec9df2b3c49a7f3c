package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.gauge.Calibration;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is known of a gauge that a verdict leans on: what is stamped on it, what it measures, how well, and since when. */
final class GaugeWords {

    private final LocalDate day;

    private GaugeWords(LocalDate day) {
        this.day = day;
    }

    /** A line for the gauge, and one for each of its leaves that was offered. */
    static List<String> of(Judgement judgement, GaugeNeed need, List<Node.Observation> observed) {
        Evidence evidence = judgement.evidence();
        GaugeWords words = new GaugeWords(evidence.sheet().heading().date());
        List<String> lines = new ArrayList<>();
        evidence.tray().content().gauge(need.name()).ifPresent(gauge -> {
            lines.addAll(words.of(gauge));
            offered(evidence, gauge, observed).forEach(leaf -> lines.add(words.of(leaf)));
        });
        return lines;
    }

    private static Set<Leaf> offered(Evidence evidence, Gauge gauge, List<Node.Observation> observed) {
        Set<Leaf> leaves = new LinkedHashSet<>();
        for (Node.Observation observation : observed) {
            for (Evidence.Statement statement : evidence.statements(observation)) {
                if (statement.value() instanceof Value.Felt felt && felt.set().equals(gauge)) {
                    leaves.addAll(felt.evidence().leaves());
                }
            }
        }
        return leaves;
    }

    private List<String> of(Gauge gauge) {
        if (gauge instanceof ReadingInstrument instrument) {
            List<String> known = new ArrayList<>();
            if (instrument.resolution() != null) {
                known.add("shows steps of " + instrument.resolution());
            }
            if (instrument.uncertainty() != null) {
                known.add("its own error " + instrument.uncertainty().words());
            }
            return List.of(String.join(", ", known) + when(instrument.calibration()));
        }
        if (!(gauge instanceof FeelSet set)) {
            return List.of("a count is exact");
        }
        List<String> known = new ArrayList<>();
        if (set.dragBand().base() > 0) {
            known.add("where one drags, the gap is at most " + set.dragBand() + " wider than it");
        }
        if (set instanceof LeafSet && set.film().base() > 0) {
            known.add("between two leaves of a stack a film of " + set.film());
        }
        return known.isEmpty() ? List.of() : List.of(String.join("; ", known));
    }

    private String of(Leaf leaf) {
        String measured = leaf.measured() == null
                ? "never measured, so that only its marking counts"
                : "measured " + leaf.measured();
        return "marked " + leaf.label() + ": " + measured + ", "
                + leaf.uncertainty().words() + when(leaf.calibration());
    }

    private String when(Calibration calibration) {
        String measured = calibration.calibrated() == null ? "" : ", calibrated " + calibration.calibrated();
        String due = calibration.due() == null
                ? ""
                : calibration.overdueOn(day) ? ", PAST DUE since " + calibration.due() : ", due " + calibration.due();
        return measured + due;
    }
}
