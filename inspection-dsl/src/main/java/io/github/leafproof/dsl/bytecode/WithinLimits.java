package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/** Numbers and gaps against limits that are exact themselves. Uncertain limits are left to the interpreter. */
final class WithinLimits {

    private static final Class<?> D = double.class;

    private final Translation translation;
    private final Odds odds;

    WithinLimits(Translation translation, Odds odds) {
        this.translation = translation;
        this.odds = odds;
    }

    @Nullable
    Term of(LimitsHeld held, List<Term> arguments) {
        Term subject = translation.of(held.subject(), arguments);
        if (subject == null) {
            return null;
        }
        List<Term> all = new ArrayList<>(List.of(subject));
        List<Formula> written = new ArrayList<>();
        if (held.lower() != null) {
            written.add(held.lower());
        }
        if (held.upper() != null) {
            written.add(held.upper());
        }
        written.addAll(held.tolerated());
        for (Formula each : written) {
            Term limit = translation.number(each, arguments);
            if (limit == null || !limit.shape().isExact()) {
                return null;
            }
            all.add(limit);
        }
        Window window = new Window(held.lower() != null, held.upper() != null, all);
        return Conditions.unlessLacking(
                all, (code, places) -> judge(subject.shape(), held.strict(), window, code, places));
    }

    private void judge(Shape subject, boolean strict, Window window, Code code, List<Local> places) {
        Label end = new Label();
        Label apart = new Label();
        if (window.mayBeUpsideDown()) {
            window.low().to(code, places);
            window.high().to(code, places);
            code.instruction(Opcodes.DCMPL);
            code.jump(Opcodes.IFLE, apart);
            code.push(Truth.NOT_COMPUTABLE);
            code.jump(Opcodes.GOTO, end);
            code.place(apart);
        }
        boolean exact = subject.isExact();
        boolean gap = subject.equals(Shape.GAP);
        if (!exact) {
            code.push(odds, Odds.class);
        }
        if (gap) {
            code.figures();
        }
        code.loadValue(subject, places.get(0));
        if (subject.isStated()) {
            code.push(subject.stated().standardUncertainty());
            code.push(subject.stated().degreesOfFreedom());
        }
        window.all().forEach(limit -> limit.to(code, places));
        if (exact) {
            code.call(Exact.class, strict ? "strictlyWithin" : "within", int.class, D, D, D, D, D);
        } else if (gap) {
            code.callOn(Odds.class, "gap", int.class, Figures.class, int.class, D, D, D, D);
        } else {
            code.callOn(Odds.class, strict ? "strictReading" : "reading", int.class, D, D, D, D, D, D, D);
        }
        code.place(end);
    }

    /**
     * The limits among the terms, of which the first is held against them.
     *
     * @param hasLow whether the second is the lower limit
     * @param hasHigh whether the next is the upper one; all others are what is tolerated
     */
    private record Window(boolean hasLow, boolean hasHigh, List<Term> terms) {

        /** Loads a limit. */
        private interface Limit {
            void to(Code code, List<Local> places);
        }

        boolean mayBeUpsideDown() {
            return hasLow
                    && hasHigh
                    && !(terms.get(1).constant().isPresent()
                            && terms.get(2).constant().isPresent()
                            && terms.get(1).constant().get()
                                    <= terms.get(2).constant().get());
        }

        Limit low() {
            return hasLow ? at(1) : (code, places) -> code.push(Double.NEGATIVE_INFINITY);
        }

        Limit high() {
            return hasHigh ? at(hasLow ? 2 : 1) : (code, places) -> code.push(Double.POSITIVE_INFINITY);
        }

        private Limit at(int number) {
            return (code, places) -> code.loadValue(Shape.EXACT, places.get(number));
        }

        /** Lower, upper, and both as far as is tolerated: each margin widens the side it lies on. */
        List<Limit> all() {
            Limit wideLow = low();
            Limit wideHigh = high();
            for (int margin = 1 + (hasLow ? 1 : 0) + (hasHigh ? 1 : 0); margin < terms.size(); margin++) {
                wideLow = wider(wideLow, at(margin), "min");
                wideHigh = wider(wideHigh, at(margin), "max");
            }
            return List.of(low(), high(), wideLow, wideHigh);
        }

        private static Limit wider(Limit limit, Limit margin, String function) {
            return (code, places) -> {
                limit.to(code, places);
                margin.to(code, places);
                code.call(Math.class, function, D, D, D);
            };
        }
    }
}
