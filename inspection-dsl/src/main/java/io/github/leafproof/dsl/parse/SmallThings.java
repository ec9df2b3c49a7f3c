package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration.Confidence;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.Name;
import io.github.leafproof.dsl.syntax.Target;
import io.github.leafproof.dsl.syntax.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.TerminalNode;
import org.jspecify.annotations.Nullable;

/** Names, targets, options, amounts and texts: what every declaration is made of. */
final class SmallThings {

    private static final Pattern WHOLE = Pattern.compile("[0-9]{1,9}");

    private final Problems problems;
    private final TextBuilder texts;

    SmallThings(Problems problems, int textDepth) {
        this.problems = problems;
        this.texts = new TextBuilder(problems, textDepth);
    }

    void report(Diagnostic problem) {
        problems.add(problem);
    }

    /** A name that was not written as one word: whoever uses it, or one of its words, may have meant it. */
    void loseName(Span name) {
        problems.lose(name);
        problems.loseName();
    }

    /** The part itself, or {@link Unfinished} where a mistake has kept the parser from finding or finishing it. */
    static <T extends ParserRuleContext> T need(@Nullable T part) {
        if (part == null || part.exception != null) {
            throw new Unfinished();
        }
        return part;
    }

    /** Reads a part, or leaves it out of the tree; the rest is still worth reading. */
    void readOrSkip(ParserRuleContext part, Runnable reading) {
        try {
            reading.run();
        } catch (Unfinished alreadyReported) {
            problems.lose(span(part));
        }
    }

    static Token need(@Nullable TerminalNode word) {
        if (word == null) {
            throw new Unfinished();
        }
        return word.getSymbol();
    }

    static Span span(ParserRuleContext part) {
        Token start = part.getStart();
        Token stop = part.getStop();
        // A part that is empty, or that a mistake cut short, stops before it starts.
        return stop == null || stop.getStopIndex() < start.getStartIndex()
                ? Words.span(start).before()
                : Words.span(start, stop);
    }

    Name name(InspectionParser.@Nullable NameContext context) {
        InspectionParser.NameContext name = need(context);
        return name(name.getStart());
    }

    static Name name(Token word) {
        return new Name(word.getText(), Words.span(word));
    }

    List<Name> names(List<InspectionParser.NameContext> contexts) {
        return each(contexts, this::name);
    }

    Target target(InspectionParser.@Nullable TargetContext context) {
        InspectionParser.TargetContext target = need(context);
        List<InspectionParser.NameContext> names = target.name();
        return new Target(name(names.get(0)), names(names.subList(1, names.size())), span(target));
    }

    List<Target> targets(InspectionParser.@Nullable TargetsContext context) {
        return each(need(context).target(), this::target);
    }

    Expression.Option option(InspectionParser.OptionContext context) {
        InspectionParser.OptionContext option = need(context);
        if (option.name() != null) {
            return new Expression.Option(name(option.name()).text(), span(option));
        }
        Text text = text(option.text());
        if (!text.isPlain()) {
            problems.add(TextDiagnostics.holeInOption(text.span()));
        }
        return new Expression.Option(text.plain(), span(option));
    }

    List<Expression.Option> options(List<InspectionParser.OptionContext> contexts) {
        return each(contexts, this::option);
    }

    Text text(InspectionParser.@Nullable TextContext context) {
        return texts.text(need(context).getStart());
    }

    Expression.Amount amount(InspectionParser.@Nullable AmountContext context) {
        InspectionParser.AmountContext amount = need(context);
        Token number = need(amount.NUMBER());
        TerminalNode unit = amount.UNIT();
        return new Expression.Amount(
                digits(number),
                unit == null ? "" : unit.getText(),
                unit == null ? Words.span(number).behind() : Words.span(unit.getSymbol()),
                span(amount));
    }

    /** An amount that may be negative. */
    Expression.Amount signed(InspectionParser.@Nullable SignedContext context) {
        InspectionParser.SignedContext signed = need(context);
        Expression.Amount amount = amount(signed.amount());
        return signed.MINUS() == null
                ? amount
                : new Expression.Amount("-" + amount.number(), amount.unit(), amount.unitSpan(), span(signed));
    }

    /** A number's digits as Java reads them. */
    static String digits(Token number) {
        return number.getText().replace('\u2212', '-');
    }

    /** {@code 95 %}. */
    Confidence confidence(InspectionParser.@Nullable AmountContext context) {
        Expression.Amount amount = amount(context);
        if (!amount.unit().equals("%")) {
            problems.add(ClauseDiagnostics.confidenceWithoutPercent(amount));
            throw new Unfinished();
        }
        return new Confidence(amount.number(), amount.span());
    }

    /** A whole number such as a revision. */
    int whole(@Nullable TerminalNode number, String what) {
        Token token = need(number);
        if (!WHOLE.matcher(token.getText()).matches()) {
            problems.add(ClauseDiagnostics.notWhole(Words.span(token), what));
            throw new Unfinished();
        }
        return Integer.parseInt(token.getText());
    }

    static <C, T> List<T> each(List<C> contexts, Function<C, T> build) {
        if (contexts.size() == 1) {
            return List.of(build.apply(contexts.get(0)));
        }
        List<T> built = new ArrayList<>(contexts.size());
        for (C context : contexts) {
            built.add(build.apply(context));
        }
        return List.copyOf(built);
    }
}
