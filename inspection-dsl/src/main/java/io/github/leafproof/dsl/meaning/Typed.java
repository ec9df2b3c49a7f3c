package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;

/** A formula and the type of what it yields. */
record Typed(Formula formula, Type type) {

    static Typed constant(Value value, String words, Type type) {
        return new Typed(new Constant(value, words), type);
    }

    boolean isCondition() {
        return type instanceof Type.YesNo;
    }

    boolean isNumeric() {
        return type.inArithmetic().isPresent();
    }
}
