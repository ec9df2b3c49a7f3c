package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.AT_95;
import static io.github.leafproof.inspection.clearance.Bench.evidence;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.mm;
import static io.github.leafproof.inspection.clearance.Bench.passes;
import static io.github.leafproof.inspection.clearance.Bench.refuses;
import static io.github.leafproof.inspection.clearance.Bench.singles;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Finding;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;

/** The planned order of trials against every order there is, with the judgement of the real evidence at each step. */
class LeafPlanTest {
    /** Shows nothing about any window here, but closes the range so that there is a whole to take shares of. */
    private static final Leaf CEILING = leaf("0.40", "0.400");

    private static final double EQUAL = 1e-9;

    private record Best(double settled, double tolerated, double trials) {
        boolean beats(Best other) {
            if (Math.abs(settled - other.settled) > EQUAL) {
                return settled > other.settled;
            }
            if (Math.abs(tolerated - other.tolerated) > EQUAL) {
                return tolerated > other.tolerated;
            }
            return trials < other.trials - EQUAL;
        }
    }

    private record Search(Limits limits, DecisionRule rule) {

        Best best(GapEvidence evidence, List<Feeler> left, double lower, double upper) {
            Finding aimed = rule.decide(evidence.conformity(limits.aimed()));
            Outcome outcome = rule.decide(evidence.conformity(limits.aimed()), evidence.conformity(limits.tolerated()));
            double length = upper - lower;
            if (aimed != Finding.OPEN && outcome != Outcome.OPEN) {
                return new Best(length, 0, 0);
            }
            Best best = new Best(0, outcome == Outcome.TOLERATED ? length : 0, 0);
            for (Feeler feeler : left) {
                List<Feeler> others = new ArrayList<>(left);
                others.remove(feeler);
                double thickness =
                        Math.max(lower, Math.min(upper, feeler.thickness().value() * 1e3));
                Best passing = upper > thickness
                        ? best(evidence.with(passes(feeler)), others, thickness, upper)
                        : new Best(0, 0, 0);
                Best refusing = thickness > lower
                        ? best(evidence.with(refuses(feeler)), others, lower, thickness)
                        : new Best(0, 0, 0);
                Best choice = new Best(
                        passing.settled + refusing.settled,
                        passing.tolerated + refusing.tolerated,
                        length + passing.trials + refusing.trials);
                best = choice.beats(best) ? choice : best;
            }
            return best;
        }
    }

    @Property(tries = 150, seed = "1")
    void no_order_of_trials_settles_more_or_takes_fewer_trials_than_the_advice(
            @ForAll @Size(min = 1, max = 5) @UniqueElements(by = Marking.class) List<@From("leaves") Leaf> leaves,
            @ForAll("leaves") Leaf entered,
            @ForAll boolean something,
            @ForAll("limits") Limits limits,
            @ForAll("rules") DecisionRule rule) {
        GapEvidence evidence = something ? evidence(refuses(CEILING), passes(entered)) : evidence(refuses(CEILING));
        List<Feeler> left = new ArrayList<>(leaves);
        left.removeIf(entered::equals);
        double lower = evidence.atLeast().map(Estimate::value).orElse(0.0) * 1e3;
        Best best = new Search(limits, rule).best(evidence, left, lower, 0.4);

        LeafPlan plan = new LeafPlan(
                new Question(limits, rule),
                left.isEmpty() ? List.of() : Candidates.of(singles(leavesOf(left)), new Question(limits, rule)),
                evidence);

        double length = 0.4 - lower;
        assertThat(plan.shareSettled()).isCloseTo(best.settled / length, within(1e-8));
        assertThat(plan.expectedTrials()).isCloseTo(best.trials / length, within(1e-8));
    }

    @Property(tries = 5, seed = "1")
    void nor_with_six_leaves(@ForAll @Size(6) @UniqueElements(by = Marking.class) List<@From("leaves") Leaf> leaves) {
        Limits limits = Bench.window(0.03, 0.10);
        Best best = new Search(limits, AT_95).best(evidence(refuses(CEILING)), new ArrayList<>(leaves), 0, 0.4);
        Question question = new Question(limits, AT_95);
        LeafPlan plan = new LeafPlan(question, Candidates.of(singles(leaves), question), evidence(refuses(CEILING)));
        assertThat(plan.shareSettled()).isCloseTo(best.settled / 0.4, within(1e-8));
        assertThat(plan.expectedTrials()).isCloseTo(best.trials / 0.4, within(1e-8));
    }

    static final class Marking implements Function<Object, Object> {
        @Override
        public Object apply(Object leaf) {
            return ((Leaf) leaf).marked();
        }
    }

    private static List<Leaf> leavesOf(List<Feeler> feelers) {
        return feelers.stream().map(feeler -> feeler.leaves().get(0)).toList();
    }

    /** Two micrometres apart at least, so that none is left out as the lookalike of another. */
    @Provide
    Arbitrary<Leaf> leaves() {
        Arbitrary<Integer> steps = Arbitraries.integers().between(5, 75);
        Arbitrary<String> uncertainties = Arbitraries.of("0.0005", "0.001", "0.003", "0.010");
        return Combinators.combine(steps, uncertainties).as((step, u) -> {
            String thickness = Double.toString(step / 500.0);
            return leaf(thickness, thickness, u);
        });
    }

    @Provide
    Arbitrary<Limits> limits() {
        Arbitrary<Integer> lower = Arbitraries.integers().between(0, 60);
        Arbitrary<Integer> width = Arbitraries.integers().between(5, 80);
        Arbitrary<Integer> tolerance = Arbitraries.of(0, 0, 10, 40);
        return Combinators.combine(lower, width, tolerance).as((from, wide, beyond) -> {
            // Half a micrometre off every leaf: exactly on a limit the last bit of a probability would decide.
            double low = from == 0 ? 0 : (from + 0.5) / 1000;
            double high = (from + wide + 0.5) / 1000;
            return Bench.window(low, high).tolerating(mm(low), mm(high + beyond / 1000.0));
        });
    }

    @Provide
    Arbitrary<DecisionRule> rules() {
        return Arbitraries.of(AT_95, DecisionRule.guarded(0.8), DecisionRule.simpleAcceptance());
    }
}
