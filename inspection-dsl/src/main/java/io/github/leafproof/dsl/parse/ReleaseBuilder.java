package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Condition;
import io.github.leafproof.dsl.syntax.Name;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.antlr.v4.runtime.ParserRuleContext;
import org.jspecify.annotations.Nullable;

/** The rule that releases the engine, holds it or rejects it. */
final class ReleaseBuilder {

    private static final int LONGEST = 1_000;

    private final SmallThings things;

    ReleaseBuilder(SmallThings things) {
        this.things = things;
    }

    Declaration.Release release(InspectionParser.ReleaseContext context) {
        List<Declaration.Rule> rules = new ArrayList<>();
        for (InspectionParser.ReleaseRuleContext rule :
                need(context.releaseBody()).releaseRule()) {
            things.readOrSkip(rule, () -> rules.add(rule(need(rule))));
        }
        return new Declaration.Release(rules, span(context));
    }

    private Declaration.Rule rule(InspectionParser.ReleaseRuleContext rule) {
        Name result = things.name(rule.getRuleContext(InspectionParser.NameContext.class, 0));
        Condition condition =
                rule instanceof InspectionParser.RuleWhenContext when ? condition(when.condition()) : null;
        return new Declaration.Rule(result, condition, span(rule));
    }

    /** {@code and} binds tighter than the comma and {@code or}, as in expressions. */
    private Condition condition(InspectionParser.@Nullable ConditionContext context) {
        return joined(need(context).both(), this::both, false);
    }

    private Condition both(InspectionParser.BothContext context) {
        return joined(need(context).atom(), this::atom, true);
    }

    private <C extends ParserRuleContext> Condition joined(List<C> parts, Function<C, Condition> build, boolean and) {
        if (parts.size() > LONGEST) {
            things.report(BoundDiagnostics.chainTooLong(span(parts.get(0)), parts.size() - 1, LONGEST));
            throw new Unfinished();
        }
        Condition result = build.apply(parts.get(0));
        for (C part : parts.subList(1, parts.size())) {
            Condition next = build.apply(part);
            result = new Condition.Joined(result, and, next, result.span().to(next.span()));
        }
        return result;
    }

    private Condition atom(InspectionParser.AtomContext context) {
        need(context);
        if (context instanceof InspectionParser.AnyCheckContext any) {
            Name severity = any.severity == null ? null : things.name(any.severity);
            return new Condition.AnyCheck(severity, outcomes(any.outcomes()), span(any));
        }
        InspectionParser.OneCheckContext one = (InspectionParser.OneCheckContext) context;
        return new Condition.OneCheck(things.target(one.target()), outcomes(one.outcomes()), span(one));
    }

    private List<Name> outcomes(InspectionParser.@Nullable OutcomesContext context) {
        return things.names(need(context).name());
    }
}
