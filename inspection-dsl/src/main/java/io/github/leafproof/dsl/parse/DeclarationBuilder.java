package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.GaugeWords;
import io.github.leafproof.dsl.syntax.Target;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;

/** Declarations: each context of the grammar's {@code item} to its record. */
final class DeclarationBuilder extends InspectionParserBaseVisitor<@Nullable Declaration> {

    private final SmallThings things;
    private final TypeBuilder types;
    private final ExpressionBuilder expressions;
    private final StepBuilder steps;

    DeclarationBuilder(Problems problems) {
        this.things = new SmallThings(problems, 0);
        this.types = new TypeBuilder(things);
        this.expressions = new ExpressionBuilder(things);
        this.steps = new StepBuilder(things);
    }

    /** All of them that can be understood. */
    List<Declaration> declarations(List<InspectionParser.ItemContext> items) {
        List<Declaration> built = new ArrayList<>();
        for (InspectionParser.ItemContext item : items) {
            build(item, built);
        }
        return built;
    }

    /** Adds what this declares, if it can be understood. */
    void build(InspectionParser.ItemContext item, List<Declaration> built) {
        things.readOrSkip(item, () -> {
            Declaration declaration = item.accept(this);
            if (declaration == null) {
                // Not even what it declares could be told.
                throw new Unfinished();
            }
            built.add(declaration);
        });
    }

    @Override
    public Declaration visitLanguage(InspectionParser.LanguageContext context) {
        return new Declaration.Language(things.whole(context.NUMBER(), "the language's version"), span(context));
    }

    @Override
    public Declaration visitProcedure(InspectionParser.ProcedureContext context) {
        List<TerminalNode> more = context.NAME();
        if (!more.isEmpty()) {
            List<String> words = new ArrayList<>(List.of(need(context.name()).getText()));
            more.forEach(word -> words.add(word.getText()));
            Span name =
                    span(context.name()).to(Words.span(more.get(more.size() - 1).getSymbol()));
            things.report(ClauseDiagnostics.nameOfSeveralWords(name, words));
        } else if (context.exception == null && (context.text() == null || context.NUMBER() == null)) {
            things.report(ClauseDiagnostics.procedureIncomplete(
                    span(context), context.text() == null, context.NUMBER() == null));
        } else if (context.NUMBER() != null && context.REVISION() == null) {
            things.report(ClauseDiagnostics.revisionWithoutWord(
                    Words.span(context.NUMBER().getSymbol()), context.NUMBER().getText()));
        }
        return new Declaration.Header(
                things.name(context.name()),
                things.text(context.text()),
                things.whole(context.NUMBER(), "a revision"),
                span(context));
    }

    @Override
    public Declaration visitApplies(InspectionParser.AppliesContext context) {
        return new Declaration.Applies(expressions.expression(context.expression()), span(context));
    }

    @Override
    public Declaration visitDecideAt(InspectionParser.DecideAtContext context) {
        return new Declaration.Decide(things.confidence(context.amount()), span(context));
    }

    @Override
    public Declaration visitDecideSimply(InspectionParser.DecideSimplyContext context) {
        need(context);
        return new Declaration.Decide(new Declaration.Confidence("50", span(context)), span(context));
    }

    @Override
    public Declaration visitUse(InspectionParser.UseContext context) {
        return new Declaration.Use(things.text(context.text()), span(context));
    }

    @Override
    public Declaration visitCard(InspectionParser.CardContext context) {
        return new Declaration.CardFact(things.name(context.name()), types.type(context.type()), span(context));
    }

    @Override
    public Declaration visitHazardText(InspectionParser.HazardTextContext context) {
        return new Declaration.HazardText(things.name(context.name()), things.text(context.text()), span(context));
    }

    @Override
    public Declaration visitGauge(InspectionParser.GaugeContext context) {
        InspectionParser.GaugeKindContext kind = need(context.gaugeKind());
        GaugeWords words = kind instanceof InspectionParser.LeafSetContext
                ? GaugeWords.LEAF_SET
                : kind instanceof InspectionParser.PinSetContext
                        ? GaugeWords.PIN_SET
                        : kind instanceof InspectionParser.CounterContext ? GaugeWords.COUNTER : GaugeWords.READING;
        return new Declaration.Gauge(
                things.name(context.name()),
                words,
                kind instanceof InspectionParser.ReadingOfContext reading ? types.type(reading.type()) : null,
                span(context));
    }

    @Override
    public Declaration visitSetup(InspectionParser.SetupContext context) {
        List<Declaration.Change> changes = new ArrayList<>();
        List<Declaration.While> whiles = new ArrayList<>();
        for (InspectionParser.SetupLineContext line : need(context.setupBody()).setupLine()) {
            things.readOrSkip(line, () -> {
                if (need(line) instanceof InspectionParser.ChangeContext change) {
                    changes.add(change(change));
                } else {
                    InspectionParser.WhileStateContext state = (InspectionParser.WhileStateContext) line;
                    whiles.add(new Declaration.While(
                            things.name(state.name()),
                            things.names(need(state.hazards()).name()),
                            span(state)));
                }
            });
        }
        return new Declaration.Setup(
                things.name(context.name(0)), things.name(context.name(1)), changes, whiles, span(context));
    }

    private Declaration.Change change(InspectionParser.ChangeContext change) {
        return new Declaration.Change(
                things.name(change.name(0)),
                things.name(change.name(1)),
                things.text(change.text()),
                change.hazards() == null
                        ? List.of()
                        : things.names(need(change.hazards()).name()),
                span(change));
    }

    @Override
    public Declaration visitStage(InspectionParser.StageContext context) {
        InspectionParser.BlockContext block = need(context.block());
        List<Target> after = new ArrayList<>();
        for (InspectionParser.BlockClauseContext clause : block.blockClause()) {
            if (clause instanceof InspectionParser.BlockAfterContext gates) {
                things.readOrSkip(gates, () -> after.addAll(things.targets(gates.targets())));
            }
        }
        return new Declaration.Stage(things.text(context.text()), after, body(block), span(context));
    }

    private List<Declaration> body(InspectionParser.BlockContext block) {
        return declarations(block.blockClause().stream()
                .filter(InspectionParser.BlockItemContext.class::isInstance)
                .map(clause -> ((InspectionParser.BlockItemContext) clause).item())
                .toList());
    }

    @Override
    public Declaration visitObserve(InspectionParser.ObserveContext context) {
        return new ObserveBuilder(things, expressions).observe(context, types.type(context.type()));
    }

    @Override
    public Declaration visitLet(InspectionParser.LetContext context) {
        return new Declaration.Let(
                things.target(context.target()), expressions.expression(context.expression()), span(context));
    }

    @Override
    public Declaration visitDefine(InspectionParser.DefineContext context) {
        return new Declaration.Define(
                things.name(context.name()),
                SmallThings.each(context.parameter(), this::parameter),
                expressions.expression(context.expression()),
                span(context));
    }

    private Declaration.Parameter parameter(InspectionParser.ParameterContext context) {
        return new Declaration.Parameter(things.name(need(context).name()), types.type(context.type()), span(context));
    }

    @Override
    public Declaration visitCheck(InspectionParser.CheckContext context) {
        return new CheckBuilder(things, expressions).check(context);
    }

    @Override
    public Declaration visitFor(InspectionParser.ForContext context) {
        InspectionParser.BlockContext block = need(context.block());
        for (InspectionParser.BlockClauseContext clause : block.blockClause()) {
            if (clause instanceof InspectionParser.BlockAfterContext gates && gates.exception == null) {
                things.report(ClauseDiagnostics.afterInFor(span(gates)));
            }
        }
        List<io.github.leafproof.dsl.syntax.Name> names = things.names(context.name());
        return new Declaration.For(names.get(0), names.subList(1, names.size()), body(block), span(context));
    }

    @Override
    public Declaration visitRelease(InspectionParser.ReleaseContext context) {
        return new ReleaseBuilder(things).release(context);
    }

    @Override
    public Declaration visitRehearse(InspectionParser.RehearseContext context) {
        return new Declaration.Rehearse(
                things.text(context.text()),
                steps.steps(need(context.rehearseBody()).step()),
                span(context));
    }
}
