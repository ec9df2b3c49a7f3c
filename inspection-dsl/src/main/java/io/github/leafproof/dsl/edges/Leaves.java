package io.github.leafproof.dsl.edges;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.record.Given;
import io.github.leafproof.inspection.record.TrialGiven;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The pairs of leaves, or pins, on whose edge a check about a gap turns: one that enters and the one that refuses. Of the
 * pairs that come to an outcome those count that prove the least: with a thinner leaf entering, or a thicker one refusing, they
 * would no longer come to it.
 */
final class Leaves {

    private static final Set<Outcome> PROVEN = EnumSet.of(Outcome.PASSES, Outcome.TOLERATED, Outcome.FAILS);

    private final Base base;
    private final Node.Check check;
    private final Node.Observation observation;
    private final List<Leaf> leaves;

    Leaves(Base base, Node.Check check, Node.Observation observation, FeelSet set) {
        this.base = base;
        this.check = check;
        this.observation = observation;
        this.leaves = set.leaves().stream()
                .sorted(Comparator.comparingDouble(leaf -> leaf.thickness().value()))
                .toList();
    }

    /** The pairs that prove the least of what they prove, and those beside them that no longer do. */
    List<Change> edges() {
        Map<String, Change> edges = new LinkedHashMap<>();
        for (int entering = -1; entering < leaves.size(); entering++) {
            for (int refusing = leaves.size(); refusing > entering; refusing--) {
                Outcome outcome = comesTo(entering, refusing);
                Outcome thinner = comesTo(entering - 1, refusing);
                Outcome thicker = comesTo(entering, refusing + 1);
                if (outcome != null && PROVEN.contains(outcome) && outcome != thinner && outcome != thicker) {
                    Stream.of(pair(entering, refusing), pair(entering - 1, refusing), pair(entering, refusing + 1))
                            .flatMap(Stream::ofNullable)
                            .forEach(pair -> edges.putIfAbsent(pair.text(), pair));
                }
            }
        }
        return List.copyOf(edges.values());
    }

    private @Nullable Outcome comesTo(int entering, int refusing) {
        Change pair = pair(entering, refusing);
        return pair == null
                ? null
                : base.with(observation, pair)
                        .map(judgement ->
                                judgement.verdicts().get(check.number()).outcome())
                        .orElse(null);
    }

    /** One that enters and one that refuses; only one of the two where the other is beyond the end of the set. */
    private @Nullable Change pair(int entering, int refusing) {
        boolean enters = entering >= 0 && entering < leaves.size();
        boolean refuses = refusing >= 0 && refusing < leaves.size();
        if (entering < -1 || refusing > leaves.size() || (!enters && !refuses)) {
            return null;
        }
        List<TrialGiven> trials = new ArrayList<>();
        List<String> text = new ArrayList<>();
        List<String> name = new ArrayList<>();
        if (enters) {
            String leaf = leaves.get(entering).label();
            trials.add(new TrialGiven(List.of(leaf), TrialResult.PASSES, ""));
            text.add("passes " + Alternatives.quoted(leaf));
            name.add("takes " + leaf);
        }
        if (refuses) {
            String leaf = leaves.get(refusing).label();
            trials.add(new TrialGiven(List.of(leaf), TrialResult.REFUSES, ""));
            text.add("refuses " + Alternatives.quoted(leaf));
            name.add(enters ? "not " + leaf : "does not take " + leaf);
        }
        return new Change(new Given.Trials(trials), String.join(" ", text), String.join(" and ", name));
    }
}
