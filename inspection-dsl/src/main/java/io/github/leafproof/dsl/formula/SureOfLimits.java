package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How surely limits are kept, with the numbers behind it: how far a reading lies from each limit, or which leaf speaks for
 * each, and the probability that follows (JCGM 106 clause 7; for leaves the bounds that docs/judging.md gives).
 */
final class SureOfLimits {

    private final LimitsHeld.Window window;
    private final Frame frame;
    private final List<String> lines = new ArrayList<>();

    private SureOfLimits(LimitsHeld held, Frame frame) {
        this.window = LimitsHeld.Window.of(held, frame);
        this.frame = frame;
    }

    /** The lines; none where nothing can be judged. */
    static List<String> words(LimitsHeld held, Frame frame) {
        if (!(held.value(frame) instanceof Value.Judged judged)) {
            return List.of();
        }
        SureOfLimits sure = new SureOfLimits(held, frame);
        Value subject = held.subject().value(frame);
        if (subject instanceof Value.Felt felt) {
            sure.ofGap(felt, judged);
        } else if (subject instanceof Value.Amount amount) {
            sure.ofReading(amount.estimate());
        }
        sure.tolerated();
        sure.inAll(judged.conformity());
        return sure.lines;
    }

    private void inAll(Conformity conformity) {
        String low = Display.percent(conformity.low());
        String high = Display.percent(conformity.high());
        lines.add("probability that it holds: " + (low.equals(high) ? low : "from " + low + " to " + high));
    }

    private void tolerated() {
        String lower = beyond(window.lower(), window.toleratedLower());
        String upper = beyond(window.upper(), window.toleratedUpper());
        if (!lower.isEmpty() || !upper.isEmpty()) {
            lines.add("beyond that tolerated "
                    + String.join(
                            " and ",
                            List.of(lower.isEmpty() ? "" : "down to " + lower, upper.isEmpty() ? "" : "up to " + upper)
                                    .stream()
                                    .filter(words -> !words.isEmpty())
                                    .toList()));
        }
    }

    private String beyond(@Nullable Estimate limit, @Nullable Estimate tolerated) {
        return limit == null || tolerated == null || limit.value() == tolerated.value() ? "" : shown(tolerated);
    }

    private void ofReading(Estimate reading) {
        if (window.lower() != null) {
            side(reading, window.lower(), "below the lower limit ", true);
        }
        if (window.upper() != null) {
            side(reading, window.upper(), "above the upper limit ", false);
        }
        Stream.of(window.lower(), window.upper())
                .filter(Objects::nonNull)
                .map(limit -> Shown.sources(Value.Amount.of(reading.minus(limit)), frame.units()))
                .filter(sources -> !sources.isEmpty())
                .distinct()
                .forEach(sources -> lines.add("the uncertainty comes from " + String.join("; ", sources)));
    }

    /** How far a reading is from a limit, and how probable it is to lie beyond. */
    private void side(Estimate reading, Estimate limit, String beyond, boolean lower) {
        Estimate distance = lower ? reading.minus(limit) : limit.minus(reading);
        Conformity kept = Conformity.ofReading(distance, Limits.atLeast(0));
        String inside = distance.value() < 0 ? " beyond it" : " inside of it";
        String away = shown(Estimate.exact(Math.abs(distance.value()), distance.dimension())) + inside;
        double u = distance.standardUncertainty();
        double times = Math.abs(distance.value()) / u;
        String far = u == 0
                ? ", and both are exact"
                : ", which is " + Display.number(times, times < 10 ? 1 : 0)
                        + " times their standard uncertainty of " + Shown.uncertainty(distance, frame.units())
                        + freedom(distance);
        lines.add(beyond + shown(limit) + " with a probability of " + Display.percent(kept.below()) + ": it is " + away
                + far);
    }

    private static String freedom(Estimate distance) {
        double freedom = distance.degreesOfFreedom();
        return Double.isInfinite(freedom)
                ? ""
                : " (Student's t with " + Display.number(freedom, 1) + " degrees of freedom)";
    }

    private void ofGap(Value.Felt felt, Value.Judged judged) {
        boolean contradicted = !felt.evidence().contradictions(frame.rule()).isEmpty();
        if (contradicted) {
            lines.add("the trials contradict each other, so that they show nothing");
            return;
        }
        if (window.lower() != null) {
            shownBy(felt, window.lower(), true);
        }
        if (window.upper() != null) {
            shownBy(felt, window.upper(), false);
        }
        if (window.lower() != null
                && window.upper() != null
                && judged.conformity().low() > 0) {
            lines.add("both together are shown at least to the sum of the two less one (Fréchet's bound)");
        }
    }

    private void shownBy(Value.Felt felt, Estimate limit, boolean lower) {
        Estimate held = Objects.requireNonNull(ConformityWithin.guarded(limit, lower, frame.rule()));
        String what = (lower ? "at least " : "at most ") + (limit.isExact() ? shown(limit) : drawnIn(held, limit));
        Optional<FeelTrial> best = best(felt.evidence(), held, lower);
        if (best.isEmpty()) {
            lines.add(what + ": no " + felt.noun() + (lower ? " has passed" : " has refused"));
            return;
        }
        FeelTrial trial = best.get();
        Estimate size = bound(trial, lower).orElseThrow();
        lines.add(what + " is shown with a probability of "
                + Display.percent(GapEvidence.none()
                        .with(trial)
                        .conformity(only(held, lower))
                        .low()) + " by the "
                + felt.noun(trial.feeler()) + " " + trial.feeler().label() + ", which "
                + trial.result().name().toLowerCase(Locale.ROOT) + ": it measures "
                + Shown.measured(Value.Amount.of(size), frame.units()));
        List<String> sources = Shown.sources(Value.Amount.of(size), frame.units());
        if (!sources.isEmpty()) {
            lines.add("the uncertainty of that comes from " + String.join("; ", sources));
        }
    }

    /** Where a gap is held against, to as many digits as the uncertainty of its limit has. */
    private String drawnIn(Estimate held, Estimate limit) {
        Unit unit = frame.units().unitFor(held.dimension(), held.value());
        return Display.of(held.value(), held.dimension(), limit.standardUncertainty(), unit) + " (the limit of "
                + Shown.measured(Value.Amount.of(limit), frame.units()) + ", drawn in by what it may be off)";
    }

    private static Optional<FeelTrial> best(GapEvidence evidence, Estimate limit, boolean lower) {
        return evidence.trials().stream()
                .filter(trial -> bound(trial, lower).isPresent())
                .max(Comparator.comparingDouble((FeelTrial trial) -> GapEvidence.none()
                                .with(trial)
                                .conformity(only(limit, lower))
                                .low())
                        .thenComparingDouble(trial -> (lower ? 1 : -1)
                                * bound(trial, lower).orElseThrow().value()));
    }

    private static Optional<Estimate> bound(FeelTrial trial, boolean lower) {
        return lower ? trial.atLeast() : trial.lessThan();
    }

    private static Limits only(Estimate limit, boolean lower) {
        return lower ? LimitsHeld.exactly(limit, null) : LimitsHeld.exactly(null, limit);
    }

    private String shown(Estimate amount) {
        return Shown.value(Value.Amount.of(amount), -1, frame.units());
    }
}
