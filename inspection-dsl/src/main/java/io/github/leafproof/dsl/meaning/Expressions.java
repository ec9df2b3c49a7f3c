package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Argument;
import io.github.leafproof.dsl.formula.Constant;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.InUnit;
import io.github.leafproof.dsl.formula.Phrase;
import io.github.leafproof.dsl.formula.Slot;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.message.NameDiagnostics;
import io.github.leafproof.dsl.message.SeriesDiagnostics;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.message.TypeDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.QuantityException;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Expressions understood: each yields a formula and a type, or null after saying what is wrong with it. */
final class Expressions {

    /** So many expressions may be underway within each other; it leaves room on a quarter of Java's usual stack. */
    private static final int DEEPEST = 100;

    private final Problems problems;
    private final Names names;
    private final Arithmetic arithmetic;
    private final Uncertainties uncertainties;
    private final Dates dates;
    private final Comparisons comparisons;
    private final Choices choices;
    private final EngineFacts engineFacts;
    private final Sites sites = new Sites();
    private int depth;
    private boolean tooDeep;

    Expressions(Problems problems, Names names) {
        this.problems = problems;
        this.names = names;
        this.dates = new Dates(problems, this);
        this.arithmetic = new Arithmetic(problems, this, names);
        this.uncertainties = new Uncertainties(problems, this, names);
        this.comparisons = new Comparisons(problems, this);
        this.choices = new Choices(problems, this);
        this.engineFacts = new EngineFacts(problems, names);
    }

    Dates dates() {
        return dates;
    }

    /** Where decisions and limits stand in what was understood so far. */
    Sites sites() {
        return sites;
    }

    /** Whether so many expressions are underway within each other that no other value should be begun among them. */
    boolean isDeep() {
        return depth > DEEPEST / 2;
    }

    /**
     * An expression of any type.
     *
     * @param expected the type wanted here, which lets the name of an option stand for itself; null where any will do
     */
    @Nullable
    Typed value(Expression expression, Env env, @Nullable Type expected) {
        if (depth >= DEEPEST) {
            if (!tooDeep) {
                // What stands beside it is as deep, and goes with it.
                problems.add(StructureDiagnostics.tooDeep(expression.span()));
                tooDeep = true;
            }
            return null;
        }
        depth++;
        Typed value = understood(expression, env, expected);
        depth--;
        return value == null ? null : placed(value, expression);
    }

    /** The same, its place noted: a name may stand for a condition in several places, and each is one of its own. */
    private Typed placed(Typed value, Expression expression) {
        if (expression instanceof Expression.Uncertain) {
            sites.uncertain.add(value.formula());
        }
        if (!value.isCondition() || value.formula() instanceof Constant) {
            return value;
        }
        boolean ofOthers = expression instanceof Expression.Joined
                || expression instanceof Expression.Not
                || expression instanceof Expression.Choose
                || expression instanceof Expression.IfElse;
        Formula own = value.formula() instanceof Slot slot ? new Slot(slot.number(), slot.words()) : value.formula();
        sites.conditions.put(own, new Sites.Condition(expression.span(), ofOthers));
        return new Typed(own, value.type());
    }

    /** What stands beside something that was not understood: its own mistakes count, but it may be an option of that. */
    void besides(Expression expression, Env env) {
        boolean word = expression instanceof Expression.Reference reference
                && reference.target().indexes().isEmpty();
        if (!word) {
            value(expression, env, null);
        }
    }

    private @Nullable Typed understood(Expression expression, Env env, @Nullable Type expected) {
        if (expression instanceof Expression.Amount number) {
            return number(number, expected);
        }
        if (expression instanceof Expression.Uncertain uncertain) {
            return uncertainties.value(uncertain, env);
        }
        if (expression instanceof Expression.Day day) {
            return dates.day(day);
        }
        if (expression instanceof Expression.Quoted quoted) {
            return quoted(quoted, env, expected);
        }
        if (expression instanceof Expression.YesNo yesNo) {
            return Typed.constant(Value.Judged.certain(yesNo.value()), yesNo.value() ? "yes" : "no", new Type.YesNo());
        }
        if (expression instanceof Expression.Reference reference) {
            return reference(reference, env, expected);
        }
        if (expression instanceof Expression.EngineFact fact) {
            return engineFacts.fact(fact);
        }
        if (expression instanceof Expression.InUnit inUnit) {
            return inUnit(inUnit, env);
        }
        if (expression instanceof Expression.Choose || expression instanceof Expression.IfElse) {
            return choices.value(expression, env, expected);
        }
        if (expression instanceof Expression.Call
                || expression instanceof Expression.Negated
                || expression instanceof Expression.Arithmetic) {
            return arithmetic.value(expression, env);
        }
        return comparisons.value(expression, env);
    }

    /** An expression that must be a condition. */
    @Nullable
    Formula condition(Expression expression, Env env) {
        Typed typed = value(expression, env, new Type.YesNo());
        if (typed != null && !typed.isCondition()) {
            problems.add(
                    TypeDiagnostics.noCondition(expression.span(), typed.type().words()));
            return null;
        }
        return typed == null ? null : typed.formula();
    }

    /** An expression that must be a number or quantity; a gap will do. */
    @Nullable
    Typed numeric(Expression expression, Env env) {
        return numeric(expression, env, null);
    }

    /** The same, where something of a known kind is wanted. */
    @Nullable
    Typed numeric(Expression expression, Env env, @Nullable Type wanted) {
        Typed typed = value(expression, env, wanted);
        if (typed != null && !typed.isNumeric()) {
            isNoNumber(expression, typed.type());
            return null;
        }
        return typed;
    }

    void isNoNumber(Expression expression, Type type) {
        Span span = expression.span();
        problems.add(
                type instanceof Type.Series
                        ? SeriesDiagnostics.isNoNumber(
                                span, type.words(), span.source().of(span))
                        : TypeDiagnostics.noNumber(span, type.words()));
    }

    private @Nullable Typed number(Expression.Amount number, @Nullable Type expected) {
        Quantity quantity = quantity(
                number, expected == null ? null : expected.inArithmetic().orElse(null));
        if (quantity == null) {
            return null;
        }
        String words = number.unit().isEmpty()
                ? number.number()
                : number.number() + " " + quantity.unit().symbol();
        return new Typed(
                new Constant(Value.Amount.stated(quantity), words, quantity.unit()),
                new Type.Measure(quantity.dimension()));
    }

    /** The quantity that a number and its unit stand for, or null after saying why they stand for none. */
    @Nullable
    Quantity quantity(Expression.Amount number) {
        return quantity(number, null);
    }

    private @Nullable Quantity quantity(Expression.Amount number, @Nullable Dimension wanted) {
        Unit unit = unit(number.unit(), number.unitSpan(), wanted);
        if (unit == null) {
            return null;
        }
        try {
            return Quantity.of(number.number(), unit);
        } catch (QuantityException wrong) {
            problems.add(TypeDiagnostics.badNumber(number.span(), wrong.problem(), wrong.remedy()));
            return null;
        }
    }

    // wanted: what it should count, where that is known
    private @Nullable Unit unit(String text, Span span, @Nullable Dimension wanted) {
        try {
            return wanted == null ? Unit.parse(text) : Unit.parse(text, wanted);
        } catch (QuantityException wrong) {
            problems.add(TypeDiagnostics.unknownUnit(span, wrong.problem(), wrong.remedy()));
            return null;
        }
    }

    private @Nullable Typed quoted(Expression.Quoted quoted, Env env, @Nullable Type expected) {
        if (expected instanceof Type.Choice choice && quoted.text().isPlain()) {
            return option(choice, quoted.text().plain(), quoted.span());
        }
        Formula text = text(quoted.text(), env);
        return text == null ? null : new Typed(text, new Type.Text());
    }

    /** A text with its holes understood. */
    @Nullable
    Formula text(Text text, Env env) {
        if (text.isPlain()) {
            return new Constant(new Value.Words(text.plain()), text.plain());
        }
        List<Formula> parts = new ArrayList<>();
        List<Integer> digits = new ArrayList<>();
        boolean sound = true;
        for (Text.Piece piece : text.pieces()) {
            Formula part;
            if (piece instanceof Text.Hole hole) {
                Typed typed = value(hole.value(), env, null);
                part = typed == null ? null : typed.formula();
                digits.add(hole.digits());
            } else {
                String letters = ((Text.Plain) piece).letters();
                part = new Constant(new Value.Words(letters), letters);
                digits.add(-1);
            }
            sound &= part != null;
            if (part != null) {
                parts.add(part);
            }
        }
        return sound ? new Phrase(parts, digits) : null;
    }

    private @Nullable Typed reference(Expression.Reference reference, Env env, @Nullable Type expected) {
        Name name = reference.target().name();
        boolean plain = reference.target().indexes().isEmpty();
        if (plain && env.parameters().containsKey(name.text())) {
            Env.Parameter parameter = env.parameters().get(name.text());
            return new Typed(new Argument(parameter.number(), name.text()), parameter.type());
        }
        if (plain && expected instanceof Type.Choice choice && choice.options().contains(name.text())) {
            return option(choice, name.text(), name.span());
        }
        if (plain && env.loops().containsKey(name.text())) {
            Env.LoopValue value = env.loops().get(name.text());
            return Typed.constant(new Value.Pick(value.round(), value.word()), value.word(), value.values());
        }
        if (plain && expected instanceof Type.Choice choice && !names.isDeclared(env.key(reference.target()))) {
            return option(choice, name.text(), name.span());
        }
        return names.value(reference.target(), env);
    }

    /** The option of that name, or null after saying that there is none. */
    @Nullable
    Typed option(Type.Choice choice, String word, Span span) {
        int option = choice.options().indexOf(word);
        if (option < 0) {
            problems.add(NameDiagnostics.unknownOption(span, word, choice.options()));
            return null;
        }
        return Typed.constant(new Value.Pick(option, word), word, choice);
    }

    private @Nullable Typed inUnit(Expression.InUnit expression, Env env) {
        Typed typed = numeric(expression.value(), env);
        Dimension shown = typed == null ? null : typed.type().inArithmetic().orElseThrow();
        Unit unit = unit(expression.unit(), expression.unitSpan(), shown);
        if (typed == null || shown == null || unit == null) {
            return null;
        }
        Dimension dimension = shown;
        if (!unit.dimension().equals(dimension)) {
            problems.add(otherDimension(expression, typed.type(), dimension, unit));
            return null;
        }
        return new Typed(new InUnit(typed.formula(), unit), new Type.Measure(dimension));
    }

    private static Diagnostic otherDimension(Expression.InUnit expression, Type type, Dimension dimension, Unit unit) {
        Span value = expression.value().span();
        String wanted = new Type.Measure(unit.dimension()).words();
        return dimension.times(unit.dimension()).isRatio()
                ? TypeDiagnostics.dividedByItsUnit(value, type.words(), expression.unitSpan(), wanted)
                : TypeDiagnostics.unitOfOtherDimension(value, type.words(), expression.unitSpan(), wanted);
    }

    /** Several expressions, or null when one of them makes no sense; all are looked at. */
    @Nullable
    List<Typed> numerics(List<Expression> list, Env env) {
        List<Typed> sound = new ArrayList<>();
        for (Expression each : list) {
            Typed typed = numeric(each, env);
            if (typed != null) {
                sound.add(typed);
            }
        }
        return sound.size() == list.size() ? sound : null;
    }
}
