package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Conditions joined by and, or by or: three-valued logic (Kleene). One that decides alone decides, whatever is open or
 * lacking beside it; otherwise what is lacking must be supplied first. What need not be observed, and was not, has no say:
 * the rest is judged without it.
 *
 * <p>The bounds of the joint probability assume nothing of how the parts depend on each other (Fréchet's bounds).
 */
public record Joined(boolean and, List<Formula> parts) implements Formula {

    /** From the one that decides an {@code and} alone to the one that decides nothing; an {@code or} reads backwards. */
    private static final List<Outcome> WORST_FIRST =
            List.of(Outcome.FAILS, Outcome.CONTRADICTED, Outcome.OPEN, Outcome.TOLERATED, Outcome.PASSES);

    public Joined {
        parts = List.copyOf(parts);
    }

    @Override
    public Value value(Frame frame) {
        List<Value> values = new ArrayList<>(parts.size());
        Value.Judged joint = null;
        for (Formula part : parts) {
            Value value = part.value(frame);
            values.add(value);
            if (value instanceof Value.Judged judged) {
                joint = joint == null ? judged : join(joint, judged);
            }
        }
        Outcome decisive = and ? Outcome.FAILS : Outcome.PASSES;
        boolean lacks =
                values.stream().anyMatch(value -> value instanceof Value.Missing missing && !missing.isNotAsked());
        return joint == null || (lacks && joint.outcome() != decisive) ? Value.Missing.of(values) : joint;
    }

    /**
     * The first of its parts that made it come out as it did: the first that fails of an {@code and} that fails, the first
     * that lacks something where the whole does. Empty where no part tells more than the others, as when all of an
     * {@code and} pass.
     */
    public Optional<Formula> telling(Frame frame) {
        Value whole = value(frame);
        if (whole instanceof Value.Judged judged) {
            boolean none = judged.outcome() == (and ? Outcome.PASSES : Outcome.FAILS);
            return none
                    ? Optional.empty()
                    : first(frame, part -> part instanceof Value.Judged own && own.outcome() == judged.outcome());
        }
        return first(frame, part -> part instanceof Value.Missing missing && !missing.isNotAsked())
                .or(() -> first(frame, Value.Missing.class::isInstance));
    }

    private Optional<Formula> first(Frame frame, Predicate<Value> wanted) {
        return parts.stream().filter(part -> wanted.test(part.value(frame))).findFirst();
    }

    private Value.Judged join(Value.Judged one, Value.Judged other) {
        boolean firstIsWorse = WORST_FIRST.indexOf(one.outcome()) <= WORST_FIRST.indexOf(other.outcome());
        Value.Judged telling = firstIsWorse == and ? one : other;
        Conformity a = one.conformity();
        Conformity b = other.conformity();
        double high = and ? Math.min(a.high(), b.high()) : Math.min(1, a.high() + b.high());
        // A sum of probabilities can miss its bound by the last bit.
        double low = Math.min(high, and ? Math.max(0, a.low() + b.low() - 1) : Math.max(a.low(), b.low()));
        Conformity bounds = new Conformity(low, high, 0, 0);
        return new Value.Judged(
                telling.outcome(), bounds, telling.outcome() == Outcome.FAILS ? telling.side() : Side.NONE);
    }

    @Override
    public String words() {
        return parts.stream()
                .map(part -> part instanceof Joined ? "(" + part.words() + ")" : part.words())
                .collect(Collectors.joining(and ? " and " : " or "));
    }

    @Override
    public void account(Frame frame, Account account) {
        List<String> required = new ArrayList<>(parts.size());
        for (Formula part : parts) {
            Account own = Account.of(part, frame);
            required.add(part instanceof Joined ? "(" + own.requirement() + ")" : own.requirement());
            account.includes(own);
            own.held().forEach(account::holds);
        }
        account.requires(String.join(and ? " and " : " or ", required));
    }
}
