package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.formula.Formula;
import io.github.leafproof.dsl.formula.Type;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.ProcedureText;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An expression that stands by itself, outside of any procedure: it knows the functions of the language, the facts of an
 * engine and the names that it is handed, and is checked like one that stands in a procedure.
 *
 * @param formula what computes it; empty where it makes no sense
 * @param type what it yields; empty where it makes no sense
 * @param facts the facts of the engine that it reads, each with its slot; these are all the slots there are
 * @param diagnostics everything that is wrong with it
 */
public record LoneExpression(
        Optional<Formula> formula, Optional<Type> type, List<Node.Fact> facts, List<Diagnostic> diagnostics) {

    public LoneExpression {
        facts = List.copyOf(facts);
        diagnostics = List.copyOf(diagnostics);
    }

    /**
     * Makes sense of an expression.
     *
     * @param given the names that have a value already, in the order in which their values will be handed to the formula
     *     as its arguments
     * @param before what was found wrong when the text was read
     * @param damage what of the text could not be read
     */
    public static LoneExpression of(
            SourceText source, Expression expression, List<Given> given, List<Diagnostic> before, Damage damage) {
        ProcedureText nothing = new ProcedureText(source, List.of(), damage);
        Problems problems = new Problems(before, List.of(source), damage);
        Names names = new Names(problems, Outline.of(nothing, problems), new TypeReader(problems));
        Map<String, Env.Parameter> parameters = new HashMap<>();
        for (Given each : given) {
            parameters.put(each.name(), new Env.Parameter(parameters.size(), each.type()));
        }
        Typed typed = names.expressions().value(expression, new Env(Map.of(), parameters), null);
        Optional<Typed> sound = problems.anyError() ? Optional.empty() : Optional.ofNullable(typed);
        return new LoneExpression(
                sound.map(Typed::formula), sound.map(Typed::type), names.facts(), problems.inFileOrder());
    }

    /** A name that has a value, and of which kind. No two of a list have the same name. */
    public record Given(String name, Type type) {}
}
