package io.github.leafproof.inspection.clearance;

import static java.util.Comparator.comparingDouble;

import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All trials made on one gap, and what they prove together. The order in which they were made does not matter.
 *
 * <p>A trial says nothing about where inside the remaining range the gap lies, so no prior is invented: evidence bounds the
 * probability of conforming (JCGM 106) from below and from above. More trials never widen the bounds.
 *
 * @param trials the trials, in the order made
 */
public record GapEvidence(List<FeelTrial> trials) {

    /** Keeps the trials as given. */
    public GapEvidence {
        trials = List.copyOf(trials);
    }

    /** Nothing was tried yet. */
    public static GapEvidence none() {
        return new GapEvidence(List.of());
    }

    /** The same evidence with one more trial. */
    public GapEvidence with(FeelTrial trial) {
        return new GapEvidence(
                Stream.concat(trials.stream(), Stream.of(trial)).collect(Collectors.toUnmodifiableList()));
    }

    /** What the gap is no smaller than: the thickest leaf that entered, as measured; empty when none did. */
    public Optional<Estimate> atLeast() {
        Estimate thickest = null;
        for (FeelTrial trial : trials) {
            Estimate entered = trial.atLeast().orElse(null);
            if (entered != null && (thickest == null || entered.value() > thickest.value())) {
                thickest = entered;
            }
        }
        return Optional.ofNullable(thickest);
    }

    /** What the gap is smaller than: the thinnest leaf that refused, as measured; empty when none did. */
    public Optional<Estimate> lessThan() {
        Estimate thinnest = null;
        for (FeelTrial trial : trials) {
            Estimate refused = trial.lessThan().orElse(null);
            if (refused != null && (thinnest == null || refused.value() < thinnest.value())) {
                thinnest = refused;
            }
        }
        return Optional.ofNullable(thinnest);
    }

    /** The leaves offered, each once, in the order first offered. */
    public List<Leaf> leaves() {
        return trials.stream()
                .flatMap(trial -> trial.feeler().leaves().stream())
                .distinct()
                .collect(Collectors.toUnmodifiableList());
    }

    /**
     * The same trials as they would count if every leaf had been measured and found to be what is stamped on it. Judged
     * beside the evidence itself, it tells what measuring the leaves could change.
     */
    public GapEvidence asIfMeasured() {
        return new GapEvidence(trials.stream()
                .map(trial -> new FeelTrial(trial.feeler().asIfMeasured(), trial.result(), trial.dragBand()))
                .collect(Collectors.toUnmodifiableList()));
    }

    /**
     * Bounds of the probability that the gap lies inside the window.
     *
     * <p>With Φ the normal law, t and u a leaf's measured thickness and its uncertainty: above the lower limit L speaks the
     * best Φ((t − L)/u) of the leaves that entered, below the upper limit U the best Φ((U − t)/u) of those that refused, and
     * the joint bound is their sum less one (Fréchet's bound: no independence is assumed). The upper bound falls likewise
     * with every leaf that shows the gap to be outside.
     *
     * @param window the limits; only the aimed-for ones count. A lower limit of zero or less is no limit, since no gap is
     *     smaller than nothing
     */
    public Conformity conformity(Limits window) {
        return proof(window).conformity();
    }

    Proof proof(Limits window) {
        Proof together = Proof.untried(window);
        for (FeelTrial trial : trials) {
            together = together.and(
                    trial.atLeast().map(t -> Proof.atLeast(t, window)).orElse(together));
            together = together.and(
                    trial.lessThan().map(t -> Proof.lessThan(t, window)).orElse(together));
        }
        return together;
    }

    /** The outcome of a check that asks for this window: contradicted, or what the rule decides. */
    public Outcome judge(Limits limits, DecisionRule rule) {
        return contradictions(rule).isEmpty()
                ? rule.decide(conformity(limits.aimed()), conformity(limits.tolerated()))
                : Outcome.CONTRADICTED;
    }

    /**
     * Pairs of trials that cannot both be right: what entered is thicker than what refused, by more than the rule's
     * confidence allows for their uncertainty. What two stacks have in common cancels, so a leaf that enters only with
     * another one on top of it contradicts however badly it was measured. The widest apart come first, whatever the order
     * of the trials.
     */
    public List<Contradiction> contradictions(DecisionRule rule) {
        double thickest = atLeast().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY);
        double thinnest = lessThan().map(Estimate::value).orElse(Double.POSITIVE_INFINITY);
        if (thickest < thinnest) {
            // In sound evidence, which is nearly all there is, nothing is left to compare.
            return List.of();
        }
        List<FeelTrial> entered = trials.stream()
                .filter(trial ->
                        trial.atLeast().filter(t -> t.value() >= thinnest).isPresent())
                .toList();
        List<FeelTrial> refused = trials.stream()
                .filter(trial ->
                        trial.lessThan().filter(t -> t.value() <= thickest).isPresent())
                .toList();
        List<Contradiction> found = new ArrayList<>();
        for (FeelTrial passing : entered) {
            for (FeelTrial refusing : refused) {
                if (contradict(passing, refusing, rule)) {
                    found.add(new Contradiction(passing, refusing));
                }
            }
        }
        found.sort(comparingDouble(GapEvidence::apart)
                .thenComparingDouble(pair -> pair.passing().feeler().thickness().value())
                .reversed());
        return List.copyOf(found);
    }

    private static double apart(Contradiction pair) {
        double entered = pair.passing().atLeast().orElseThrow().value();
        return entered - pair.refusing().lessThan().orElseThrow().value();
    }

    private static boolean contradict(FeelTrial passing, FeelTrial refusing, DecisionRule rule) {
        Optional<Estimate> atLeast = passing.atLeast();
        Optional<Estimate> lessThan = refusing.lessThan();
        if (atLeast.isEmpty() || lessThan.isEmpty()) {
            return false;
        }
        Estimate excess = atLeast.get().minus(lessThan.get());
        return excess.isExact() ? excess.value() >= 0 : excess.value() / excess.standardUncertainty() > rule.z();
    }

    /**
     * The gap as one number, for a value to aim or to subtract: the middle between the bounds. Any place between them is as
     * likely as another, so half the distance counts as a rectangular half-width (u = a/√3, GUM 4.3.7, clause from memory),
     * and the uncertainty of the two leaves comes on top. When something refused and nothing entered, the lower bound is
     * zero; when nothing refused, there is no such number.
     *
     * @param gap names the gap among all gaps, so that the unknown place of this one is not mistaken for another's
     */
    public Optional<Estimate> estimate(String gap) {
        return lessThan().map(upper -> {
            Estimate lower = atLeast().orElse(Estimate.exact(0, Dimension.LENGTH));
            double halfWidth = Math.abs(upper.value() - lower.value()) / 2;
            return lower.plus(upper)
                    .scaledBy(0.5)
                    .withIndependent(
                            halfWidth / Math.sqrt(3), Source.withinLimits("place of " + gap + " between the leaves"));
        });
    }

    /** What is known of the gap, for people: {@code 0.0500 mm to 0.1100 mm}, {@code at least 0.1100 mm}. */
    public String rangeWords(UnitSystem system) {
        Optional<String> lower = atLeast().map(bound -> Display.of(bound, system));
        Optional<String> upper = lessThan().map(bound -> Display.of(bound, system));
        if (lower.isPresent() && upper.isPresent() && isUpsideDown()) {
            return "at least " + lower.get() + " and yet less than " + upper.get();
        }
        if (lower.isPresent() && upper.isPresent()) {
            return lower.get() + " to " + upper.get();
        }
        return lower.map(bound -> "at least " + bound)
                .or(() -> upper.map(bound -> "less than " + bound))
                .orElse("nothing known");
    }

    private boolean isUpsideDown() {
        return atLeast().orElseThrow().value() > lessThan().orElseThrow().value();
    }
}
