package io.github.leafproof.dsl.mutants;

import static io.github.leafproof.dsl.mutants.Around.gap;
import static io.github.leafproof.dsl.mutants.Around.text;

import io.github.leafproof.dsl.mutants.Mutant.Kind;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Relation;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The slips that somebody may make in a condition or in a value: in its numbers, its comparisons, its logic, its choices. */
final class SlipsInConditions {

    private static final Pattern AND_OR = Pattern.compile("\\b(and|or)\\b");
    private static final Pattern NOT = Pattern.compile("\\bnot\\s*");
    private static final Pattern RELATION =
            Pattern.compile("\\bat\\s+least\\b|\\bat\\s+most\\b|\\bis\\s+not\\b|\\bis\\b|<=|>=|≤|≥|<|>|=");
    private static final Pattern IN_TIME = Pattern.compile("\\bis\\s+(not\\s+)?(before|after)\\b");
    private static final Pattern BETWEEN = Pattern.compile("\\bbetween\\b");
    private static final Pattern WITHIN = Pattern.compile("\\bwithin\\b");
    private static final Pattern TOLERATE = Pattern.compile("\\s*\\btolerate\\s+to\\b");

    private final Slips slips;
    private final Declared declared;

    SlipsInConditions(Slips slips, Declared declared) {
        this.slips = slips;
        this.declared = declared;
    }

    /** Makes those of an expression and of all that it is made of. */
    void in(Expression expression) {
        if (expression instanceof Expression.Amount amount) {
            Shift.ofAmount(text(amount.span())).forEach(other -> slips.replace(Kind.LIMIT, amount.span(), other));
        } else if (expression instanceof Expression.Day day) {
            Shift.ofDay(day.written()).forEach(other -> slips.replace(Kind.LIMIT, day.span(), other));
        } else if (expression instanceof Expression.Not not) {
            Span lost = not.span()
                    .source()
                    .span(not.span().start(), not.operand().span().start());
            Around.word(lost, NOT)
                    .ifPresent(word -> slips.make(
                            Kind.LOGIC,
                            word,
                            "",
                            text(not.span()),
                            text(not.operand().span())));
        } else if (expression instanceof Expression.Joined joined) {
            joined(joined);
        } else if (expression instanceof Expression.Compared compared) {
            compared(compared);
        } else if (expression instanceof Expression.InTime inTime) {
            inTime(inTime);
        } else if (expression instanceof Expression.Between between) {
            between(between);
        } else if (expression instanceof Expression.Within within) {
            within(within);
        } else if (expression instanceof Expression.OneOf oneOf
                && oneOf.options().size() > 1) {
            List<Span> options =
                    oneOf.options().stream().map(Expression.Option::span).toList();
            for (int i = 0; i < options.size(); i++) {
                slips.make(Kind.COMPARISON, Around.ofList(options, i), "", text(options.get(i)), "no option");
            }
        } else if (expression instanceof Expression.IfElse ifElse) {
            swap(ifElse.then(), ifElse.otherwise());
        } else if (expression instanceof Expression.Choose choose) {
            choose(choose);
        }
        Parts.of(expression).stream().filter(part -> !isFixed(part, expression)).forEach(this::in);
    }

    /** Another power is another dimension; and no tenth of a zero moves the middle of a window, whose width is shifted anyway. */
    private static boolean isFixed(Expression part, Expression whole) {
        if (whole instanceof Expression.Arithmetic arithmetic) {
            return arithmetic.operator() == Expression.Operator.TO_THE && part == arithmetic.right();
        }
        return whole instanceof Expression.Within within
                && part == within.middle()
                && part instanceof Expression.Amount amount
                && new BigDecimal(amount.number()).signum() == 0;
    }

    private void joined(Expression.Joined joined) {
        Expression left = joined.left();
        Expression right = joined.right();
        Around.word(gap(left.span(), right.span()), AND_OR).ifPresent(word -> {
            String other = joined.and() ? "or" : "and";
            String was = text(joined.span());
            int at = word.start() - joined.span().start();
            slips.make(
                    Kind.LOGIC,
                    word,
                    other,
                    was,
                    was.substring(0, at) + other + was.substring(at + word.end() - word.start()));
        });
        keep(left, joined);
        boolean goesOn = left instanceof Expression.Joined before && before.and() == joined.and();
        if (!goesOn) {
            keep(right, joined);
        }
    }

    /** One side of a condition alone. */
    private void keep(Expression side, Expression.Joined joined) {
        slips.make(Kind.LOGIC, joined.span(), inBrackets(side), text(joined.span()), text(side.span()));
    }

    private void compared(Expression.Compared compared) {
        Around.word(gap(compared.left().span(), compared.right().span()), RELATION)
                .ifPresent(word -> {
                    Relation relation = compared.relation();
                    slips.replace(Kind.COMPARISON, word, opposite(relation).words());
                    Relation strict = strictness(relation);
                    if (strict != null && declared.isExact(compared.left()) && declared.isExact(compared.right())) {
                        slips.replace(Kind.COMPARISON, word, strict.words());
                    }
                });
        if (compared.tolerated() != null) {
            tolerated(compared.right(), compared.span());
        }
    }

    private static Relation opposite(Relation relation) {
        return switch (relation) {
            case AT_LEAST -> Relation.AT_MOST;
            case AT_MOST -> Relation.AT_LEAST;
            case LESS -> Relation.MORE;
            case MORE -> Relation.LESS;
            case IS -> Relation.IS_NOT;
            case IS_NOT -> Relation.IS;
        };
    }

    /** The same but for a value on the limit, which only a value that is counted or stated can lie on. */
    private static @Nullable Relation strictness(Relation relation) {
        return switch (relation) {
            case AT_LEAST -> Relation.MORE;
            case AT_MOST -> Relation.LESS;
            case LESS -> Relation.AT_MOST;
            case MORE -> Relation.AT_LEAST;
            case IS, IS_NOT -> null;
        };
    }

    private void inTime(Expression.InTime inTime) {
        Around.word(gap(inTime.left().span(), inTime.right().span()), IN_TIME).ifPresent(word -> {
            String other = inTime.before() ? "after" : "before";
            String same = inTime.before() ? "before" : "after";
            // On the other side of the day; and the day itself the other way.
            slips.replace(Kind.COMPARISON, word, inTime.not() ? "is not " + other : "is " + other);
            slips.replace(Kind.COMPARISON, word, inTime.not() ? "is " + other : "is not " + other);
            slips.replace(Kind.COMPARISON, word, inTime.not() ? "is " + same : "is not " + same);
        });
    }

    private void between(Expression.Between between) {
        Span span = between.span();
        Around.word(gap(between.value().span(), between.low().span()), BETWEEN).ifPresent(word -> {
            List<Expression> wider = between.tolerated();
            String lowest = wider.size() == 2 ? " tolerate to " + inBrackets(wider.get(0)) : "";
            String highest = wider.isEmpty() ? "" : " tolerate to " + inBrackets(wider.get(wider.size() - 1));
            Span limits = span.source().span(word.start(), span.end());
            slips.replace(Kind.SIDE, limits, "at least " + inBrackets(between.low()) + lowest);
            slips.replace(Kind.SIDE, limits, "at most " + inBrackets(between.high()) + highest);
        });
        if (!between.tolerated().isEmpty()) {
            tolerated(between.high(), span);
        }
    }

    private void within(Expression.Within within) {
        Span span = within.span();
        Around.word(gap(within.value().span(), within.tolerance().span()), WITHIN)
                .ifPresent(word -> {
                    Span limits = span.source().span(word.start(), span.end());
                    slips.replace(Kind.SIDE, limits, side("at least ", within, " - "));
                    slips.replace(Kind.SIDE, limits, side("at most ", within, " + "));
                });
        if (within.tolerated() != null) {
            tolerated(within.middle(), span);
        }
    }

    private static String side(String relation, Expression.Within within, String sign) {
        String middle = inBrackets(within.middle());
        String wider =
                within.tolerated() == null ? "" : " tolerate to " + middle + sign + inBrackets(within.tolerated());
        return relation + middle + sign + inBrackets(within.tolerance()) + wider;
    }

    /** What is tolerated beyond a limit, left out. */
    private void tolerated(Expression limit, Span comparison) {
        Span behind = comparison.source().span(limit.span().end(), comparison.end());
        Around.word(behind, TOLERATE)
                .ifPresent(
                        word -> slips.drop(Kind.TOLERATED, comparison.source().span(word.start(), comparison.end())));
    }

    private void choose(Expression.Choose choose) {
        List<Expression.Arm> arms = choose.arms();
        for (int i = 0; i + 1 < arms.size(); i++) {
            swap(arms.get(i).value(), arms.get(i + 1).value());
        }
        if (choose.otherwise() != null && !arms.isEmpty()) {
            Expression.Arm last = arms.get(arms.size() - 1);
            if (last.value().span().end() <= choose.otherwise().span().start()) {
                swap(last.value(), choose.otherwise());
            }
            arms.forEach(arm -> slips.drop(Kind.CHOICE, Around.withBlanksBefore(arm.span())));
        }
    }

    private void swap(Expression first, Expression second) {
        String one = text(first.span());
        String two = text(second.span());
        if (!one.equals(two)) {
            Span both = first.span().to(second.span());
            slips.replace(Kind.CHOICE, both, two + text(gap(first.span(), second.span())) + one);
        }
    }

    /** A piece that goes together wherever it is put. */
    private static String inBrackets(Expression expression) {
        boolean single = expression instanceof Expression.Amount
                || expression instanceof Expression.Reference
                || expression instanceof Expression.EngineFact
                || expression instanceof Expression.Call
                || expression instanceof Expression.Compared;
        return single ? text(expression.span()) : "(" + text(expression.span()) + ")";
    }
}
