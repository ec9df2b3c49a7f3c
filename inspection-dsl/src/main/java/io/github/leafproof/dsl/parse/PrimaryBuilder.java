package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.dsl.syntax.Text;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/** What stands between the operators: numbers, texts, names, calls, choices. */
final class PrimaryBuilder extends InspectionParserBaseVisitor<Expression> {

    private final SmallThings things;
    private final ExpressionBuilder expressions;

    PrimaryBuilder(SmallThings things, ExpressionBuilder expressions) {
        this.things = things;
        this.expressions = expressions;
    }

    Expression primary(InspectionParser.@Nullable PrimaryContext context) {
        return need(context).accept(this);
    }

    @Override
    public Expression visitNumber(InspectionParser.NumberContext context) {
        return things.amount(context.amount());
    }

    /** A sign too many in front of a tolerance: the rest reads on without it. */
    @Override
    public Expression visitLimitsOfNothing(InspectionParser.LimitsOfNothingContext context) {
        Expression.Amount amount = things.signed(context.signed());
        things.report(ClauseDiagnostics.limitsOfNothing(Words.span(need(context.PLUS_MINUS())), amount));
        return amount;
    }

    Expression uncertain(Expression value, InspectionParser.UncertaintyContext context) {
        InspectionParser.UncertaintyContext uncertainty = need(context);
        if (uncertainty instanceof InspectionParser.LimitsContext limits) {
            return new Expression.Uncertain(
                    value,
                    Expression.Stated.LIMITS,
                    Words.span(need(limits.PLUS_MINUS())),
                    things.signed(limits.signed()),
                    null,
                    value.span().to(span(limits)));
        }
        InspectionParser.StatedContext stated = (InspectionParser.StatedContext) uncertainty;
        Token letter = need(stated.STATED());
        return new Expression.Uncertain(
                value,
                letter.getText().equals("u") ? Expression.Stated.STANDARD : Expression.Stated.EXPANDED,
                Words.span(letter),
                things.signed(stated.signed()),
                stated.coverage() == null ? null : coverage(stated.coverage()),
                value.span().to(span(stated)));
    }

    private Expression.Coverage coverage(InspectionParser.CoverageContext context) {
        InspectionParser.CoverageContext coverage = need(context);
        return new Expression.Coverage(things.name(coverage.name()), things.signed(coverage.signed()), span(coverage));
    }

    @Override
    public Expression visitDate(InspectionParser.DateContext context) {
        return new Expression.Day(context.getText(), span(context));
    }

    @Override
    public Expression visitQuoted(InspectionParser.QuotedContext context) {
        Text text = things.text(context.text());
        return new Expression.Quoted(text, text.span());
    }

    @Override
    public Expression visitYesNo(InspectionParser.YesNoContext context) {
        return new Expression.YesNo(context.YES() != null, span(context));
    }

    @Override
    public Expression visitEngineFact(InspectionParser.EngineFactContext context) {
        return new Expression.EngineFact(things.names(context.name()), span(context));
    }

    @Override
    public Expression visitCall(InspectionParser.CallContext context) {
        return new Expression.Call(
                things.name(context.name()),
                SmallThings.each(context.expression(), expressions::expression),
                span(context));
    }

    @Override
    public Expression visitReference(InspectionParser.ReferenceContext context) {
        Target target = things.target(context.target());
        return new Expression.Reference(target, target.span());
    }

    @Override
    public Expression visitInParentheses(InspectionParser.InParenthesesContext context) {
        return expressions.expression(context.expression());
    }

    @Override
    public Expression visitChoose(InspectionParser.ChooseContext context) {
        Expression subject = expressions.expression(context.expression());
        List<Expression.Arm> arms = new ArrayList<>();
        Expression otherwise = null;
        for (InspectionParser.ArmContext arm : need(context.arms()).arm()) {
            if (need(arm) instanceof InspectionParser.OptionArmContext option) {
                arms.add(arm(option));
            } else if (otherwise == null) {
                otherwise = expressions.expression(((InspectionParser.OtherwiseArmContext) arm).expression());
            } else {
                things.report(ClauseDiagnostics.saidTwice(Words.span(arm.getStart()), "otherwise", otherwise.span()));
            }
        }
        return new Expression.Choose(subject, arms, otherwise, span(context));
    }

    private Expression.Arm arm(InspectionParser.OptionArmContext context) {
        return new Expression.Arm(
                things.options(context.option()), expressions.expression(context.expression()), span(context));
    }
}
