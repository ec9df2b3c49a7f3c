package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Conformity;
import io.github.leafproof.inspection.verdict.DecisionRule;
import io.github.leafproof.inspection.verdict.Limits;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Whether a quantity, or a gap known by feel, lies within its limits.
 *
 * @param lower the least allowed, or null
 * @param upper the most allowed, or null
 * @param tolerated limits beyond those, inside which the value is let pass with a remark; each widens the side it lies on
 * @param strict whether a value exactly on the limit is outside; it matters only for values without uncertainty, such
 *     as counts
 * @param relation as written behind the subject: {@code between 0.03 mm and 0.10 mm}
 */
public record LimitsHeld(
        Formula subject,
        @Nullable Formula lower,
        @Nullable Formula upper,
        List<Formula> tolerated,
        boolean strict,
        Wording relation)
        implements Formula {

    public LimitsHeld {
        tolerated = List.copyOf(tolerated);
    }

    /** The same with another lower limit; its words stay. */
    public Formula withLower(Formula other) {
        return new LimitsHeld(subject, other, upper, tolerated, strict, relation);
    }

    /** The same with another upper limit; its words stay. */
    public Formula withUpper(Formula other) {
        return new LimitsHeld(subject, lower, other, tolerated, strict, relation);
    }

    /** How the limits are put into words, given each limit as words. */
    public record Wording(String form, List<Formula> limits) {
        public Wording {
            limits = List.copyOf(limits);
        }

        /** With the limits as the procedure writes them. */
        String plain() {
            return String.format(
                    Locale.ROOT, form, limits.stream().map(Formula::words).toArray());
        }

        /** With the numbers that they have for this engine. */
        String inNumbers(Frame frame) {
            return String.format(
                    Locale.ROOT,
                    form,
                    limits.stream().map(limit -> Shown.limit(limit, frame)).toArray());
        }
    }

    @Override
    public Value value(Frame frame) {
        Value value = subject.value(frame);
        List<Value> needed = new ArrayList<>(List.of(value));
        List<Formula> limits = new ArrayList<>(2 + tolerated.size());
        addLimits(limits);
        boolean lacks = value instanceof Value.Missing;
        for (Formula limit : limits) {
            Value number = Computed.number(limit, frame);
            needed.add(number);
            lacks |= number instanceof Value.Missing;
        }
        if (lacks) {
            return Value.Missing.of(needed);
        }
        Window window = Window.of(this, frame);
        if (window.isUpsideDown()) {
            return Value.Missing.of(
                    Value.Lack.Kind.NOT_COMPUTABLE,
                    words(),
                    "cannot be judged: its lower limit is above its upper one");
        }
        if (value instanceof Value.Felt felt) {
            return felt(felt, window, frame.rule());
        }
        Estimate reading = frame.drawn(((Value.Amount) value).estimate());
        return reading(reading, window, frame.rule());
    }

    private Value felt(Value.Felt felt, Window window, DecisionRule rule) {
        if (felt.evidence().trials().isEmpty()) {
            return Value.Missing.of(Value.Lack.Kind.NOT_ENTERED, subject.words(), "was not entered");
        }
        if (!felt.evidence().contradictions(rule).isEmpty()) {
            return new Value.Judged(Outcome.CONTRADICTED, Conformity.unknown(), Side.NONE);
        }
        Conformity aimed = ConformityWithin.ofGap(felt.evidence(), window.lower(), window.upper(), rule);
        Conformity wider = window.isWidened()
                ? ConformityWithin.ofGap(felt.evidence(), window.toleratedLower(), window.toleratedUpper(), rule)
                : aimed;
        return judged(aimed, wider, rule);
    }

    private Value reading(Estimate reading, Window window, DecisionRule rule) {
        Conformity aimed = ConformityWithin.ofReading(reading, window.lower(), window.upper(), strict);
        Conformity wider = window.isWidened()
                ? ConformityWithin.ofReading(reading, window.toleratedLower(), window.toleratedUpper(), strict)
                : aimed;
        return judged(aimed, wider, rule);
    }

    private static Value judged(Conformity aimed, Conformity wider, DecisionRule rule) {
        Outcome outcome = rule.decide(aimed, wider);
        return new Value.Judged(outcome, aimed, outcome == Outcome.FAILS ? wider.side() : Side.NONE);
    }

    private void addLimits(List<Formula> all) {
        if (lower != null) {
            all.add(lower);
        }
        if (upper != null) {
            all.add(upper);
        }
        all.addAll(tolerated);
    }

    @Override
    public String words() {
        return subject.words() + " " + relation.plain();
    }

    @Override
    public void account(Frame frame, Account account) {
        Value value = value(frame);
        account.requires(subject.words() + " " + relation.inNumbers(frame));
        account.measures(subject, frame);
        if (value instanceof Value.Judged judged) {
            Window window = Window.of(this, frame);
            account.says(LimitReason.of(this, judged, window, frame));
            account.holds(new Account.Held(subject, subject.value(frame), window, judged));
        }
    }

    @Override
    public List<Formula> parts() {
        List<Formula> parts = new ArrayList<>(3 + tolerated.size());
        parts.add(subject);
        addLimits(parts);
        return Collections.unmodifiableList(parts);
    }

    /** The limits as numbers for one engine; null where there is none. The tolerated ones are the same or wider. */
    public record Window(
            @Nullable Estimate lower,
            @Nullable Estimate upper,
            @Nullable Estimate toleratedLower,
            @Nullable Estimate toleratedUpper) {

        /** The limits that a condition holds its value to, for the engine that the frame belongs to. */
        public static Window of(LimitsHeld held, Frame frame) {
            Estimate lower = limit(held.lower, frame);
            Estimate upper = limit(held.upper, frame);
            Estimate widerLower = lower;
            Estimate widerUpper = upper;
            for (Formula formula : held.tolerated) {
                Estimate margin = limit(formula, frame);
                if (margin != null && widerUpper != null && margin.value() > widerUpper.value()) {
                    widerUpper = margin;
                } else if (margin != null && widerLower != null && margin.value() < widerLower.value()) {
                    widerLower = margin;
                }
            }
            return new Window(lower, upper, widerLower, widerUpper);
        }

        private static @Nullable Estimate limit(@Nullable Formula formula, Frame frame) {
            return formula == null ? null : Computed.estimate(Computed.number(formula, frame));
        }

        /** Whether something beyond the limits is tolerated. */
        boolean isWidened() {
            return toleratedLower != lower || toleratedUpper != upper;
        }

        boolean isUpsideDown() {
            return lower != null && upper != null && lower.value() > upper.value();
        }
    }

    /** The window as the limits of the core, for those who compute with exact numbers. */
    static Limits exactly(@Nullable Estimate lower, @Nullable Estimate upper) {
        double from = lower == null ? Double.NEGATIVE_INFINITY : lower.value();
        double to = upper == null ? Double.POSITIVE_INFINITY : upper.value();
        return new Limits(from, to, from, to);
    }
}
