package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;

import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Relation;
import java.util.List;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** Comparisons. Only one may stand between two values; a chain of them is reported and only its first kept. */
final class ComparisonBuilder {

    private final SmallThings things;
    private final ExpressionBuilder expressions;

    ComparisonBuilder(SmallThings things, ExpressionBuilder expressions) {
        this.things = things;
        this.expressions = expressions;
    }

    Expression comparison(InspectionParser.@Nullable ComparisonContext context) {
        InspectionParser.ComparisonContext comparison = need(context);
        Expression left = expressions.value(comparison.value());
        List<InspectionParser.ComparingContext> comparings = comparison.comparing();
        if (comparings.isEmpty()) {
            return left;
        }
        InspectionParser.ComparingContext comparing = need(comparings.get(0));
        Span span = SmallThings.span(need(comparison.value())).to(SmallThings.span(comparing));
        Expression first = need(comparing.accept(new Comparing(left, span)));
        if (comparings.size() > 1) {
            things.report(ClauseDiagnostics.chainedComparison(
                    SmallThings.span(comparings.get(0)),
                    Words.span(comparings.get(1).getStart())));
        }
        return first;
    }

    private static Expression need(@Nullable Expression built) {
        if (built == null) {
            throw new Unfinished();
        }
        return built;
    }

    private static <T extends ParserRuleContext> T need(@Nullable T part) {
        return SmallThings.need(part);
    }

    /** One way of comparing, with the value on its left. */
    private final class Comparing extends InspectionParserBaseVisitor<Expression> {
        private final Expression left;
        private final Span span;

        Comparing(Expression left, Span span) {
            this.left = left;
            this.span = span;
        }

        @Override
        public Expression visitAtLimit(InspectionParser.AtLimitContext context) {
            return compared(
                    context.LEAST() == null ? Relation.AT_MOST : Relation.AT_LEAST,
                    context.value(),
                    context.tolerate());
        }

        @Override
        public Expression visitInTime(InspectionParser.InTimeContext context) {
            return new Expression.InTime(
                    left, context.NOT() != null, context.BEFORE() != null, expressions.value(context.value()), span);
        }

        @Override
        public Expression visitIs(InspectionParser.IsContext context) {
            if (!context.option().isEmpty()) {
                return new Expression.OneOf(left, things.options(context.option()), span);
            }
            return compared(context.NOT() == null ? Relation.IS : Relation.IS_NOT, context.value(), null);
        }

        @Override
        public Expression visitSign(InspectionParser.SignContext context) {
            return compared(relation(context.getStart().getType()), context.value(), null);
        }

        private Expression compared(
                Relation relation,
                InspectionParser.@Nullable ValueContext right,
                InspectionParser.@Nullable TolerateContext tolerate) {
            return new Expression.Compared(left, relation, expressions.value(right), tolerated(tolerate), span);
        }

        @Override
        public Expression visitBetween(InspectionParser.BetweenContext context) {
            List<Expression> tolerated = context.tolerateBoth() == null
                    ? List.of()
                    : SmallThings.each(need(context.tolerateBoth()).value(), expressions::value);
            return new Expression.Between(
                    left, expressions.value(context.value(0)), expressions.value(context.value(1)), tolerated, span);
        }

        @Override
        public Expression visitWithin(InspectionParser.WithinContext context) {
            return new Expression.Within(
                    left,
                    expressions.value(context.value(0)),
                    expressions.value(context.value(1)),
                    tolerated(context.tolerate()),
                    span);
        }

        @Override
        public Expression visitHasAllOf(InspectionParser.HasAllOfContext context) {
            return new Expression.HasAllOf(left, expressions.value(context.value()), span);
        }

        private @Nullable Expression tolerated(InspectionParser.@Nullable TolerateContext context) {
            return context == null ? null : expressions.value(need(context).value());
        }

        private static Relation relation(int sign) {
            return switch (sign) {
                case InspectionParser.NOT_MORE -> Relation.AT_MOST;
                case InspectionParser.NOT_LESS -> Relation.AT_LEAST;
                case InspectionParser.LESS -> Relation.LESS;
                case InspectionParser.GREATER -> Relation.MORE;
                default -> Relation.IS;
            };
        }
    }
}
