package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.dsl.syntax.Text;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;

/** Reads a procedure: its text goes in, its tree and all that is wrong with the text come out. */
public final class ProcedureParser {

    private final Problems problems;

    private ProcedureParser(Problems problems) {
        this.problems = problems;
    }

    /** The procedure a text holds. Never throws, whatever the text. */
    public static Parsed parse(SourceText source) {
        Problems problems = new Problems(source);
        List<Declaration> declarations = new ProcedureParser(problems).declarations();
        return new Parsed(new ProcedureText(source, declarations), problems.inOrder());
    }

    /** The value and the digits within a text's braces. */
    static Optional<Text.Hole> hole(Problems problems, Span braces, int depth) {
        return new ProcedureParser(problems).hole(braces, depth);
    }

    private List<Declaration> declarations() {
        try {
            Words words = words(0, problems.source().text().length());
            return new DeclarationBuilder(problems)
                    .declarations(parser(words).file().item());
        } catch (BoundedParser.TooDeep tooDeep) {
            problems.add(BoundDiagnostics.tooDeep(problems.source(), tooDeep.place()));
            return List.of();
        }
    }

    private Optional<Text.Hole> hole(Span braces, int depth) {
        try {
            Words words = words(braces.start() + 1, braces.end() - 1);
            return Optional.of(hole(parser(words).hole(), braces, depth));
        } catch (BoundedParser.TooDeep tooDeep) {
            problems.add(BoundDiagnostics.tooDeep(problems.source(), tooDeep.place()));
            return Optional.empty();
        } catch (Unfinished alreadyReported) {
            return Optional.empty();
        }
    }

    private Text.Hole hole(InspectionParser.HoleContext context, Span braces, int depth) {
        SmallThings.need(context);
        SmallThings things = new SmallThings(problems, depth);
        Expression value = new ExpressionBuilder(things).expression(context.expression());
        return new Text.Hole(value, context.NUMBER() == null ? -1 : digits(context, things), braces);
    }

    private int digits(InspectionParser.HoleContext context, SmallThings things) {
        int digits = things.whole(context.NUMBER(), "the number of digits");
        if (digits > Text.MOST_DIGITS) {
            Token number = SmallThings.need(context.NUMBER());
            problems.add(TextDiagnostics.tooManyDigits(problems.source(), Words.span(number)));
            throw new Unfinished();
        }
        return digits;
    }

    private Words words(int start, int end) {
        Words raw = WordReading.read(problems, start, end);
        return Brackets.pair(problems, UnitWords.join(Numerals.join(problems, raw)));
    }

    private InspectionParser parser(Words words) {
        InspectionParser parser = new InspectionParser(new CommonTokenStream(new ListTokenSource(words.list())));
        parser.removeErrorListeners();
        parser.setErrorHandler(new Slips(problems, words));
        return parser;
    }
}
