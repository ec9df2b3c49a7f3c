package io.github.leafproof.inspection.clearance;

import static io.github.leafproof.inspection.clearance.Bench.AT_95;
import static io.github.leafproof.inspection.clearance.Bench.MM;
import static io.github.leafproof.inspection.clearance.Bench.leaf;
import static io.github.leafproof.inspection.clearance.Bench.mm;
import static io.github.leafproof.inspection.clearance.Bench.window;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.leafproof.inspection.gauge.Leaf;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds of every set of trials, however odd. */
class GapEvidenceLawsTest {

    /** A leaf as it is: measured to u, but truly off by some part of what the confidence allows. */
    record TrueLeaf(Leaf leaf, double trueThickness) {}

    @Property(seed = "1")
    void the_lower_bound_never_exceeds_the_upper_one(
            @ForAll("trials") List<FeelTrial> trials, @ForAll("windows") Limits window) {
        Conformity shown = new GapEvidence(trials).conformity(window);
        assertThat(shown.low()).isBetween(0.0, shown.high());
        assertThat(shown.high()).isBetween(0.0, 1.0);
    }

    @Property(seed = "1")
    void one_more_trial_never_widens_the_bounds(
            @ForAll("trials") List<FeelTrial> trials,
            @ForAll("trial") FeelTrial another,
            @ForAll("windows") Limits window) {
        Conformity before = new GapEvidence(trials).conformity(window);
        Conformity after = new GapEvidence(trials).with(another).conformity(window);
        assertThat(after.high() - after.low()).isLessThanOrEqualTo(before.high() - before.low() + 1e-15);
        assertThat(after.high()).isLessThanOrEqualTo(before.high());
    }

    @Property(seed = "1")
    void the_order_of_the_trials_does_not_matter(
            @ForAll("trials") List<FeelTrial> trials, @ForAll("windows") Limits window, @ForAll long seed) {
        List<FeelTrial> shuffled = new ArrayList<>(trials);
        Collections.shuffle(shuffled, new Random(seed));
        GapEvidence one = new GapEvidence(trials);
        GapEvidence other = new GapEvidence(shuffled);
        assertThat(other.conformity(window)).isEqualTo(one.conformity(window));
        assertThat(other.judge(window, AT_95)).isEqualTo(one.judge(window, AT_95));
        assertThat(other.atLeast().map(bound -> bound.value()))
                .isEqualTo(one.atLeast().map(bound -> bound.value()));
    }

    @Property(seed = "1")
    void a_true_gap_is_never_judged_wrongly_while_the_leaves_err_no_more_than_the_confidence_allows(
            @ForAll @IntRange(min = 0, max = 2500) int tenthsOfMicrometres,
            @ForAll @Size(max = 8) List<@From("trueLeaves") TrueLeaf> leaves,
            @ForAll("windows") Limits window) {
        double gap = tenthsOfMicrometres * 1e-7;
        GapEvidence evidence = GapEvidence.none();
        for (TrueLeaf one : leaves) {
            evidence = evidence.with(felt(one, gap));
        }
        Outcome judged = evidence.judge(window, AT_95);
        boolean inside = gap >= window.lower() - 1e-12 && gap <= window.upper() + 1e-12;
        if (judged == Outcome.PASSES) {
            assertThat(inside).isTrue();
        }
        if (judged == Outcome.FAILS) {
            assertThat(inside).isFalse();
        }
    }

    @Property(seed = "1")
    void leaves_of_exactly_the_limit_sizes_can_never_show_the_window(
            @ForAll @IntRange(min = 1, max = 10_000) int nanometres) {
        String u = "0.00000" + nanometres;
        GapEvidence exact =
                Bench.evidence(Bench.passes(leaf("0.04", "0.04", u)), Bench.refuses(leaf("0.10", "0.10", u)));
        assertThat(exact.conformity(window(0.04, 0.10)).low()).isCloseTo(0, within(1e-6));
        assertThat(exact.judge(window(0.04, 0.10), AT_95)).isEqualTo(Outcome.OPEN);
    }

    private static FeelTrial felt(TrueLeaf one, double gap) {
        double band = 0.004 * MM;
        if (gap < one.trueThickness()) {
            return new FeelTrial(one.leaf(), TrialResult.REFUSES, band);
        }
        TrialResult result = gap <= one.trueThickness() + band ? TrialResult.DRAGS : TrialResult.PASSES;
        return new FeelTrial(one.leaf(), result, band);
    }

    @Provide
    Arbitrary<Limits> windows() {
        Arbitrary<Integer> lower = Arbitraries.integers().between(0, 150);
        Arbitrary<Integer> width = Arbitraries.integers().between(1, 100);
        Arbitrary<Limits> both = Combinators.combine(lower, width)
                .as((from, wide) -> Limits.between(mm(from / 1000.0), mm((from + wide) / 1000.0)));
        Arbitrary<Limits> one = lower.map(limit -> Limits.atMost(mm(limit / 1000.0)));
        Arbitrary<Limits> other = lower.map(limit -> Limits.atLeast(mm(limit / 1000.0)));
        return Arbitraries.oneOf(both, one, other);
    }

    @Provide
    Arbitrary<Leaf> leaves() {
        Arbitrary<Integer> micrometres = Arbitraries.integers().between(5, 250);
        Arbitrary<String> uncertainties = Arbitraries.of("0.0005", "0.001", "0.003", "0.010");
        return Combinators.combine(micrometres, uncertainties)
                .as((thickness, u) -> leaf(thickness / 1000.0 + "", thickness / 1000.0 + "", u));
    }

    @Provide
    Arbitrary<TrueLeaf> trueLeaves() {
        Arbitrary<Integer> hundredths = Arbitraries.integers().between(-99, 99);
        return Combinators.combine(leaves(), hundredths).as((leaf, off) -> {
            double u = leaf.thickness().standardUncertainty();
            return new TrueLeaf(leaf, leaf.thickness().value() + off / 100.0 * AT_95.z() * u);
        });
    }

    @Provide
    Arbitrary<FeelTrial> trial() {
        Arbitrary<Double> band = Arbitraries.of(0.0, 0.004 * MM);
        return Combinators.combine(leaves(), Arbitraries.of(TrialResult.class), band)
                .as(FeelTrial::new);
    }

    @Provide
    Arbitrary<List<FeelTrial>> trials() {
        return trial().list().ofMaxSize(8);
    }
}
