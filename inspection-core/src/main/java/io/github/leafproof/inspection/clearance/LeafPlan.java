package io.github.leafproof.inspection.clearance;

import io.github.leafproof.inspection.clearance.Question.Proofs;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Outcome;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/**
 * The best order of further trials on one gap, by dynamic programming over the range the gap can still lie in.
 *
 * <p>For planning only, every place left in the range counts as equally likely; no verdict rests on that. What is sought
 * first is to settle as much of the range as the tray can, then to be let off with a tolerance, then the fewest trials on
 * average; of equals the feeler with the fewest leaves, then the thinnest, which comes first. Lengths are counted in steps
 * of a grid, so that equals are exactly equal.
 */
final class LeafPlan {
    private static final long GRID = 1L << 40;
    /** A range has some length even when the only limit is zero. */
    private static final double A_HAIR = 1e-9;

    private final Question question;
    private final List<Candidate> candidates;
    private final double step;
    private final State start;
    private final Map<State, Choice> known = new HashMap<>();

    /** The range left, and what was proven on the way there. */
    private record State(long lower, long upper, Proofs proofs) {
        long length() {
            return upper - lower;
        }
    }

    /**
     * What follows from a state.
     *
     * @param first the feeler to offer, or null when no trial helps
     * @param settled the part of the range that gets settled
     * @param tolerated the part that gets shown to be tolerated, though not whether it is as aimed for
     * @param trials the number of trials, each weighted with the part of the range that needs it
     */
    private record Choice(@Nullable Candidate first, long settled, long tolerated, long trials) {
        static final Choice NOTHING = new Choice(null, 0, 0, 0);

        boolean beats(Choice other) {
            if (settled != other.settled) {
                return settled > other.settled;
            }
            if (tolerated != other.tolerated) {
                return tolerated > other.tolerated;
            }
            return trials != other.trials ? trials < other.trials : hasFewerLeavesThan(other);
        }

        private boolean hasFewerLeavesThan(Choice other) {
            return first != null && other.first != null && first.leaves() < other.first.leaves();
        }
    }

    LeafPlan(Question question, List<Candidate> candidates, GapEvidence evidence) {
        this.question = question;
        this.candidates = candidates;
        double lower = evidence.atLeast().map(Estimate::value).orElse(0.0);
        double upper = evidence.lessThan().map(Estimate::value).orElseGet(() -> openEnd(lower));
        this.step = Math.max(lower, upper) / GRID;
        long from = grid(Math.min(lower, upper));
        this.start = new State(from, Math.max(from + 1, grid(Math.max(lower, upper))), question.of(evidence));
    }

    /**
     * Where the range ends while nothing has refused: at twice the limit, or at twice what is known to enter or could show
     * the gap to be too large, if that is more.
     */
    private double openEnd(double lower) {
        DoubleStream landmarks = DoubleStream.of(
                        lower,
                        question.limits().lower(),
                        question.limits().upper(),
                        question.limits().toleratedUpper())
                .filter(Double::isFinite);
        return 2
                * Math.max(
                        A_HAIR,
                        DoubleStream.concat(landmarks, thinnestTooLarge()).max().orElse(0));
    }

    private DoubleStream thinnestTooLarge() {
        return candidates.stream()
                .filter(candidate -> question.showsTooLarge(candidate.ifPasses().tolerated()))
                .mapToDouble(Candidate::value)
                .min()
                .stream();
    }

    private long grid(double length) {
        return Math.round(length / step);
    }

    /** The feeler to offer next; null when no trial helps. */
    @Nullable
    Candidate first() {
        return best(start).first();
    }

    double expectedTrials() {
        return (double) best(start).trials() / start.length();
    }

    double shareSettled() {
        return (double) best(start).settled() / start.length();
    }

    private Choice best(State state) {
        Choice found = known.get(state);
        if (found == null) {
            found = search(state);
            known.put(state, found);
        }
        return found;
    }

    private Choice search(State state) {
        if (question.isSettled(state.proofs())) {
            return new Choice(null, state.length(), 0, 0);
        }
        boolean isTolerated = question.outcome(state.proofs()) == Outcome.TOLERATED;
        Choice best = isTolerated ? new Choice(null, 0, state.length(), 0) : Choice.NOTHING;
        for (Candidate candidate : candidates) {
            Choice choice = offering(candidate, state);
            if (choice.beats(best)) {
                best = choice;
            }
        }
        return best;
    }

    private Choice offering(Candidate candidate, State state) {
        long thickness = Math.max(state.lower(), Math.min(state.upper(), grid(candidate.value())));
        State passed = new State(thickness, state.upper(), state.proofs().and(candidate.ifPasses()));
        State refused = new State(state.lower(), thickness, state.proofs().and(candidate.ifRefuses()));
        if (passed.equals(state) || refused.equals(state)) {
            return Choice.NOTHING;
        }
        Choice ifPasses = passed.length() == 0 ? Choice.NOTHING : best(passed);
        Choice ifRefuses = refused.length() == 0 ? Choice.NOTHING : best(refused);
        return new Choice(
                candidate,
                ifPasses.settled() + ifRefuses.settled(),
                ifPasses.tolerated() + ifRefuses.tolerated(),
                state.length() + ifPasses.trials() + ifRefuses.trials());
    }
}
