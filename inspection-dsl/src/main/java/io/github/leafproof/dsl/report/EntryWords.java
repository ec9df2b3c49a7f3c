package io.github.leafproof.dsl.report;

import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.GaugeNeed;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.Given;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was entered, and what it shows, in the words of the bench. */
final class EntryWords {

    private final Evidence evidence;
    private final UnitSystem units;

    EntryWords(Judgement judgement) {
        this.evidence = judgement.evidence();
        this.units = judgement.units();
    }

    /** A line for each entry, the trials of a gap each on its own. */
    List<String> of(Node.Observation observation) {
        List<String> lines = new ArrayList<>();
        for (Evidence.Statement statement : evidence.statements(observation)) {
            lines.addAll(lines(observation, statement));
        }
        return lines;
    }

    private List<String> lines(Node.Observation observation, Evidence.Statement statement) {
        Entry entry = statement.entry();
        String tail =
                remark(entry) + who(entry) + (statement.corrected() ? " (a slip of the pen, corrected later)" : "");
        Value value = statement.value();
        if (entry.given() instanceof Given.Adjusted adjusted) {
            String turn = adjusted.turn() == null ? "" : " by " + adjusted.turn();
            return List.of(observation.name() + " was adjusted" + turn + tail);
        }
        if (value instanceof Value.Felt felt) {
            return felt.evidence().trials().stream()
                    .map(trial -> observation.name() + ": " + felt.noun(trial.feeler()) + " " + trial(trial) + tail)
                    .toList();
        }
        if (value instanceof Value.Missing missing) {
            return List.of(missing.words() + tail);
        }
        boolean isRead = value instanceof Value.Amount || value instanceof Value.Readings;
        GaugeNeed read = isRead ? observation.gauge() : null;
        String gauge = read == null ? "" : ", with " + read.name();
        return List.of(observation.name() + ": " + Shown.measured(value, units) + gauge + tail);
    }

    private String trial(FeelTrial trial) {
        Feeler feeler = trial.feeler();
        String size = Display.withUncertainty(feeler.thickness(), units);
        String known = feeler.neverMeasured() ? ", never measured and taken as " : ", measured ";
        return feeler.label() + known + size + ", " + shows(trial, Display.of(feeler.thickness(), units));
    }

    private String shows(FeelTrial trial, String thickness) {
        if (trial.result() == TrialResult.PASSES) {
            return "passes: the gap is at least " + thickness;
        }
        if (trial.result() == TrialResult.REFUSES) {
            return "refuses: the gap is less than " + thickness;
        }
        return "drags: the gap is at least " + thickness
                + trial.lessThan()
                        .map(upper -> " and less than " + Display.of(upper, units))
                        .orElse("");
    }

    private static String remark(Entry entry) {
        return entry.note() == null ? "" : " (" + entry.note() + ")";
    }

    private static String who(Entry entry) {
        String at = entry.at() == null ? null : entry.at().toString();
        String mark = Stream.of(Stream.ofNullable(entry.by()), Stream.ofNullable(at))
                .flatMap(each -> each)
                .collect(Collectors.joining(" "));
        return mark.isEmpty() ? "" : " [" + mark + "]";
    }

    /** What a reader should know of how these values were come by. */
    List<String> notes(List<Node.Observation> observed) {
        List<String> notes = new ArrayList<>();
        for (Node.Observation observation : observed) {
            boolean bare = observation.gauge() == null
                    && evidence.value(observation) instanceof Value.Amount amount
                    && !amount.estimate().dimension().isRatio();
            if (bare) {
                notes.add(observation.name() + " was entered without a gauge and counts as exact");
            }
            if (observation.gauge() == null
                    && evidence.value(observation) instanceof Value.Readings readings
                    && !readings.series().dimension().isRatio()) {
                notes.add(
                        observation.name() + " was entered without a gauge: only what the readings scatter counts, and"
                                + " not what an instrument may be off");
            }
        }
        return notes;
    }
}
