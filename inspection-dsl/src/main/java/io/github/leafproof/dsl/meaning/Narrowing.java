package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.InUnit;
import io.github.leafproof.dsl.formula.Joined;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Matches;
import io.github.leafproof.dsl.formula.Not;
import io.github.leafproof.dsl.formula.Range;
import io.github.leafproof.dsl.formula.SameNumber;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.jspecify.annotations.Nullable;

/** What follows for the slots of a condition from knowing that it holds, or that it fails. */
final class Narrowing {

    /** Conditions that have names, within each other. */
    private static final int DEEPEST = 20;

    private final Possibilities from;
    private final int depth;

    Narrowing(Possibilities from) {
        this(from, 0);
    }

    private Narrowing(Possibilities from, int depth) {
        this.from = from;
        this.depth = depth;
    }

    Optional<Possibilities> where(Formula condition) {
        return from.canHold(condition) ? narrowed(condition, true) : Optional.empty();
    }

    Optional<Possibilities> whereNot(Formula condition) {
        return from.canFail(condition) ? narrowed(condition, false) : Optional.empty();
    }

    private Optional<Possibilities> narrowed(Formula condition, boolean holds) {
        if (depth >= DEEPEST) {
            return Optional.of(from);
        }
        Narrowing inside = new Narrowing(from, depth + 1);
        if (condition instanceof Not not) {
            return holds ? inside.whereNot(not.part()) : inside.where(not.part());
        }
        if (condition instanceof Joined joined) {
            return joined(joined, holds);
        }
        if (condition instanceof Slot slot) {
            Possible truth = new Possible.Truth(Fate.certain(holds));
            return from.ground().derived(slot.number()).isPresent()
                    ? inside.derived(slot, holds)
                    : Optional.of(from.with(slot.number(), truth));
        }
        if (condition instanceof LimitsHeld held) {
            return limits(held, holds);
        }
        if (condition instanceof SameNumber same && same.same() == holds) {
            return numbers(same.subject(), wider(from.range(same.other())))
                    .flatMap(next ->
                            new Narrowing(next, depth).numbers(same.other(), wider(from.range(same.subject()))));
        }
        return condition instanceof Matches matches ? matches(matches, holds) : Optional.of(from);
    }

    private Optional<Possibilities> derived(Slot slot, boolean holds) {
        Formula formula = from.ground().derived(slot.number()).orElseThrow().formula();
        Possible truth = new Possible.Truth(Fate.certain(holds));
        return (holds ? where(formula) : whereNot(formula)).map(so -> so.with(slot.number(), truth));
    }

    /** All parts of a row are known where an {@code and} holds or an {@code or} fails; else the one that is left. */
    private Optional<Possibilities> joined(Joined joined, boolean holds) {
        if (joined.and() == holds) {
            return together(joined);
        }
        List<Formula> telling = joined.parts().stream()
                .filter(part -> holds ? from.canHold(part) : from.canFail(part))
                .toList();
        return telling.size() == 1 ? all(telling, holds) : Optional.of(from);
    }

    /** Where all parts of an {@code and} hold, or all parts of an {@code or} fail. */
    Optional<Possibilities> together(Joined joined) {
        return depth >= DEEPEST ? Optional.of(from) : all(joined.parts(), joined.and());
    }

    private Optional<Possibilities> all(List<Formula> parts, boolean holds) {
        Possibilities so = from;
        for (Formula part : parts) {
            if (!from.ground().has(part, Ground.Trait.LEFT_OUT)) {
                Narrowing next = new Narrowing(so, depth + 1);
                Optional<Possibilities> further = holds ? next.where(part) : next.whereNot(part);
                if (further.isEmpty()) {
                    return further;
                }
                so = further.get();
            }
        }
        return Optional.of(so);
    }

    private Optional<Possibilities> limits(LimitsHeld held, boolean holds) {
        Held limits = new Held(from, held);
        Range range = holds ? limits.whereHeld() : limits.whereFailed();
        return numbers(held.subject(), range);
    }

    /** Where a number lies in a range; a gap is known by its leaves, and stays as it is. */
    private Optional<Possibilities> numbers(Formula subject, @Nullable Range range) {
        Formula number = subject instanceof InUnit inUnit ? inUnit.part() : subject;
        if (range == null || !(number instanceof Slot slot) || !(from.of(slot) instanceof Possible.Numbers before)) {
            return Optional.of(from);
        }
        double low = Math.max(before.range().low(), range.low());
        double high = Math.min(before.range().high(), range.high());
        return low <= high
                ? Optional.of(from.with(slot.number(), new Possible.Numbers(new Range(low, high), before.exact())))
                : Optional.empty();
    }

    private static Range wider(Range range) {
        return new Range(range.low() - Held.slack(range.low()), range.high() + Held.slack(range.high()));
    }

    private Optional<Possibilities> matches(Matches matches, boolean holds) {
        BiPredicate<Value, Value> test = (one, two) -> matches.holds().test(one, two) == holds;
        Optional<Possibilities> so = among(from, matches.subject(), matches.other(), test);
        return so.flatMap(next -> among(next, matches.other(), matches.subject(), (two, one) -> test.test(one, two)));
    }

    /** Of the values of a slot those that stand in the relation to one of the other's. */
    private static Optional<Possibilities> among(
            Possibilities from, Formula subject, Formula other, BiPredicate<Value, Value> test) {
        if (!(subject instanceof Slot slot
                && from.of(subject) instanceof Possible.Among one
                && from.of(other) instanceof Possible.Among two)) {
            return Optional.of(from);
        }
        Set<Value> left = new LinkedHashSet<>();
        for (Value value : one.values()) {
            if (from.ground().isTired() || two.values().stream().anyMatch(with -> test.test(value, with))) {
                left.add(value);
            }
        }
        return left.isEmpty() ? Optional.empty() : Optional.of(from.with(slot.number(), new Possible.Among(left)));
    }
}
