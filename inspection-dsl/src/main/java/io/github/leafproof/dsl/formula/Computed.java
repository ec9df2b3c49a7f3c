package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A number computed from numbers, uncertainty and all: the arithmetic, the functions of the language. A gap takes part
 * as the middle of what its leaves prove.
 *
 * @param rule what is computed
 */
public record Computed(Rule rule, List<Formula> parts, String words) implements Formula {

    public Computed {
        parts = List.copyOf(parts);
    }

    /** How estimates make an estimate; may refuse by IllegalArgumentException with a readable reason. */
    @FunctionalInterface
    public interface Rule {
        Estimate of(List<Estimate> numbers);

        /** In which range the result lies when the numbers lie in these; any at all, where nobody said. */
        default Range range(List<Range> numbers) {
            return Range.ANY;
        }
    }

    @Override
    public Value value(Frame frame) {
        List<Value> values = new ArrayList<>(parts.size());
        List<Estimate> numbers = new ArrayList<>(parts.size());
        for (Formula part : parts) {
            Value value = number(part, frame);
            values.add(value);
            if (value instanceof Value.Amount known) {
                numbers.add(known.estimate());
            }
        }
        if (numbers.size() < values.size()) {
            return Value.Missing.of(values);
        }
        try {
            Estimate result = rule.of(numbers);
            return Double.isFinite(result.value())
                    ? Value.Amount.of(result)
                    : Value.Missing.of(Value.Lack.Kind.NOT_COMPUTABLE, words, "is too large a number");
        } catch (IllegalArgumentException | ArithmeticException refusal) {
            return Value.Missing.of(
                    Value.Lack.Kind.NOT_COMPUTABLE, words, "cannot be computed: " + refusal.getMessage());
        }
    }

    /** The value of a part as a number: a gap yields the middle of its proven range. */
    public static Value number(Formula part, Frame frame) {
        Value value = part.value(frame);
        if (value instanceof Value.Amount known) {
            Estimate drawn = frame.drawn(known.estimate());
            return drawn == known.estimate() ? known : new Value.Amount(drawn, known.shownIn());
        }
        if (!(value instanceof Value.Felt felt)) {
            return value;
        }
        return felt.middle()
                .<Value>map(known -> Value.Amount.of(frame.drawn(known)))
                .orElseGet(() -> Value.Missing.of(Value.Lack.Kind.UNDECIDED, part.words(), sizeUnknown(felt)));
    }

    private static String sizeUnknown(Value.Felt felt) {
        return felt.evidence().trials().isEmpty()
                ? "was not tried with any " + felt.noun()
                : "has no upper end yet, since no " + felt.noun() + " has refused";
    }

    /** The estimate of a value that is a number, or null. */
    static @Nullable Estimate estimate(Value value) {
        return value instanceof Value.Amount number ? number.estimate() : null;
    }
}
