package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.DaysFrom;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Opcodes;

/** Days of the calendar, each by its number, and the times between them. */
final class Days {

    private static final double SECONDS = 86_400;
    private static final double MOST_DAYS = 1_000_000;

    private Days() {}

    /** The time from one day to another. */
    static @Nullable Term between(@Nullable Term later, @Nullable Term earlier) {
        if (later == null || earlier == null) {
            return null;
        }
        return Arithmetic.term(Shape.EXACT, List.of(later, earlier), (code, given) -> {
            given.load(0);
            given.load(1);
            code.instruction(Opcodes.DSUB);
            code.push(SECONDS);
            code.instruction(Opcodes.DMUL);
        });
    }

    /** The day to which exact times lead; an uncertain one is left to the interpreter, who says that it leads to none. */
    static @Nullable Term from(DaysFrom formula, @Nullable Term start, List<Term> times) {
        if (start == null || !times.stream().allMatch(time -> time.shape().isExact())) {
            return null;
        }
        List<Term> all = new ArrayList<>(List.of(start));
        all.addAll(times);
        return Arithmetic.term(Shape.EXACT, all, (code, given) -> {
            given.load(0);
            code.push(0.0);
            for (int i = 0; i < times.size(); i++) {
                given.load(i + 1);
                code.push(formula.added().get(i) ? 1.0 : -1.0);
                code.call(Days.class, "and", double.class, double.class, double.class, double.class);
            }
            code.call(Days.class, "lead", double.class, double.class, double.class);
        });
    }

    static double and(double days, double time, double sign) {
        return days + sign * time / SECONDS;
    }

    /** Not a number where that leads to no day. */
    static double lead(double start, double days) {
        boolean whole = !(Math.abs(days - Math.rint(days)) > 1e-9);
        return whole && !(Math.abs(days) > MOST_DAYS) ? start + Math.round(days) : Double.NaN;
    }
}
