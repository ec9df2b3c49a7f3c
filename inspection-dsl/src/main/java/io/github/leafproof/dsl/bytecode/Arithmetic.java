package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Operation;
import io.github.leafproof.dsl.formula.Operation.Sign;
import io.github.leafproof.dsl.formula.Reckoning;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.List;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Opcodes;

/**
 * What is computed of numbers without uncertainty, or of numbers whose uncertainty is known before any engine is.
 *
 * <p>A step that has no finite result has none at all to the interpreter, and neither has what follows from it. In double
 * precision no further step makes a finite number of it again, so that one look at the end is enough: what is not finite
 * stays so as the left side of a row, which is where it stands, and no right side is infinite.
 */
final class Arithmetic {

    private static final Class<?>[] PAIR = {double.class, double.class};

    private Arithmetic() {}

    /** The term of a rule applied to numbers, or null where it is left to the interpreter. */
    static @Nullable Term of(Computed.Rule rule, List<Term> numbers) {
        if (!numbers.stream().allMatch(number -> number.shape().isNumber())) {
            return null;
        }
        if (rule instanceof Reckoning) {
            return OnSlate.of(rule, numbers);
        }
        if (!(rule instanceof Operation operation)) {
            return null;
        }
        if (!numbers.stream().allMatch(number -> number.shape().isDouble())) {
            return OnSlate.of(operation, numbers);
        }
        if (operation instanceof Operation.Erring erring && !erring.share()) {
            return erring(erring.error(), numbers.get(0));
        }
        boolean exact = numbers.stream().allMatch(number -> number.shape().isExact());
        if (exact && !(operation instanceof Operation.Erring)) {
            return exact(operation, numbers);
        }
        Term sum = operation instanceof Operation.InARow row ? sum(row, numbers) : null;
        return sum == null ? OnSlate.of(operation, numbers) : sum;
    }

    private static Term erring(Estimate error, Term number) {
        Shape shape = Shape.stated(error(number.shape()).plus(bare(error)));
        return term(shape, List.of(number), (code, given) -> {
            given.load(0);
            code.push(error.value());
            code.instruction(Opcodes.DADD);
        });
    }

    /** Sums and differences: how uncertain they are does not depend on the numbers. */
    private static @Nullable Term sum(Operation.InARow row, List<Term> numbers) {
        Estimate error = error(numbers.get(0).shape());
        for (int i = 0; i < row.signs().size(); i++) {
            Sign sign = row.signs().get(i);
            Estimate next = error(numbers.get(i + 1).shape());
            if (sign != Sign.PLUS && sign != Sign.MINUS) {
                return null;
            }
            error = sign == Sign.PLUS ? error.plus(next) : error.minus(next);
        }
        Shape shape = error.isExact() ? Shape.EXACT : Shape.stated(error);
        return term(shape, numbers, (code, given) -> inARow(row, code, given));
    }

    /** A number that is as uncertain as a value of this shape. */
    private static Estimate error(Shape shape) {
        return shape.isStated() ? bare(shape.stated()) : Estimate.exact(0, Dimension.RATIO);
    }

    /** The same uncertainty, whatever it is the uncertainty of. */
    private static Estimate bare(Estimate estimate) {
        return estimate.map(value -> 0, 1, Dimension.RATIO);
    }

    private static Term exact(Operation operation, List<Term> numbers) {
        return term(Shape.EXACT, numbers, (code, given) -> {
            if (operation instanceof Operation.InARow row) {
                inARow(row, code, given);
            } else if (operation instanceof Operation.Function function) {
                function(function, code, given);
            } else if (operation instanceof Operation.Power power) {
                given.load(0);
                code.push((double) power.exponent());
                code.call(Math.class, "pow", double.class, double.class, double.class);
            } else {
                given.load(0);
                code.instruction(Opcodes.DNEG);
            }
        });
    }

    private static void inARow(Operation.InARow row, Code code, Given given) {
        given.load(0);
        for (int i = 0; i < row.signs().size(); i++) {
            given.load(i + 1);
            code.instruction(
                    switch (row.signs().get(i)) {
                        case PLUS -> Opcodes.DADD;
                        case MINUS -> Opcodes.DSUB;
                        case TIMES -> Opcodes.DMUL;
                        case DIVIDED_BY -> Opcodes.DDIV;
                    });
        }
    }

    private static void function(Operation.Function function, Code code, Given given) {
        given.load(0);
        switch (function) {
            case MIN, MAX -> {
                for (int i = 1; i < given.size(); i++) {
                    given.load(i);
                    code.call(Math.class, function == Operation.Function.MIN ? "min" : "max", double.class, PAIR);
                }
            }
            case ABS -> code.call(Exact.class, "absolute", double.class, double.class);
            case SQRT -> code.call(Math.class, "sqrt", double.class, double.class);
            case SIN -> code.call(Math.class, "sin", double.class, double.class);
            case COS -> code.call(Math.class, "cos", double.class, double.class);
            case TAN -> code.call(Exact.class, "tangent", double.class, double.class);
        }
    }

    /** A term that computes, from numbers in local variables, one on the stack. */
    static Term term(Shape shape, List<Term> numbers, BiConsumer<Code, Given> computing) {
        return new Term(shape, code -> {
            List<Local> places =
                    numbers.stream().map(number -> number.written().to(code)).toList();
            computing.accept(code, new Given(code, numbers, places));
            int value = code.value(shape);
            if (!code.loadLacks(places)) {
                code.push(0);
            }
            code.loadValue(shape, new Local(Local.NONE, value));
            code.call(Truth.class, "computed", int.class, int.class, double.class);
            return new Local(code.state().state(), value);
        });
    }

    record Given(Code code, List<Term> terms, List<Local> places) {
        void load(int number) {
            code.loadValue(terms.get(number).shape(), places.get(number));
        }

        int size() {
            return places.size();
        }
    }
}
