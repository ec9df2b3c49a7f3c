package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.clearance.LashAdjustment;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How far to turn the adjuster screw, which way, and the gap to expect afterwards. */
public record AdjusterAdvice(Formula gap, Formula aim, Formula pitch, Formula lever) implements Formula {

    @Override
    public Value value(Frame frame) {
        List<Value> values = new ArrayList<>(List.of(size(frame)));
        List.of(aim, pitch, lever).forEach(part -> values.add(Computed.number(part, frame)));
        List<Estimate> known = new ArrayList<>();
        for (Value value : values) {
            if (value instanceof Value.Amount amount) {
                known.add(amount.estimate());
            }
        }
        if (known.size() < values.size()) {
            return Value.Missing.of(values);
        }
        try {
            return new Value.Words(caveat(frame)
                    + LashAdjustment.of(known.get(0), known.get(1), known.get(2), known.get(3))
                            .words(frame.units()));
        } catch (IllegalArgumentException refusal) {
            return Value.Missing.of(
                    Value.Lack.Kind.NOT_COMPUTABLE, words(), "cannot be computed: " + refusal.getMessage());
        }
    }

    /** The gap; while no leaf has refused, the least that it is shown to be, which is better than no advice. */
    private Value size(Frame frame) {
        return atLeast(frame).<Value>map(Value.Amount::of).orElseGet(() -> Computed.number(gap, frame));
    }

    private Optional<Estimate> atLeast(Frame frame) {
        boolean openAbove = gap.value(frame) instanceof Value.Felt felt
                && felt.evidence().lessThan().isEmpty();
        return openAbove ? ((Value.Felt) gap.value(frame)).evidence().atLeast() : Optional.empty();
    }

    private String caveat(Frame frame) {
        return atLeast(frame)
                .map(least -> "The gap is at least " + Shown.value(Value.Amount.of(least), -1, frame.units())
                        + " and may be wider, so begin with this and measure again. ")
                .orElse("");
    }

    @Override
    public String words() {
        return parts().stream().map(Formula::words).collect(Collectors.joining(", ", "adjuster_turn(", ")"));
    }

    @Override
    public List<Formula> parts() {
        return List.of(gap, aim, pitch, lever);
    }
}
