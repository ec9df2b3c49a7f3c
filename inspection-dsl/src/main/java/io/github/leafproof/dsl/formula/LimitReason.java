package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.Contradiction;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Why a value was found inside its limits, outside, or neither, in the words of the bench. */
final class LimitReason {

    private static final double LEAST_LIKELY_SHOWN = 0.001;

    private final LimitsHeld held;
    private final Value.Judged judged;
    private final LimitsHeld.Window window;
    private final Frame frame;

    private LimitReason(LimitsHeld held, Value.Judged judged, LimitsHeld.Window window, Frame frame) {
        this.held = held;
        this.judged = judged;
        this.window = window;
        this.frame = frame;
    }

    static String of(LimitsHeld held, Value.Judged judged, LimitsHeld.Window window, Frame frame) {
        LimitReason reason = new LimitReason(held, judged, window, frame);
        return held.subject().value(frame) instanceof Value.Felt felt ? reason.ofGap(felt) : reason.ofReading();
    }

    private String ofGap(Value.Felt felt) {
        String name = held.subject().words();
        GapEvidence evidence = felt.evidence();
        return switch (judged.outcome()) {
            case CONTRADICTED ->
                contradiction(felt, evidence.contradictions(frame.rule()).get(0));
            case FAILS -> failedGap(felt);
            case OPEN -> "nothing shows that " + name + " is " + String.join(", nor that it is ", unproven(felt));
            case TOLERATED ->
                name + " is shown to be " + evidence.rangeWords(frame.units())
                        + ": not shown to be inside the limits, but inside what is tolerated";
            default -> name + " is shown to be " + evidence.rangeWords(frame.units());
        };
    }

    private String contradiction(Value.Felt felt, Contradiction found) {
        return "the trials of " + held.subject().words() + " contradict each other: "
                + offered(felt, found.passing().feeler()) + " enters, though "
                + offered(felt, found.refusing().feeler()) + " does not";
    }

    private String offered(Value.Felt felt, Feeler feeler) {
        return "the " + felt.noun(feeler) + " " + feeler.label() + " (" + size(feeler.thickness()) + ")";
    }

    private String failedGap(Value.Felt felt) {
        String name = held.subject().words();
        if (judged.side() == Side.NONE) {
            return name + " is shown to be " + felt.evidence().rangeWords(frame.units()) + ", not inside its limits";
        }
        boolean high = judged.side() == Side.HIGH;
        FeelTrial telling = (high ? thickestEntering(felt) : thinnestRefusing(felt)).orElseThrow();
        String does = high ? " passes" : " refuses";
        return "a " + felt.noun(telling.feeler()) + " of " + size(bound(telling, high)) + does + ", so " + name + " is "
                + (high ? "above " : "below ") + shown(brokenLimit());
    }

    /** The sides that no trial has settled, each with what the nearest trial says. */
    private List<String> unproven(Value.Felt felt) {
        List<String> sides = new ArrayList<>();
        if (isOpen(felt.evidence(), window.lower(), true)) {
            sides.add("at least " + shown(window.lower())
                    + thickestEntering(felt)
                            .map(trial -> ": the thickest " + felt.noun(trial.feeler()) + " that passes measures "
                                    + size(bound(trial, true)))
                            .orElse(": no " + felt.noun() + " has passed"));
        }
        if (isOpen(felt.evidence(), window.upper(), false)) {
            sides.add("at most " + shown(window.upper())
                    + thinnestRefusing(felt)
                            .map(trial -> ": the thinnest " + felt.noun(trial.feeler()) + " that refuses measures "
                                    + size(bound(trial, false)))
                            .orElse(": no " + felt.noun() + " has refused"));
        }
        return sides.isEmpty() ? List.of("inside its limits as surely as is asked for") : sides;
    }

    private static Optional<FeelTrial> thickestEntering(Value.Felt felt) {
        return felt.evidence().trials().stream()
                .filter(trial -> trial.atLeast().isPresent())
                .max(Comparator.comparingDouble(trial -> bound(trial, true).value()));
    }

    private static Optional<FeelTrial> thinnestRefusing(Value.Felt felt) {
        return felt.evidence().trials().stream()
                .filter(trial -> trial.lessThan().isPresent())
                .min(Comparator.comparingDouble(trial -> bound(trial, false).value()));
    }

    private static Estimate bound(FeelTrial trial, boolean lower) {
        return (lower ? trial.atLeast() : trial.lessThan()).orElseThrow();
    }

    private boolean isOpen(GapEvidence evidence, @Nullable Estimate limit, boolean isLower) {
        if (limit == null) {
            return false;
        }
        Estimate guarded = ConformityWithin.guarded(limit, isLower, frame.rule());
        Limits oneSided = isLower ? LimitsHeld.exactly(guarded, null) : LimitsHeld.exactly(null, guarded);
        return evidence.conformity(oneSided).low() < frame.rule().confidence();
    }

    private String ofReading() {
        String value =
                held.subject().words() + " is " + Shown.measured(Computed.number(held.subject(), frame), frame.units());
        double p = judged.conformity().low();
        return switch (judged.outcome()) {
            case FAILS -> value + broken();
            case OPEN ->
                value + ": too near a limit for its uncertainty; it is inside with a probability of "
                        + Display.percent(p) + ", and "
                        + Display.percent(frame.rule().confidence())
                        + " is asked for";
            case TOLERATED ->
                value + (p < LEAST_LIKELY_SHOWN ? ", outside the limits" : ", not shown to be inside the limits")
                        + " but inside what is tolerated";
            default -> value + ", inside the limits" + (p < 1 ? " with a probability of " + Display.percent(p) : "");
        };
    }

    private String broken() {
        return switch (judged.side()) {
            case HIGH -> overStep("above ", "not below ");
            case LOW -> overStep("below ", "not above ");
            case NONE -> ", not inside its limits: it is far less well known than they are wide";
        };
    }

    /** A value that fails a strict limit may lie exactly at it. */
    private String overStep(String beyond, String at) {
        return ", " + (held.strict() ? at : beyond) + shown(brokenLimit());
    }

    private @Nullable Estimate brokenLimit() {
        return judged.side() == Side.HIGH ? window.toleratedUpper() : window.toleratedLower();
    }

    private String size(Estimate thickness) {
        return Shown.value(Value.Amount.of(thickness), -1, frame.units());
    }

    private String shown(@Nullable Estimate limit) {
        return limit == null ? "its limit" : Shown.value(Value.Amount.of(limit), -1, frame.units());
    }
}
