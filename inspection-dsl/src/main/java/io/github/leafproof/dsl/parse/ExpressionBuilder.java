package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Expression.Operator;
import java.util.ArrayDeque;
import java.util.Deque;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;

/**
 * Conditions and sums. A chain of operators leans to the left as deep as it is long, so it is followed by a loop, and
 * a chain longer than anybody can read is refused.
 */
final class ExpressionBuilder extends InspectionParserBaseVisitor<Expression> {

    private static final int LONGEST_CHAIN = 1_000;

    private final SmallThings things;
    private final ComparisonBuilder comparisons;
    private final PrimaryBuilder primaries;

    ExpressionBuilder(SmallThings things) {
        this.things = things;
        this.comparisons = new ComparisonBuilder(things, this);
        this.primaries = new PrimaryBuilder(things, this);
    }

    Expression expression(InspectionParser.@Nullable ExpressionContext context) {
        return need(context).accept(this);
    }

    Expression sum(InspectionParser.@Nullable SumContext context) {
        return need(context).accept(this);
    }

    /** {@code x in thou}: the sum and, where it is said, the unit to show it in. */
    Expression value(InspectionParser.@Nullable ValueContext context) {
        InspectionParser.ValueContext value = need(context);
        Expression sum = sum(value.sum());
        TerminalNode unit = value.UNIT();
        return unit == null
                ? sum
                : new Expression.InUnit(sum, unit.getText(), Words.span(unit.getSymbol()), span(value));
    }

    @Override
    public Expression visitNot(InspectionParser.NotContext context) {
        return new Expression.Not(expression(context.expression()), span(context));
    }

    @Override
    public Expression visitIfElse(InspectionParser.IfElseContext context) {
        return new Expression.IfElse(
                expression(context.expression(0)),
                expression(context.expression(1)),
                expression(context.expression(2)),
                span(context));
    }

    @Override
    public Expression visitCompared(InspectionParser.ComparedContext context) {
        return comparisons.comparison(context.comparison());
    }

    @Override
    public Expression visitAnd(InspectionParser.AndContext context) {
        return joined(context);
    }

    @Override
    public Expression visitOr(InspectionParser.OrContext context) {
        return joined(context);
    }

    private Expression joined(InspectionParser.ExpressionContext last) {
        Deque<InspectionParser.ExpressionContext> chain = new ArrayDeque<>();
        InspectionParser.ExpressionContext left = last;
        while (left instanceof InspectionParser.AndContext || left instanceof InspectionParser.OrContext) {
            chain.push(need(left));
            left = left.getChild(InspectionParser.ExpressionContext.class, 0);
        }
        refuseLong(chain.size(), last);
        Expression result = expression(left);
        for (InspectionParser.ExpressionContext link : chain) {
            Expression right = expression(link.getChild(InspectionParser.ExpressionContext.class, 1));
            boolean and = link instanceof InspectionParser.AndContext;
            result = new Expression.Joined(result, and, right, span(link));
        }
        return result;
    }

    @Override
    public Expression visitPlain(InspectionParser.PlainContext context) {
        Expression value = primaries.primary(context.primary());
        return context.uncertainty() == null ? value : primaries.uncertain(value, context.uncertainty());
    }

    @Override
    public Expression visitNegated(InspectionParser.NegatedContext context) {
        return new Expression.Negated(sum(context.sum()), span(context));
    }

    @Override
    public Expression visitPower(InspectionParser.PowerContext context) {
        Expression base = sum(context.sum(0));
        return arithmetic(base, need(context.TO_THE()), sum(context.sum(1)), span(context));
    }

    @Override
    public Expression visitProduct(InspectionParser.ProductContext context) {
        return chain(context);
    }

    @Override
    public Expression visitAddition(InspectionParser.AdditionContext context) {
        return chain(context);
    }

    private Expression chain(InspectionParser.SumContext last) {
        Deque<InspectionParser.SumContext> chain = new ArrayDeque<>();
        InspectionParser.SumContext left = last;
        while (left instanceof InspectionParser.AdditionContext || left instanceof InspectionParser.ProductContext) {
            chain.push(need(left));
            left = left.getChild(InspectionParser.SumContext.class, 0);
        }
        refuseLong(chain.size(), last);
        Expression result = sum(left);
        for (InspectionParser.SumContext link : chain) {
            Token operator = ((TerminalNode) link.getChild(1)).getSymbol();
            result = arithmetic(result, operator, sum(link.getChild(InspectionParser.SumContext.class, 1)), span(link));
        }
        return result;
    }

    private void refuseLong(int operators, ParserRuleContext chain) {
        if (operators > LONGEST_CHAIN) {
            things.report(BoundDiagnostics.chainTooLong(span(chain), operators, LONGEST_CHAIN));
            throw new Unfinished();
        }
    }

    private static Expression arithmetic(Expression left, Token sign, Expression right, Span span) {
        return new Expression.Arithmetic(left, operator(sign), Words.span(sign), right, span);
    }

    private static Operator operator(Token sign) {
        return switch (sign.getType()) {
            case InspectionParser.PLUS -> Operator.PLUS;
            case InspectionParser.MINUS -> Operator.MINUS;
            case InspectionParser.TIMES -> Operator.TIMES;
            case InspectionParser.DIVIDED_BY -> Operator.DIVIDED_BY;
            default -> Operator.TO_THE;
        };
    }
}
