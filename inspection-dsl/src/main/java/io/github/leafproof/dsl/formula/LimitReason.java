package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.Contradiction;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.gauge.Feeler;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Why a value was found inside its limits, outside, or neither, in the words of the bench. */
final class LimitReason {

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
        return held.subject().value(frame) instanceof Value.Felt felt
                ? reason.ofGap(felt.evidence())
                : reason.ofReading();
    }

    private String ofGap(GapEvidence evidence) {
        String name = held.subject().words();
        return switch (judged.outcome()) {
            case CONTRADICTED ->
                contradiction(evidence.contradictions(frame.rule()).get(0), name);
            case FAILS -> failedGap(evidence, name);
            case OPEN -> "nothing shows that " + name + " is " + String.join(", nor that it is ", unproven(evidence));
            case TOLERATED ->
                name + " is shown to be " + evidence.rangeWords(frame.units()) + ", outside the limits but tolerated";
            default -> name + " is shown to be " + evidence.rangeWords(frame.units());
        };
    }

    private String contradiction(Contradiction found, String name) {
        return "the trials of " + name + " contradict each other: "
                + offered(found.passing().feeler()) + " enters, though "
                + offered(found.refusing().feeler()) + " does not";
    }

    private String offered(Feeler feeler) {
        return feeler.label() + " (" + size(feeler.thickness()) + ")";
    }

    private String failedGap(GapEvidence evidence, String name) {
        boolean high = judged.side() == Side.HIGH;
        Estimate leaf = (high ? evidence.atLeast() : evidence.lessThan()).orElseThrow();
        return leaf(leaf) + (high ? " passes" : " refuses") + ", so " + name + " is " + (high ? "above " : "below ")
                + shown(brokenLimit());
    }

    /** The sides that no trial has settled, each with what the nearest trial says. */
    private List<String> unproven(GapEvidence evidence) {
        List<String> sides = new ArrayList<>();
        if (isOpen(evidence, window.lower(), true)) {
            sides.add("at least " + shown(window.lower())
                    + evidence.atLeast()
                            .map(leaf -> ": the thickest leaf that passes measures " + size(leaf))
                            .orElse(": no leaf has passed"));
        }
        if (isOpen(evidence, window.upper(), false)) {
            sides.add("at most " + shown(window.upper())
                    + evidence.lessThan()
                            .map(leaf -> ": the thinnest leaf that refuses measures " + size(leaf))
                            .orElse(": no leaf has refused"));
        }
        return sides.isEmpty() ? List.of("inside its limits as surely as is asked for") : sides;
    }

    private boolean isOpen(GapEvidence evidence, @Nullable Estimate limit, boolean isLower) {
        if (limit == null) {
            return false;
        }
        Limits oneSided = isLower ? LimitsHeld.exactly(limit, null) : LimitsHeld.exactly(null, limit);
        return evidence.conformity(oneSided).low() < frame.rule().confidence();
    }

    private String ofReading() {
        String value =
                held.subject().words() + " is " + Shown.measured(Computed.number(held.subject(), frame), frame.units());
        double p = judged.conformity().low();
        return switch (judged.outcome()) {
            case FAILS -> value + (judged.side() == Side.HIGH ? ", above " : ", below ") + shown(brokenLimit());
            case OPEN ->
                value + ": too near a limit for its uncertainty; the probability that it is inside is "
                        + Display.percent(p);
            case TOLERATED -> value + ", outside the limits but tolerated";
            default -> value + ", inside the limits" + (p < 1 ? " with a probability of " + Display.percent(p) : "");
        };
    }

    private @Nullable Estimate brokenLimit() {
        return judged.side() == Side.HIGH ? window.toleratedUpper() : window.toleratedLower();
    }

    private String leaf(Estimate thickness) {
        return "a leaf of " + size(thickness);
    }

    private String size(Estimate thickness) {
        return Shown.value(Value.Amount.of(thickness), -1, frame.units());
    }

    private String shown(@Nullable Estimate limit) {
        return limit == null ? "its limit" : Shown.value(Value.Amount.of(limit), -1, frame.units());
    }
}
