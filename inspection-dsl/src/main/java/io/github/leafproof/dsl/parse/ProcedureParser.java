package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import io.github.leafproof.dsl.syntax.Expression;
import io.github.leafproof.dsl.syntax.LanguageVersion;
import io.github.leafproof.dsl.syntax.ProcedureText;
import io.github.leafproof.dsl.syntax.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/** Reads a procedure: its text goes in, its tree and all that is wrong with the text come out. */
public final class ProcedureParser {

    /** How deep brackets may nest, a number that nobody needs and a quarter of Java's usual stack can bear. */
    static final int DEEPEST = 50;
    /** The same within the braces of a text, which may hold further texts. */
    private static final int DEEPEST_IN_HOLE = 20;
    /** The rules around a declaration: that of the file. */
    private static final int FILE = 1;

    private final Problems problems;

    private ProcedureParser(Problems problems) {
        this.problems = problems;
    }

    /** The procedure a text holds. Never throws, whatever the text. */
    public static Parsed parse(SourceText source) {
        Problems problems = new Problems(source);
        if (source.text().length() > SourceReading.LARGEST) {
            problems.add(BoundDiagnostics.tooLarge(source, SourceReading.LARGEST_MEBIBYTES));
            problems.loseAll();
            return new Parsed(new ProcedureText(source, List.of(), problems.damage()), problems.inOrder());
        }
        List<Declaration> declarations = new ProcedureParser(problems).declarations();
        return new Parsed(new ProcedureText(source, declarations, problems.damage()), problems.inOrder());
    }

    /**
     * The same text as it stands on the page.
     *
     * @throws IllegalArgumentException if the text has mistakes of grammar
     */
    public static Passage.Group page(SourceText source) {
        Problems problems = new Problems(source);
        ProcedureParser reading = new ProcedureParser(problems);
        Words words = reading.words(0, source.text().length(), DEEPEST);
        InspectionParser.FileContext file = reading.read(words, DEEPEST, InspectionParser::file);
        if (problems.inOrder().stream().anyMatch(Diagnostic::isError)) {
            throw new IllegalArgumentException(source + " has mistakes of grammar");
        }
        return new PageBuilder(PageWords.of(source)).file(file);
    }

    /** An expression that stands by itself, perhaps with a name before it: {@code lash = 4.5 thou in mm}. */
    public static ParsedLine line(SourceText source) {
        Problems problems = new Problems(source);
        if (source.text().length() > SourceReading.LARGEST) {
            problems.add(BoundDiagnostics.tooLarge(source, SourceReading.LARGEST_MEBIBYTES));
            return ParsedLine.lost(problems);
        }
        try {
            return new ProcedureParser(problems).line();
        } catch (BoundedParser.TooDeep tooDeep) {
            problems.add(BoundDiagnostics.tooDeep(tooDeep.place()));
            return ParsedLine.lost(problems);
        } catch (Unfinished alreadyReported) {
            return ParsedLine.lost(problems);
        }
    }

    /** The value and the digits within a text's braces. */
    static Optional<Text.Hole> hole(Problems problems, Span braces, int depth) {
        return new ProcedureParser(problems).hole(braces, depth);
    }

    private List<Declaration> declarations() {
        try {
            Words words = words(0, problems.source().text().length(), DEEPEST);
            if (isForAnotherVersion(words)) {
                // What that version says differently would only be taken for mistakes.
                problems.loseAll();
                return List.of();
            }
            return declarations(words);
        } catch (BoundedParser.TooDeep tooDeep) {
            problems.add(BoundDiagnostics.tooDeep(tooDeep.place()));
            problems.loseAll();
            return List.of();
        }
    }

    /**
     * Parses and builds declaration after declaration, so that no more of the tree is ever held than the one that is being
     * built. What the builders had to say of a text that turns out to have a mistake of grammar is said anew by those who
     * read it all again.
     */
    private List<Declaration> declarations(Words words) {
        Problems found = new Problems(problems.source());
        DeclarationBuilder builder = new DeclarationBuilder(found);
        List<Declaration> built = new ArrayList<>();
        try {
            InspectionParser quick = quick(words, DEEPEST);
            quick.startWithin(FILE);
            while (quick.getCurrentToken().getType() != Token.EOF) {
                builder.build(quick.item(), built);
            }
        } catch (ParseCancellationException mistake) {
            InspectionParser.FileContext file = thorough(words, DEEPEST).file();
            return new DeclarationBuilder(problems).declarations(file.item());
        }
        problems.include(found);
        return built;
    }

    private ParsedLine line() {
        Words words = words(0, problems.source().text().length(), DEEPEST);
        InspectionParser.LineContext line = SmallThings.need(read(words, DEEPEST, InspectionParser::line));
        SmallThings things = new SmallThings(problems, 0);
        Expression value = new ExpressionBuilder(things).expression(line.expression());
        return new ParsedLine(
                line.name() == null ? null : things.name(line.name()), value, problems.damage(), problems.inOrder());
    }

    private Optional<Text.Hole> hole(Span braces, int depth) {
        try {
            Words words = words(braces.start() + 1, braces.end() - 1, DEEPEST_IN_HOLE);
            return Optional.of(hole(read(words, DEEPEST_IN_HOLE, InspectionParser::hole), braces, depth));
        } catch (BoundedParser.TooDeep tooDeep) {
            problems.add(BoundDiagnostics.tooDeep(tooDeep.place()));
            problems.lose(braces);
            return Optional.empty();
        } catch (Unfinished alreadyReported) {
            problems.lose(braces);
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
            problems.add(TextDiagnostics.tooManyDigits(Words.span(number)));
            throw new Unfinished();
        }
        return digits;
    }

    private boolean isForAnotherVersion(Words words) {
        boolean says = words.type(0) == InspectionLexer.LANGUAGE && words.type(1) == InspectionLexer.NUMBER;
        if (!says
                || LanguageVersion.written(words.letters(1))
                        .filter(LanguageVersion::isKnown)
                        .isPresent()) {
            return false;
        }
        problems.clear();
        problems.add(ClauseDiagnostics.anotherVersion(words.span(1), words.letters(1), LanguageVersion.known()));
        return true;
    }

    private Words words(int start, int end, int nesting) {
        Words raw = BareTexts.quote(problems, WordReading.read(problems, start, end));
        Words joined = UnitWords.join(problems, Numerals.join(problems, raw));
        return Brackets.pair(problems, nesting, Headings.complete(problems, joined));
    }

    /**
     * Reads words by a rule of the grammar. Nearly every text has no mistakes of grammar, and nearly every decision needs no look
     * at the rules around it: so it is tried first (the parser generator's SLL mode, which finds what the full one finds, or
     * a mistake). Only where that fails is it all read again with whole contexts, by those who can say what is wrong.
     */
    private <T> T read(Words words, int nesting, Function<InspectionParser, T> rule) {
        try {
            return rule.apply(quick(words, nesting));
        } catch (ParseCancellationException mistake) {
            return rule.apply(thorough(words, nesting));
        }
    }

    private static InspectionParser quick(Words words, int nesting) {
        InspectionParser quick = parser(words, nesting);
        quick.getInterpreter().setPredictionMode(PredictionMode.SLL);
        quick.setErrorHandler(new BailErrorStrategy());
        return quick;
    }

    private InspectionParser thorough(Words words, int nesting) {
        InspectionParser thorough = parser(words, nesting);
        thorough.setErrorHandler(new Slips(problems, words));
        return thorough;
    }

    private static InspectionParser parser(Words words, int nesting) {
        InspectionParser parser = new InspectionParser(new WordStream(words));
        parser.removeErrorListeners();
        parser.allowNesting(nesting);
        return parser;
    }
}
