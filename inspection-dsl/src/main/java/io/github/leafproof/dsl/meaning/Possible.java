package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Range;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Dimension;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Set;

/** Which values something can have, where it has one at all; always too many rather than too few. */
sealed interface Possible {

    /** Anything: nothing is known. */
    record Anything() implements Possible {}

    /** A gap, wherever it lies and whatever its leaves prove. */
    record Gap() implements Possible {}

    /**
     * Numbers.
     *
     * @param exact whether they are without any uncertainty, such as counts
     */
    record Numbers(Range range, boolean exact) implements Possible {}

    /** One of a few values: options, words, or days. */
    record Among(Set<Value> values) implements Possible {
        public Among {
            values = Set.copyOf(values);
        }
    }

    /**
     * A condition.
     *
     * @param fates which of them; nobody changes them any more
     */
    record Truth(Set<Fate> fates) implements Possible {
        public Truth {
            fates = Collections.unmodifiableSet(fates);
        }
    }

    /** What a person can enter, or a card can state, for something of this type. */
    static Possible of(Type type) {
        if (type instanceof Type.Choice choice) {
            Set<Value> options = new LinkedHashSet<>();
            choice.options().forEach(word -> options.add(new Value.Pick(options.size(), word)));
            return new Among(options);
        }
        if (type instanceof Type.YesNo) {
            return new Truth(EnumSet.of(Fate.PASSES, Fate.FAILS));
        }
        if (type instanceof Type.Count) {
            return new Numbers(Range.FROM_ZERO, true);
        }
        if (type instanceof Type.Measure measure) {
            boolean absolute = measure.dimension().equals(Dimension.TEMPERATURE);
            return new Numbers(absolute ? Range.FROM_ZERO : Range.ANY, false);
        }
        return type instanceof Type.Gap ? new Gap() : new Anything();
    }

    /** A value written out. */
    static Possible of(Value value) {
        if (value instanceof Value.Amount amount) {
            return new Numbers(
                    Range.at(amount.estimate().value()), amount.estimate().isExact());
        }
        if (value instanceof Value.Judged judged) {
            return new Truth(EnumSet.of(Fate.of(judged)));
        }
        boolean known = value instanceof Value.Pick || value instanceof Value.Words || value instanceof Value.Day;
        return known ? new Among(Set.of(value)) : new Anything();
    }

    /** What either can be. */
    default Possible or(Possible other) {
        if (this instanceof Numbers one && other instanceof Numbers two) {
            return new Numbers(one.range().with(two.range()), one.exact() && two.exact());
        }
        if (this instanceof Among one && other instanceof Among two) {
            Set<Value> both = new LinkedHashSet<>(one.values());
            both.addAll(two.values());
            return new Among(both);
        }
        if (this instanceof Truth one && other instanceof Truth two) {
            Set<Fate> both = EnumSet.noneOf(Fate.class);
            both.addAll(one.fates());
            both.addAll(two.fates());
            return new Truth(both);
        }
        return equals(other) ? this : new Anything();
    }

    /** As a condition. */
    default Set<Fate> fates() {
        return this instanceof Truth truth ? truth.fates() : Fate.any();
    }

    /** As a number; a gap as the middle of its range, which may be anywhere. */
    default Numbers number() {
        return this instanceof Numbers numbers ? numbers : new Numbers(Range.ANY, false);
    }
}
