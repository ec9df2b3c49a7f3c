package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A gap that was felt with leaves or pins: its limits, what each trial showed, and what is still possible. */
public final class GapFigure {

    /** More rows than this hide what they show; the trials that say most are kept. */
    private static final int MOST_ROWS = 8;

    private static final double FEW = 6;

    private GapFigure() {}

    /** Whether this is a gap. */
    public static boolean shows(Account.Held held) {
        return held.value() instanceof Value.Felt;
    }

    /**
     * The figure.
     *
     * @param held what {@link #shows} a gap
     * @param title what it shows
     * @param id its name on the page
     */
    public static Element of(Account.Held held, UnitSystem units, String title, String id) {
        GapEvidence evidence = ((Value.Felt) held.value()).evidence();
        List<FeelTrial> shown = telling(evidence);
        List<Double> amounts = Stream.concat(
                        Band.amounts(held.limits()), evidence.trials().stream().flatMap(GapFigure::amounts))
                .toList();
        Scale scale = Scale.over(amounts, 0, Dimension.LENGTH, units, Pen.LEFT, Pen.RIGHT);
        Band band = new Band(held.limits(), scale, units);
        double rest = Band.HEAD + shown.size() * TrialRow.HEIGHT;
        double foot = rest + FEW + TrialRow.HEIGHT;
        boolean contradicted = held.judged().outcome() == Outcome.CONTRADICTED;
        String left = contradicted ? "These cannot all be right." : "Still possible: " + evidence.rangeWords(units);
        Sketch sketch = new Sketch().draw(band.draw(foot));
        for (int row = 0; row < shown.size(); row++) {
            sketch.draw(TrialRow.draw(shown.get(row), scale, Band.HEAD + row * TrialRow.HEIGHT, units));
        }
        return sketch.draw(Pen.words("words total", rest + 11, left))
                .draw(Remaining.draw(evidence, band, scale, rest + 17))
                .draw(Axis.below(scale, foot))
                .finish(id, foot + Axis.HEIGHT, title, description(held, shown, left, units));
    }

    private static Stream<Double> amounts(FeelTrial trial) {
        double u = 2 * trial.feeler().thickness().standardUncertainty();
        return Stream.concat(trial.atLeast().stream(), trial.lessThan().stream())
                .flatMap(bound -> Stream.of(bound.value() - u, bound.value() + u));
    }

    private static String description(Account.Held held, List<FeelTrial> trials, String left, UnitSystem units) {
        List<String> sentences = new ArrayList<>(List.of(LimitWords.of(held.limits(), units)));
        trials.forEach(trial -> sentences.add(TrialRow.words(trial, units) + "."));
        sentences.add(left + (left.endsWith(".") ? "" : "."));
        return String.join(" ", sentences);
    }

    /** The trials in the order made; of very many those that say most. */
    private static List<FeelTrial> telling(GapEvidence evidence) {
        List<FeelTrial> trials = evidence.trials().stream().distinct().toList();
        if (trials.size() <= MOST_ROWS) {
            return trials;
        }
        double from = evidence.atLeast().map(bound -> bound.value()).orElse(0.0);
        double to = evidence.lessThan().map(bound -> bound.value()).orElse(from);
        List<FeelTrial> nearest = trials.stream()
                .sorted(Comparator.comparingDouble(trial -> Math.min(distance(trial, from), distance(trial, to))))
                .limit(MOST_ROWS)
                .toList();
        return trials.stream().filter(nearest::contains).toList();
    }

    private static double distance(FeelTrial trial, double bound) {
        return Math.abs(trial.feeler().thickness().value() - bound);
    }
}
