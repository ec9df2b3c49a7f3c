package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.graph.Verdict;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a reader should know of the gauges that the verdicts lean on: never measured, past due. */
final class GaugeNotes {

    private final Evidence evidence;
    private final LocalDate day;
    private final Map<String, Set<String>> unmeasured = new LinkedHashMap<>();
    private final Map<String, Set<String>> overdue = new LinkedHashMap<>();

    private GaugeNotes(Evidence evidence) {
        this.evidence = evidence;
        this.day = evidence.sheet().heading().date();
    }

    static List<String> of(Judgement judgement) {
        GaugeNotes notes = new GaugeNotes(judgement.evidence());
        judgement.graph().observations().forEach(notes::look);
        return notes.words();
    }

    /** What one check leans on, and what measuring its leaves could change. */
    static List<String> of(Judgement judgement, Verdict verdict, List<Node.Observation> observed) {
        List<String> words = new ArrayList<>();
        if (verdict.conformity() == null) {
            return words;
        }
        GaugeNotes notes = new GaugeNotes(judgement.evidence());
        observed.forEach(notes::look);
        if (!notes.overdue.isEmpty()) {
            words.add("leans on " + String.join(", ", notes.overdue.keySet()) + ", past due for calibration");
        }
        judgement
                .asIfMeasured(verdict.check())
                .filter(then -> then.outcome() != verdict.outcome())
                .ifPresent(then -> words.add("never measured: " + String.join(", ", notes.unmeasured.keySet())
                        + "; if measuring finds what is stamped there, this check "
                        + ReleaseWords.said(then.outcome())));
        return words;
    }

    private void look(Node.Observation observation) {
        Value value = evidence.value(observation);
        if (value instanceof Value.Felt felt) {
            felt.evidence().leaves().forEach(leaf -> look(leaf, observation.name()));
        } else if ((value instanceof Value.Amount || value instanceof Value.Readings) && observation.gauge() != null) {
            evidence.tray()
                    .content()
                    .gauge(observation.gauge().name())
                    .filter(gauge -> gauge instanceof ReadingInstrument instrument
                            && instrument.calibration().overdueOn(day))
                    .ifPresent(gauge -> note(overdue, gauge.name(), observation.name()));
        }
    }

    private void look(Leaf leaf, String where) {
        String name = leaf.set() + " " + leaf.label();
        if (leaf.neverMeasured()) {
            note(unmeasured, name, where);
        }
        if (leaf.calibration().overdueOn(day)) {
            note(overdue, name, where);
        }
    }

    private static void note(Map<String, Set<String>> notes, String gauge, String where) {
        notes.computeIfAbsent(gauge, key -> new LinkedHashSet<>()).add(where);
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        unmeasured.forEach((leaf, where) -> words.add(leaf + " was never measured, so it counts as no better than its"
                + " marking; measuring it would narrow what it shows of " + String.join(", ", where)));
        overdue.forEach((gauge, where) -> words.add(
                gauge + " was past due for calibration on " + day + "; " + String.join(", ", where) + " leans on it"));
        return words;
    }
}
