package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.clearance.Question.Proofs;
import io.github.leafproof.inspection.gauge.FeelSet;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which leaf to offer next, so that as few trials as possible settle whether a gap is inside its limits; and which leaves a
 * shop should own for it.
 */
public final class LeafAdvisor {
    private final Question question;
    private final FeelSet set;
    private final List<Candidate> candidates;

    private LeafAdvisor(Question question, FeelSet set) {
        this.question = question;
        this.set = set;
        this.candidates = Candidates.of(set, question);
    }

    /**
     * The next feeler to offer, out of all leaves and stacks of up to three (two, in a set of more than 32).
     *
     * <p>First it is sought to settle as much of the remaining range as the set can, then to need the fewest trials on
     * average, then the fewest leaves in the hand, then the thinnest. For planning alone every place in the range counts as
     * equally likely; an open upper end is taken at twice the upper limit. A feeler that was already offered is not offered
     * again, unless its trial contradicts another.
     *
     * @param evidence the trials made so far
     * @param limits the window, and what is tolerated beyond it
     * @param rule how sure one has to be
     * @param set the leaves or pins at hand
     */
    public static NextLeaf next(GapEvidence evidence, Limits limits, DecisionRule rule, FeelSet set) {
        return new LeafAdvisor(new Question(limits, rule), set).next(evidence);
    }

    /**
     * Whether any leaves of the set together could show a gap to be inside these limits. When they cannot, the check can
     * never pass with them, whatever the engine.
     */
    public static boolean canShowInside(Limits limits, DecisionRule rule, FeelSet set) {
        Question question = new Question(limits.aimed(), rule);
        List<Candidate> candidates = Candidates.of(set, question);
        Stream<Proofs> alone = candidates.stream().flatMap(one -> Stream.of(one.ifPasses(), one.ifRefuses()));
        Stream<Proofs> inPairs = candidates.stream()
                .flatMap(going -> candidates.stream()
                        .filter(stopping -> going.value() < stopping.value())
                        .map(stopping -> going.ifPasses().and(stopping.ifRefuses())));
        return Stream.of(Stream.of(question.of(GapEvidence.none())), alone, inPairs)
                .flatMap(proofs -> proofs)
                .anyMatch(proofs -> question.outcome(proofs) == Outcome.PASSES);
    }

    /**
     * The pair of leaves to own for a window, when each can be measured to standard uncertainty {@code u}. They lie inside
     * the limits by z·u. With two limits each leaf may err with half the risk, so that both together keep the confidence:
     * at 95 %, z is 1.960 for a window and 1.645 for a single limit. A lower limit of zero or less needs no leaf.
     *
     * @param u in metres, above zero
     */
    public static LeafPair bestPair(Limits limits, DecisionRule rule, double u) {
        if (!(u > 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException("the uncertainty of a leaf must be above zero, not " + u);
        }
        boolean hasLower = limits.lower() > 0;
        boolean hasUpper = !Double.isInfinite(limits.upper());
        double each = hasLower && hasUpper ? (1 + rule.confidence()) / 2 : rule.confidence();
        double inside = u * Coverage.quantile(each, Double.POSITIVE_INFINITY);
        return new LeafPair(
                hasLower ? OptionalDouble.of(limits.lower() + inside) : OptionalDouble.empty(),
                hasUpper ? OptionalDouble.of(limits.upper() - inside) : OptionalDouble.empty(),
                u);
    }

    private NextLeaf next(GapEvidence evidence) {
        LeafPlan plan = plan(evidence);
        AfterTrial after = after(evidence, plan);
        if (after instanceof AfterTrial.Offer offer) {
            return new NextLeaf.Try(
                    offer.feeler(),
                    following(evidence, offer.feeler(), TrialResult.PASSES),
                    following(evidence, offer.feeler(), TrialResult.REFUSES),
                    plan.expectedTrials(),
                    plan.shareSettled());
        }
        return (NextLeaf) after;
    }

    private AfterTrial following(GapEvidence evidence, Feeler feeler, TrialResult result) {
        GapEvidence then = evidence.with(FeelTrial.of(feeler, result, set));
        return after(then, plan(then));
    }

    private AfterTrial after(GapEvidence evidence, LeafPlan plan) {
        List<Contradiction> contradictions = evidence.contradictions(question.rule());
        if (!contradictions.isEmpty()) {
            return new NextLeaf.Repeat(contradictions.get(0));
        }
        Proofs proofs = question.of(evidence);
        Candidate first = plan.first();
        if (first != null) {
            return new AfterTrial.Offer(first.feeler());
        }
        return question.outcome(proofs) == Outcome.OPEN
                ? cannotSettle(evidence)
                : new NextLeaf.Settled(question.outcome(proofs), question.side(proofs));
    }

    private LeafPlan plan(GapEvidence evidence) {
        Set<Feeler> offered = evidence.trials().stream().map(FeelTrial::feeler).collect(Collectors.toSet());
        List<Candidate> left = candidates.stream()
                .filter(candidate -> !offered.contains(candidate.feeler()))
                .collect(Collectors.toUnmodifiableList());
        return new LeafPlan(question, left, evidence);
    }

    private NextLeaf.CannotSettle cannotSettle(GapEvidence evidence) {
        double u = set.leaves().stream()
                .filter(leaf -> !leaf.neverMeasured())
                .map(Leaf::thickness)
                .mapToDouble(Estimate::standardUncertainty)
                .min()
                .orElse(Leaf.uncertaintyByMicrometer().standard());
        List<Leaf> neverMeasured = Stream.concat(evidence.leaves().stream(), set.leaves().stream())
                .filter(Leaf::neverMeasured)
                .distinct()
                .collect(Collectors.toUnmodifiableList());
        return new NextLeaf.CannotSettle(WantedLeaves.toAnswer(question, evidence, u), u, neverMeasured);
    }
}
