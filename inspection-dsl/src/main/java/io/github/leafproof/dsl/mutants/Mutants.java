package io.github.leafproof.dsl.mutants;

import static io.github.leafproof.dsl.mutants.Around.text;

import io.github.leafproof.dsl.mutants.Mutant.Kind;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.dsl.syntax.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All mutants of a procedure: one for each slip that somebody may make in what it decides. Nothing is made of what is only
 * said (advice, cautions, notes, titles), since a rehearsal expects outcomes and could not notice it, nor of the engines that a
 * procedure is meant for, since what is refused has no outcome.
 */
public final class Mutants {

    private final Slips slips = new Slips();
    private final Declared declared;
    private final Severities severities;
    private final SlipsInConditions conditions;

    private Mutants(ProcedureText text) {
        this.declared = Declared.of(text);
        this.severities = Severities.of(text.declarations());
        this.conditions = new SlipsInConditions(slips, declared);
    }

    /** The mutants of a procedure, in the order of its text: its own file first, then the parts in the order of their use. */
    public static List<Mutant> of(ProcedureText text) {
        Mutants mutants = new Mutants(text);
        mutants.in(text.declarations());
        List<SourceText> sources = text.sources();
        List<Mutant> inOrder = new ArrayList<>(mutants.slips.all());
        inOrder.sort(Comparator.<Mutant>comparingInt(
                        mutant -> sources.indexOf(mutant.span().source()))
                .thenComparingInt(mutant -> mutant.span().start()));
        return List.copyOf(inOrder);
    }

    private void in(List<Declaration> declarations) {
        declarations.forEach(this::in);
    }

    private void in(Declaration declaration) {
        SourceText file = declaration.span().source();
        if (declaration instanceof Declaration.Decide decide) {
            slips.in("decide", file);
            decide(decide);
        } else if (declaration instanceof Declaration.Stage stage) {
            slips.in("stage \"" + stage.title().plain() + "\"", file);
            gates(stage.after());
        } else if (declaration instanceof Declaration.Observe observe) {
            slips.in("observe " + observe.target(), file);
            observe(observe);
        } else if (declaration instanceof Declaration.Let let
                && declared.decides(let.target().name().text())) {
            slips.in("let " + let.target(), file);
            conditions.in(let.value());
        } else if (declaration instanceof Declaration.Define define
                && declared.decides(define.name().text())) {
            slips.in("define " + define.name(), file);
            conditions.in(define.body());
        } else if (declaration instanceof Declaration.Check check) {
            slips.in("check " + check.target(), file);
            check(check);
        } else if (declaration instanceof Declaration.Release release) {
            slips.in("release", file);
            release.rules().forEach(this::rule);
        }
        in(Declared.bodyOf(declaration));
    }

    /** The usual confidences on either side; in between lies what a reading in the guard band shows. */
    private void decide(Declaration.Decide decide) {
        Span span = decide.span();
        Confidences.beside(decide.confidence())
                .forEach(other -> slips.replace(Kind.CONFIDENCE, span, "decide at " + other + " %"));
    }

    private void gates(List<Target> after) {
        List<Span> spans = after.stream().map(Target::span).toList();
        for (int i = 0; i < after.size(); i++) {
            drop(spans, i, "after", Kind.GATE);
        }
    }

    /** One of a list, or its whole clause where it is the last one. */
    private void drop(List<Span> spans, int index, String word, Kind kind) {
        String was = word + " " + text(spans.get(index));
        boolean before = index > 0 && isList(spans.get(index - 1), spans.get(index));
        boolean behind = index + 1 < spans.size() && isList(spans.get(index), spans.get(index + 1));
        if (before) {
            slips.make(kind, Around.ofList(spans, index), "", was, "nothing");
        } else if (behind) {
            slips.make(kind, spans.get(index).before().to(spans.get(index + 1).before()), "", was, "nothing");
        } else {
            Around.clause(word, spans.get(index)).ifPresent(clause -> slips.make(kind, clause, "", was, "nothing"));
        }
    }

    /** Whether two things stand in one list, and not in two clauses. */
    private static boolean isList(Span one, Span next) {
        return text(Around.gap(one, next)).strip().equals(",");
    }

    private void observe(Declaration.Observe observe) {
        applies(observe.when());
        if (observe.optional()) {
            Around.wordOutsideTexts(observe.span(), "optional").ifPresent(word -> slips.drop(Kind.APPLIES, word));
        }
    }

    private void applies(@Nullable Expression when) {
        if (when != null) {
            Around.clause("when", when.span()).ifPresent(clause -> slips.drop(Kind.APPLIES, clause));
            conditions.in(when);
        }
    }

    private void check(Declaration.Check check) {
        severities.slip(check, slips);
        gates(check.after());
        applies(check.when());
        requirements(check.requirements());
        Declaration.Confidence confidence = check.confidence();
        if (confidence != null) {
            Around.clause("at", confidence.span()).ifPresent(clause -> slips.drop(Kind.CONFIDENCE, clause));
        }
    }

    private void requirements(List<Expression> requirements) {
        for (Expression requirement : requirements) {
            Optional<Span> clause = Around.clause("require", requirement.span());
            if (requirements.size() > 1) {
                clause.ifPresent(whole -> slips.drop(Kind.REQUIREMENT, whole));
            } else if (!hasLimits(requirement)) {
                slips.replace(Kind.REQUIREMENT, Around.withParentheses(requirement.span()), "yes");
            }
            if (requirement instanceof Expression.Reference) {
                slips.make(
                        Kind.LOGIC,
                        requirement.span().before(),
                        "not ",
                        text(requirement.span()),
                        "not " + text(requirement.span()));
            }
            conditions.in(requirement);
        }
    }

    /** Whether other slips already ask for a case in which it fails. */
    private static boolean hasLimits(Expression requirement) {
        return requirement instanceof Expression.Between
                || requirement instanceof Expression.Within
                || requirement instanceof Expression.Joined;
    }

    private void rule(Declaration.Rule rule) {
        Declaration.Condition condition = rule.condition();
        if (condition == null) {
            return;
        }
        slips.drop(Kind.RELEASE, Around.withBlanksBefore(rule.span()));
        in(condition);
    }

    private void in(Declaration.Condition condition) {
        if (condition instanceof Declaration.Condition.Joined joined) {
            if (joined.and()) {
                Span gap = Around.gap(joined.left().span(), joined.right().span());
                slips.make(
                        Kind.RELEASE,
                        gap,
                        " or ",
                        text(joined.span()),
                        text(joined.left().span()) + " or "
                                + text(joined.right().span()));
            } else {
                slips.make(
                        Kind.RELEASE,
                        joined.span(),
                        text(joined.left().span()),
                        text(joined.right().span()),
                        "nothing");
            }
            in(joined.left());
            in(joined.right());
        } else if (condition instanceof Declaration.Condition.AnyCheck any) {
            outcomes(any.outcomes(), any.span());
        } else if (condition instanceof Declaration.Condition.OneCheck one) {
            outcomes(one.outcomes(), one.span());
        }
    }

    private void outcomes(List<Name> names, Span condition) {
        List<Span> outcomes = names.stream().map(Name::span).toList();
        for (int i = 0; i < outcomes.size() && outcomes.size() > 1; i++) {
            slips.make(
                    Kind.RELEASE,
                    Around.ofList(outcomes, i),
                    "",
                    text(condition) + ": " + text(outcomes.get(i)),
                    "nothing");
        }
    }
}
