package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What yields a value, as written. */
public sealed interface Expression {

    /** Where it stands, from its first character to its last. */
    Span span();

    /**
     * A number with its unit: {@code 0.05 mm}, {@code 0.45 mm per turn}, {@code 95 %}, {@code 3}.
     *
     * @param number digits as written, grouping spaces taken out: {@code 9200}
     * @param unit as written, words of a compound joined as the core reads them ({@code mm per turn}, {@code in·lbf});
     *     empty for a plain number
     * @param unitSpan the unit alone; empty and at the number's end where there is none
     */
    record Amount(String number, String unit, Span unitSpan, Span span) implements Expression {}

    /** In which of the three ways an uncertainty is stated. */
    enum Stated {
        /** {@code ± a}. */
        LIMITS("±"),
        /** {@code (u a)}. */
        STANDARD("u"),
        /** {@code (U a, k 2)}. */
        EXPANDED("U");

        private final String sign;

        Stated(String sign) {
            this.sign = sign;
        }

        /** As written. */
        public String sign() {
            return sign;
        }
    }

    /**
     * A value and how well it is known: {@code 0.05 mm ± 0.01 mm}, {@code 21.3 °C (u 0.2 K)},
     * {@code 0.110 mm (U 0.004 mm, k 2)}.
     *
     * @param signSpan the sign or letter that says in which way it is stated
     * @param coverage what is written behind the comma, or null
     */
    record Uncertain(
            Expression value,
            Stated stated,
            Span signSpan,
            Amount uncertainty,
            @Nullable Coverage coverage,
            Span span) implements Expression {}

    /** {@code k 2}: a word and a number. */
    record Coverage(Name word, Amount number, Span span) {}

    /** A day as written: {@code 2026-11-25}. */
    record Day(String written, Span span) implements Expression {}

    /** A quoted text. */
    record Quoted(Text text, Span span) implements Expression {}

    /** {@code yes} or {@code no}. */
    record YesNo(boolean value, Span span) implements Expression {}

    /** A name declared elsewhere, a loop's variable, a parameter, or an option of a choice. */
    record Reference(Target target, Span span) implements Expression {}

    /** A fact of the engine: {@code engine.lash_min}, {@code engine.materials.cylinder}. */
    record EngineFact(List<Name> path, Span span) implements Expression {
        public EngineFact {
            path = List.copyOf(path);
        }
    }

    /** A function applied: {@code turns_for(lash_aim)}. */
    record Call(Name function, List<Expression> arguments, Span span) implements Expression {
        public Call {
            arguments = List.copyOf(arguments);
        }
    }

    /** {@code -x}. */
    record Negated(Expression operand, Span span) implements Expression {}

    /** {@code not x}. */
    record Not(Expression operand, Span span) implements Expression {}

    /** The four operations and raising to a power. */
    enum Operator {
        PLUS("+"),
        MINUS("-"),
        TIMES("*"),
        DIVIDED_BY("/"),
        TO_THE("^");

        private final String sign;

        Operator(String sign) {
            this.sign = sign;
        }

        /** As written. */
        public String sign() {
            return sign;
        }
    }

    /** {@code a + b} and its like. */
    record Arithmetic(Expression left, Operator operator, Span operatorSpan, Expression right, Span span)
            implements Expression {}

    /** {@code a and b}; {@code a or b}. */
    record Joined(Expression left, boolean and, Expression right, Span span) implements Expression {}

    /** How two values are compared. */
    enum Relation {
        AT_LEAST("at least"),
        AT_MOST("at most"),
        LESS("<"),
        MORE(">"),
        IS("is"),
        IS_NOT("is not");

        private final String words;

        Relation(String words) {
            this.words = words;
        }

        /** As written, in words where there are words. */
        public String words() {
            return words;
        }
    }

    /** {@code a at least b}, {@code a <= b}, {@code a is b}. A tolerated limit: {@code at most x tolerate to y}. */
    record Compared(
            Expression left,
            Relation relation,
            Expression right,
            @Nullable Expression tolerated,
            Span span) implements Expression {}

    /** {@code a is before b}, {@code a is not after b}. */
    record InTime(Expression left, boolean not, boolean before, Expression right, Span span) implements Expression {}

    /** {@code a between low and high}, with up to two tolerated limits beyond: {@code tolerate to x}, {@code to x, y}. */
    record Between(Expression value, Expression low, Expression high, List<Expression> tolerated, Span span)
            implements Expression {
        public Between {
            tolerated = List.copyOf(tolerated);
        }
    }

    /** {@code a within tolerance of middle}; {@code tolerate to} a wider tolerance. */
    record Within(
            Expression value,
            Expression tolerance,
            Expression middle,
            @Nullable Expression tolerated,
            Span span) implements Expression {}

    /** {@code a is one of b, c}. */
    record OneOf(Expression value, List<Option> options, Span span) implements Expression {
        public OneOf {
            options = List.copyOf(options);
        }
    }

    /** {@code items has all of engine.box}. */
    record HasAllOf(Expression items, Expression wanted, Span span) implements Expression {}

    /** {@code if c then a else b}. */
    record IfElse(Expression condition, Expression then, Expression otherwise, Span span) implements Expression {}

    /** {@code choose x { metal: 0 mm   plastic: 1.0 mm   otherwise: … }}. */
    record Choose(
            Expression subject, List<Arm> arms, @Nullable Expression otherwise, Span span) implements Expression {
        public Choose {
            arms = List.copyOf(arms);
        }
    }

    /** One arm of a choice: the options it stands for and its value. */
    record Arm(List<Option> options, Expression value, Span span) {
        public Arm {
            options = List.copyOf(options);
        }
    }

    /** An option of a choice, written as a name or, where it has spaces, in quotes. */
    record Option(String text, Span span) {}

    /** {@code x in thou}: the same value, shown in that unit. */
    record InUnit(Expression value, String unit, Span unitSpan, Span span) implements Expression {}
}
