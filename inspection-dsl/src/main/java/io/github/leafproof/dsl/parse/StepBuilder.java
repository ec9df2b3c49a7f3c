package io.github.leafproof.dsl.parse;

import static io.github.leafproof.dsl.parse.SmallThings.need;
import static io.github.leafproof.dsl.parse.SmallThings.span;

import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Declaration.Entered;
import io.github.leafproof.dsl.syntax.Declaration.Step;
import io.github.leafproof.dsl.syntax.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The steps of a rehearsal. A line with commas gives several. */
final class StepBuilder {

    /** Written alone they are no option: the leaf is missing. An option of such a name stands in quotes. */
    private static final Set<Integer> TRIALS =
            Set.of(InspectionLexer.PASSES, InspectionLexer.REFUSES, InspectionLexer.DRAGS);

    private final SmallThings things;

    StepBuilder(SmallThings things) {
        this.things = things;
    }

    List<Step> steps(List<InspectionParser.StepContext> contexts) {
        List<Step> steps = new ArrayList<>();
        for (InspectionParser.StepContext context : contexts) {
            things.readOrSkip(context, () -> steps.addAll(step(need(context))));
        }
        return steps;
    }

    private List<Step> step(InspectionParser.StepContext context) {
        if (context instanceof InspectionParser.EngineStepContext engine) {
            return List.of(new Step.Engine(
                    things.text(engine.text(0)),
                    engine.VARIANT() == null ? null : things.text(engine.text(1)),
                    engine.SERIAL() == null
                            ? null
                            : things.text(engine.text(engine.text().size() - 1)),
                    span(engine)));
        }
        if (context instanceof InspectionParser.GaugesStepContext gauges) {
            return List.of(new Step.Gauges(things.text(gauges.text()), span(gauges)));
        }
        if (context instanceof InspectionParser.EnterStepContext enter) {
            return SmallThings.each(enter.entry(), this::entry);
        }
        return SmallThings.each(((InspectionParser.ExpectStepContext) context).expectation(), this::expectation);
    }

    private Step expectation(InspectionParser.ExpectationContext context) {
        if (need(context) instanceof InspectionParser.ExpectReleaseContext release) {
            return new Step.ExpectRelease(things.name(release.name()), span(release));
        }
        InspectionParser.ExpectCheckContext check = (InspectionParser.ExpectCheckContext) context;
        return new Step.ExpectCheck(
                things.target(check.target()),
                SmallThings.name(need(check.word()).getStart()),
                span(check));
    }

    private Step entry(InspectionParser.EntryContext context) {
        return new Step.Enter(things.target(need(context).target()), entered(context.entered()), span(context));
    }

    private Entered entered(InspectionParser.@Nullable EnteredContext context) {
        InspectionParser.EnteredContext entered = need(context);
        if (entered instanceof InspectionParser.TrialsContext trials) {
            return new Entered.Trials(SmallThings.each(trials.trial(), this::trial), span(trials));
        }
        if (entered instanceof InspectionParser.ItemsContext items) {
            return new Entered.Items(SmallThings.each(items.text(), things::text), span(items));
        }
        if (entered instanceof InspectionParser.EnteredDateContext) {
            return new Entered.Word(entered.getText(), span(entered));
        }
        if (entered instanceof InspectionParser.ReadingsContext readings) {
            return new Entered.Readings(SmallThings.each(readings.signed(), things::signed), span(readings));
        }
        if (entered instanceof InspectionParser.CannotContext cannot) {
            return new Entered.Cannot(things.text(cannot.text()), span(cannot));
        }
        if (entered instanceof InspectionParser.EnteredAmountContext amount) {
            Expression.Amount number = things.signed(amount.signed());
            return new Entered.Amount(number.number(), number.unit(), number.span());
        }
        if (entered instanceof InspectionParser.EnteredTextContext text) {
            return new Entered.Quoted(things.text(text.text()), span(text));
        }
        if (TRIALS.contains(entered.getStart().getType())) {
            things.report(GrammarDiagnostics.missing(
                    span(entered).behind(), entered.getText(), List.of("the leaf, in quotes,")));
            throw new Unfinished();
        }
        return new Entered.Word(entered.getText(), span(entered));
    }

    private Declaration.Trial trial(InspectionParser.TrialContext context) {
        return new Declaration.Trial(
                SmallThings.name(need(context).getStart()), things.text(context.text()), span(context));
    }
}
