package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.inspection.quantity.Slate;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/** Numbers and gaps against limits. */
final class WithinLimits {

    private static final Class<?> D = double.class;
    private static final Class<?> LINE = int.class;
    private static final int NO_LINE = -1;

    private final Translation translation;
    private final Odds odds;
    private final UncertainLimits uncertain;

    WithinLimits(Translation translation, DecisionRule rule) {
        this.translation = translation;
        this.odds = new Odds(rule);
        this.uncertain = new UncertainLimits(rule, odds);
    }

    @Nullable
    Term of(LimitsHeld held, List<Term> arguments) {
        Term subject = translation.of(held.subject(), arguments);
        if (subject == null || !(subject.shape().isNumber() || subject.shape().equals(Shape.GAP))) {
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
            if (limit == null || !limit.shape().isNumber()) {
                return null;
            }
            all.add(limit);
        }
        Window window = new Window(held.lower() != null, held.upper() != null, all);
        boolean exact = all.stream().skip(1).allMatch(limit -> limit.shape().isExact());
        return Conditions.unlessLacking(all, (code, places) -> {
            if (exact) {
                exact(held.strict(), window, code, places);
            } else {
                uncertain(held.strict(), window, code, places);
            }
        });
    }

    private void exact(boolean strict, Window window, Code code, List<Local> places) {
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
        Shape subject = window.terms().get(0).shape();
        if (!subject.isExact()) {
            code.push(odds, Odds.class);
        }
        load(subject, places.get(0), code);
        window.all().forEach(limit -> limit.to(code, places));
        if (subject.isExact()) {
            code.call(Exact.class, strict ? "strictlyWithin" : "within", int.class, D, D, D, D, D);
        } else if (subject.equals(Shape.GAP)) {
            code.callOn(Odds.class, "gap", int.class, Figures.class, int.class, D, D, D, D);
        } else {
            code.callOn(Odds.class, strict ? "strictReading" : "reading", int.class, D, D, D, D, D, D, D);
        }
        code.place(end);
    }

    /** A gap and whose it is; an exact number; of any other number its uncertainty and the degrees of freedom as well. */
    private static void load(Shape subject, Local place, Code code) {
        if (subject.isWorked()) {
            OnSlate.about(code, place.value(), "value");
            OnSlate.about(code, place.value(), "standardUncertainty");
            OnSlate.about(code, place.value(), "degreesOfFreedom");
        } else if (subject.isKnown()) {
            code.loadDouble(place, 0);
            code.loadDouble(place, 1);
            code.loadDouble(place, 2);
        } else if (subject.isStated()) {
            code.loadDouble(place, 0);
            code.push(subject.stated().standardUncertainty());
            code.push(subject.stated().degreesOfFreedom());
        } else {
            if (subject.equals(Shape.GAP)) {
                code.figures();
            }
            code.loadValue(subject, place);
        }
    }

    private void uncertain(boolean strict, Window window, Code code, List<Local> places) {
        List<Integer> lines = new ArrayList<>();
        Shape subject = window.terms().get(0).shape();
        boolean gap = subject.equals(Shape.GAP);
        for (int i = 0; i < places.size(); i++) {
            boolean line = i > 0 || !gap;
            lines.add(line ? OnSlate.line(code, window.terms().get(i).shape(), places.get(i)) : NO_LINE);
        }
        code.push(uncertain, UncertainLimits.class);
        if (gap) {
            load(subject, places.get(0), code);
            OnSlate.slate(code);
        } else {
            OnSlate.slate(code);
            code.push(code.line());
            code.push(lines.get(0));
            code.push(strict ? 1 : 0);
        }
        int low = window.hasLow() ? lines.get(1) : NO_LINE;
        int high = window.hasHigh() ? lines.get(window.hasLow() ? 2 : 1) : NO_LINE;
        List<Integer> margins = lines.subList(window.firstMargin(), lines.size());
        code.push(low);
        code.push(high);
        wider(low, margins, "widerLow", code);
        wider(high, margins, "widerHigh", code);
        if (gap) {
            code.callOn(
                    UncertainLimits.class,
                    "gap",
                    int.class,
                    Figures.class,
                    int.class,
                    Slate.class,
                    LINE,
                    LINE,
                    LINE,
                    LINE);
        } else {
            code.callOn(
                    UncertainLimits.class,
                    "reading",
                    int.class,
                    Slate.class,
                    LINE,
                    LINE,
                    boolean.class,
                    LINE,
                    LINE,
                    LINE,
                    LINE);
        }
    }

    private static void wider(int limit, List<Integer> margins, String function, Code code) {
        margins.forEach(margin -> OnSlate.slate(code));
        code.push(limit);
        for (int margin : margins) {
            code.push(margin);
            code.call(UncertainLimits.class, function, int.class, Slate.class, LINE, LINE);
            // The slate for the next one lies below.
        }
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

        int firstMargin() {
            return 1 + (hasLow ? 1 : 0) + (hasHigh ? 1 : 0);
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
            for (int margin = firstMargin(); margin < terms.size(); margin++) {
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
