package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.inspection.quantity.Estimate;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How a value lies in local variables while compiled code runs. What it lacks lies beside it, see {@link Truth}.
 *
 * @param error any number that is as uncertain, where that was known when the procedure was compiled; else null
 */
record Shape(Kind kind, @Nullable Estimate error) {

    /** What lies there. */
    enum Kind {
        /** A condition: there is nothing but its truth. */
        CONDITION,
        /** A double: a number without uncertainty, the place of an option among the others, the number of a word or of a day. */
        EXACT,
        /** A double: a number whose uncertainty was known when the procedure was compiled. */
        STATED,
        /** Four doubles: a number that may be uncertain, its uncertainty, the degrees of freedom of that, its {@link Origin}. */
        KNOWN,
        /** A number computed from uncertain ones: a line of the slate, known when the code is written. */
        WORKED,
        /** An int: where among the figures the row of a gap begins. */
        GAP,
        /** An int: where the row of things found begins. */
        THINGS,
        /** An int: where the statistics of readings begin. */
        READINGS
    }

    static final Shape CONDITION = new Shape(Kind.CONDITION, null);
    static final Shape EXACT = new Shape(Kind.EXACT, null);
    static final Shape KNOWN = new Shape(Kind.KNOWN, null);
    static final Shape WORKED = new Shape(Kind.WORKED, null);
    static final Shape GAP = new Shape(Kind.GAP, null);
    static final Shape THINGS = new Shape(Kind.THINGS, null);
    static final Shape READINGS = new Shape(Kind.READINGS, null);

    /** A number that is as uncertain as this one. */
    static Shape stated(Estimate error) {
        return new Shape(Kind.STATED, error);
    }

    /** How uncertain it is, where that was known beforehand. */
    Estimate stated() {
        return Objects.requireNonNull(error);
    }

    boolean isCondition() {
        return kind == Kind.CONDITION;
    }

    boolean isExact() {
        return kind == Kind.EXACT;
    }

    boolean isStated() {
        return kind == Kind.STATED;
    }

    boolean isKnown() {
        return kind == Kind.KNOWN;
    }

    boolean isWorked() {
        return kind == Kind.WORKED;
    }

    /** Whether it can be written on a line of the slate. */
    boolean isNumber() {
        return isDouble() || isKnown() || isWorked();
    }

    /** Whether it is one double. */
    boolean isDouble() {
        return isExact() || isStated();
    }

    /** Whether it is a place among the figures. */
    boolean isRow() {
        return kind == Kind.GAP || kind == Kind.THINGS || kind == Kind.READINGS;
    }

    /** How many doubles it is. */
    int doubles() {
        return isDouble() ? 1 : isKnown() ? 4 : 0;
    }
}
