package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Dimension;
import java.util.List;
import java.util.Optional;

/** What kind of value a name or an expression stands for. */
public sealed interface Type {

    /** In the words of the language and of the trade: {@code length}, {@code one of dry, oiled}. */
    String words();

    /** A plain number. */
    static Type number() {
        return new Measure(Dimension.RATIO);
    }

    /** A quantity of a dimension; a plain number has the dimension ratio. */
    record Measure(Dimension dimension) implements Type {
        @Override
        public String words() {
            return dimension.isRatio() ? "number" : dimension.words();
        }
    }

    /** How many: a whole number, zero or more. It computes as a plain number. */
    record Count() implements Type {
        @Override
        public String words() {
            return "count";
        }
    }

    /** Yes or no, and every condition: once judged it may also be open. */
    record YesNo() implements Type {
        @Override
        public String words() {
            return "yes/no";
        }
    }

    /** One of a few options; graded when they stand in order, the lowest first. */
    record Choice(List<String> options, boolean graded) implements Type {
        public Choice {
            options = List.copyOf(options);
        }

        @Override
        public String words() {
            return graded ? "grade " + String.join(" < ", options) : "one of " + String.join(", ", options);
        }
    }

    /** Words. */
    record Text() implements Type {
        @Override
        public String words() {
            return "text";
        }
    }

    /** A length known only by feel: by the leaves or pins that pass and refuse. */
    record Gap() implements Type {
        @Override
        public String words() {
            return "gap";
        }
    }

    /** A list of things found, such as what lies in the box. */
    record Items() implements Type {
        @Override
        public String words() {
            return "items";
        }
    }

    /** A day of the calendar. */
    record Date() implements Type {
        @Override
        public String words() {
            return "date";
        }
    }

    /**
     * Readings of one thing, repeated, in order. Only what is computed of all of them is a number: their mean, say.
     *
     * @param of what each reading is: a quantity or a count
     */
    record Series(Type of) implements Type {
        @Override
        public String words() {
            return "series of " + of.words();
        }
    }

    /** The dimension with which the type takes part in arithmetic: a count is a ratio and a gap a length. */
    default Optional<Dimension> inArithmetic() {
        if (this instanceof Measure measure) {
            return Optional.of(measure.dimension());
        }
        if (this instanceof Count) {
            return Optional.of(Dimension.RATIO);
        }
        return this instanceof Gap ? Optional.of(Dimension.LENGTH) : Optional.empty();
    }
}
