package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.dsl.syntax.TypeWords;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One observation: its clauses come in any order. */
final class ObserveBuilder extends InspectionParserBaseVisitor<@Nullable Span> {

    private final SmallThings things;
    private final ExpressionBuilder expressions;
    private final SaidOnce once;

    private @Nullable Name gauge;
    private final List<Declaration.State> states = new ArrayList<>();
    private @Nullable Text ask;
    private final List<Name> hazards = new ArrayList<>();
    private final List<Text> notes = new ArrayList<>();
    private boolean optional;
    private @Nullable Expression when;

    ObserveBuilder(SmallThings things, ExpressionBuilder expressions) {
        this.things = things;
        this.expressions = expressions;
        this.once = new SaidOnce(things);
    }

    Declaration.Observe observe(InspectionParser.ObserveContext context, TypeWords type) {
        for (InspectionParser.ObserveClauseContext clause :
                need(context.observeClauses()).observeClause()) {
            things.readOrSkip(clause, () -> read(clause));
        }
        return new Declaration.Observe(
                things.target(context.target()),
                type,
                gauge,
                states,
                ask,
                hazards,
                notes,
                optional,
                when,
                span(context));
    }

    private void read(InspectionParser.ObserveClauseContext clause) {
        if (clause.accept(this) == null) {
            // Not even which clause it is could be told.
            throw new Unfinished();
        }
    }

    @Override
    public Span visitWithGauge(InspectionParser.WithGaugeContext context) {
        once.begins(context.getStart());
        gauge = things.name(context.name());
        return span(context);
    }

    @Override
    public Span visitNeedsStates(InspectionParser.NeedsStatesContext context) {
        for (InspectionParser.StateContext state : context.state()) {
            states.add(
                    new Declaration.State(things.name(need(state).name(0)), things.name(state.name(1)), span(state)));
        }
        return span(context);
    }

    @Override
    public Span visitAsk(InspectionParser.AskContext context) {
        once.begins(context.getStart());
        ask = things.text(context.text());
        return span(context);
    }

    @Override
    public Span visitCarriesHazards(InspectionParser.CarriesHazardsContext context) {
        hazards.addAll(things.names(need(context.hazards()).name()));
        return span(context);
    }

    @Override
    public Span visitNote(InspectionParser.NoteContext context) {
        notes.add(things.text(context.text()));
        return span(context);
    }

    @Override
    public Span visitOptional(InspectionParser.OptionalContext context) {
        once.begins(context.getStart());
        optional = true;
        return span(context);
    }

    @Override
    public Span visitObserveWhen(InspectionParser.ObserveWhenContext context) {
        once.begins(context.getStart());
        when = expressions.expression(context.expression());
        return span(context);
    }
}
