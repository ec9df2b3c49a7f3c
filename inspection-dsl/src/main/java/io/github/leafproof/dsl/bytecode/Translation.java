package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.bytecode.Term.Local;
import io.github.leafproof.dsl.formula.Applied;
import io.github.leafproof.dsl.formula.Argument;
import io.github.leafproof.dsl.formula.Chosen;
import io.github.leafproof.dsl.formula.Computed;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.DaysBetween;
import io.github.leafproof.dsl.formula.DaysFrom;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Frame;
import io.github.leafproof.dsl.formula.IfElse;
import io.github.leafproof.dsl.formula.InUnit;
import io.github.leafproof.dsl.formula.OfReadings;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.verdict.DecisionRule;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;

/**
 * From a formula to what can be compiled; nothing where a formula, or a part of it, is left to the interpreter. Every term does
 * what its formula's {@code value} does, in the same order of operations.
 */
final class Translation {

    /**
     * So many formulas, functions written out, make some 5 000 bytes of code at most. A method of more than 8 000 is never
     * compiled by the machine, so that whatever is larger is better interpreted.
     */
    private static final int LARGEST = 120;

    private final Layout layout;
    private final IntFunction<@Nullable Term> slots;
    private final DecisionRule rule;
    private final Conditions conditions;
    private int size;

    /**
     * A translation of formulas that are decided with this rule.
     *
     * @param slots how each slot is read
     */
    Translation(Layout layout, IntFunction<@Nullable Term> slots, DecisionRule rule) {
        this.layout = layout;
        this.slots = slots;
        this.rule = rule;
        this.conditions = new Conditions(this, rule);
    }

    /** The term of a formula that stands in no function. */
    @Nullable
    Term of(Formula formula) {
        size = 0;
        return of(formula, List.of());
    }

    @Nullable
    Term of(Formula formula, List<Term> arguments) {
        size++;
        if (size > LARGEST) {
            return null;
        }
        if (formula instanceof Slot slot) {
            return slots.apply(slot.number());
        }
        if (formula instanceof Constant constant) {
            return constant(constant.value());
        }
        if (formula instanceof Argument argument) {
            Shape shape = arguments.get(argument.number()).shape();
            return new Term(shape, code -> code.argument(argument.number()));
        }
        if (formula instanceof Applied applied) {
            return applied(applied, arguments);
        }
        if (formula instanceof IfElse either) {
            return either(either, arguments);
        }
        if (formula instanceof Chosen chosen) {
            return chosen(chosen, arguments);
        }
        if (formula instanceof InUnit shown) {
            return number(shown.part(), arguments);
        }
        if (formula instanceof OfReadings statistic) {
            return statistic(statistic, arguments);
        }
        if (formula instanceof DaysBetween days) {
            return Days.between(of(days.later(), arguments), of(days.earlier(), arguments));
        }
        if (formula instanceof DaysFrom days) {
            return days(days, arguments);
        }
        return formula instanceof Computed computed ? computed(computed, arguments) : conditions.of(formula, arguments);
    }

    /** The terms of all of these, or null where one has none. */
    @Nullable
    List<Term> all(List<Formula> formulas, List<Term> arguments) {
        List<Term> terms = new ArrayList<>();
        for (Formula formula : formulas) {
            Term term = of(formula, arguments);
            if (term == null) {
                return null;
            }
            terms.add(term);
        }
        return terms;
    }

    /** A formula as a number: a gap yields the middle of its proven range. */
    @Nullable
    Term number(Formula formula, List<Term> arguments) {
        Term term = of(formula, arguments);
        return term != null && term.shape().equals(Shape.GAP) ? inRow(term, Gap.MIDDLE, Truth.UNDECIDED) : term;
    }

    /**
     * A number in a row, and how well it is known; with an uncertainty below zero it lacks.
     *
     * @param place how far behind the beginning of the row
     * @param why why it lacks, then
     */
    private static Term inRow(Term row, int place, int why) {
        return new Term(Shape.KNOWN, code -> {
            Local of = row.written().to(code);
            Local result = code.reserved(Shape.KNOWN);
            code.load(of);
            code.storeState(result);
            Label end = new Label();
            code.load(of);
            code.jump(Opcodes.IFNE, end);
            inRow(code, row.shape(), of, place + 1);
            code.push(why);
            code.call(Figures.class, "lacks", int.class, double.class, int.class);
            for (int i = 0; i < Shape.KNOWN.doubles(); i++) {
                inRow(code, row.shape(), of, place + i);
            }
            code.move(Shape.KNOWN, code.both(Shape.KNOWN), result);
            code.place(end);
            return result;
        });
    }

    private static void inRow(Code code, Shape shape, Local row, int place) {
        code.numbers(false);
        code.loadValue(shape, row);
        code.push(place);
        code.instruction(Opcodes.IADD);
        code.instruction(Opcodes.DALOAD);
    }

    /** What is written into the procedure, or follows from that alone. */
    private @Nullable Term constant(Value value) {
        if (value instanceof Value.Judged || value instanceof Value.Missing) {
            Term.Writing written = code -> {
                code.push(Truth.of(value));
                return code.state();
            };
            return new Term(Shape.CONDITION, written, value);
        }
        if (value instanceof Value.Amount amount) {
            boolean exact = amount.estimate().isExact();
            Shape shape = exact ? Shape.EXACT : Shape.stated(amount.estimate());
            return constant(shape, amount.estimate().value(), value);
        }
        if (value instanceof Value.Pick pick) {
            return constant(Shape.EXACT, pick.option(), value);
        }
        if (value instanceof Value.Day day) {
            return constant(Shape.EXACT, (double) day.day().toEpochDay(), value);
        }
        Integer word = value instanceof Value.Words text ? layout.words().get(text.text()) : null;
        return word == null ? null : constant(Shape.EXACT, word, value);
    }

    private static Term constant(Shape shape, double number, Value value) {
        return new Term(
                shape,
                code -> {
                    code.push(number);
                    return new Local(Local.NONE, code.value(shape));
                },
                value);
    }

    private @Nullable Term computed(Computed computed, List<Term> arguments) {
        List<Term> numbers = new ArrayList<>();
        for (Formula part : computed.parts()) {
            Term number = number(part, arguments);
            if (number == null) {
                return null;
            }
            numbers.add(number);
        }
        if (numbers.stream().allMatch(number -> number.known() != null)) {
            Value value = computed.value(Frame.of(new Value[0], rule, UnitSystem.METRIC));
            return value instanceof Value.Amount ? constant(value) : null;
        }
        return Arithmetic.of(computed.rule(), numbers);
    }

    private @Nullable Term days(DaysFrom days, List<Term> arguments) {
        List<Term> times = new ArrayList<>();
        for (Formula time : days.times()) {
            Term number = number(time, arguments);
            if (number == null) {
                return null;
            }
            times.add(number);
        }
        return Days.from(days, of(days.start(), arguments), times);
    }

    private @Nullable Term applied(Applied applied, List<Term> arguments) {
        List<Term> given = all(applied.arguments(), arguments);
        Term body = given == null ? null : of(applied.body(), given);
        if (given == null || body == null) {
            return null;
        }
        return new Term(
                body.shape(),
                code -> code.within(
                        given.stream().map(each -> each.written().to(code)).toList(), body.written()));
    }

    private @Nullable Term either(IfElse either, List<Term> arguments) {
        Term condition = of(either.condition(), arguments);
        List<Term> ways = all(List.of(either.then(), either.otherwise()), arguments);
        Shape shape = ways == null ? null : same(ways);
        if (condition == null || ways == null || shape == null) {
            return null;
        }
        return new Term(shape, code -> {
            Local found = condition.written().to(code);
            Local result = code.reserved(shape);
            Label otherwise = new Label();
            Label undecided = new Label();
            Label end = new Label();
            code.load(found);
            code.call(Truth.class, "holds", boolean.class, int.class);
            code.jump(Opcodes.IFEQ, otherwise);
            oneWay(code, ways.get(0), shape, result);
            code.jump(Opcodes.GOTO, end);
            code.place(otherwise);
            code.load(found);
            code.push(Truth.FAILS);
            code.jump(Opcodes.IF_ICMPNE, undecided);
            oneWay(code, ways.get(1), shape, result);
            code.jump(Opcodes.GOTO, end);
            code.place(undecided);
            code.load(found);
            code.call(Truth.class, "undecided", int.class, int.class);
            code.storeState(result);
            code.place(end);
            return result;
        });
    }

    private @Nullable Term chosen(Chosen chosen, List<Term> arguments) {
        Term subject = of(chosen.subject(), arguments);
        List<Term> arms = all(chosen.arms(), arguments);
        Shape shape = arms == null ? null : same(arms);
        if (subject == null || arms == null || shape == null || !subject.shape().isExact()) {
            return null;
        }
        return new Term(shape, code -> {
            Local pick = subject.written().to(code);
            Local result = code.reserved(shape);
            code.load(pick);
            code.storeState(result);
            Label end = new Label();
            code.load(pick);
            code.jump(Opcodes.IFNE, end);
            code.loadValue(Shape.EXACT, pick);
            code.instruction(Opcodes.D2I);
            code.oneOf(arms.size(), arm -> oneWay(code, arms.get(arm), shape, result));
            code.place(end);
            return result;
        });
    }

    /** The shape that all have or can be brought into, or null. */
    private static @Nullable Shape same(List<Term> terms) {
        Shape first = terms.get(0).shape();
        if (terms.stream().map(Term::shape).allMatch(first::equals)) {
            return first;
        }
        return terms.stream().map(Term::shape).allMatch(Shape::isNumber) ? Shape.WORKED : null;
    }

    /** Writes a term that is one of several ways to a value. */
    private static void oneWay(Code code, Term way, Shape shape, Local result) {
        Local found = way.written().to(code);
        if (!shape.isWorked()) {
            code.move(shape, found, result);
            return;
        }
        Label end = new Label();
        code.load(found);
        code.storeState(result);
        code.load(found);
        code.jump(Opcodes.IFNE, end);
        OnSlate.write(code, way.shape(), found, result.value());
        code.place(end);
    }

    private @Nullable Term statistic(OfReadings formula, List<Term> arguments) {
        Term readings = of(formula.readings(), arguments);
        return readings == null || !readings.shape().equals(Shape.READINGS)
                ? null
                : inRow(readings, Layout.STATISTIC * Truth.number(formula.statistic()), Truth.OTHERWISE);
    }
}
