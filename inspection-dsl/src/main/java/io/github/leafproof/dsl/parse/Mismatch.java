package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.antlr.v4.runtime.NoViableAltException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNConfig;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Says in the reader's words what is wrong where the text does not follow the grammar. */
final class Mismatch {

    private static final IntervalSet COMPARE = new IntervalSet(
            InspectionLexer.AT,
            InspectionLexer.BETWEEN,
            InspectionLexer.WITHIN,
            InspectionLexer.NOT_MORE,
            InspectionLexer.NOT_LESS,
            InspectionLexer.LESS,
            InspectionLexer.GREATER);

    /** Words that stand before what they are about, so that their misspelling shows only behind it. */
    private static final Set<String> PREFIXES = Set.of("not", "if", "choose");

    private final Words words;

    Mismatch(Words words) {
        this.words = words;
    }

    Diagnostic describe(Parser parser, RecognitionException e) {
        Token found = e.getOffendingToken();
        IntervalSet expected = expected(parser, e);
        int at = found.getTokenIndex();
        Span place = Words.span(found);
        List<String> hopes = Expectations.of(expected, enclosing(parser));
        if (words.isOnSameLine(at) && found.getType() == InspectionLexer.NAME) {
            Optional<String> meant = NearWord.of(found.getText(), Keywords.written(expected));
            if (meant.isPresent()) {
                return GrammarDiagnostics.misspelt(place, found.getText(), meant.get());
            }
            Optional<Diagnostic> compared = compareWords(at);
            if (compared.isPresent()) {
                return compared.get();
            }
            if (parser.getContext().getRuleIndex() == InspectionParser.RULE_hole
                    && words.type(at - 1) != InspectionLexer.COMMA) {
                return GrammarDiagnostics.unitWithoutIn(place, found.getText(), "{gap in thou}");
            }
        }
        if (parser.getContext().getRuleIndex() == InspectionParser.RULE_line && found.getType() != Token.EOF) {
            return unit(at).isPresent()
                    ? GrammarDiagnostics.unitWithoutIn(place, found.getText(), "4.5 thou in mm")
                    : GrammarDiagnostics.unjoined(place, shown(found), true);
        }
        if (COMPARE.contains(found.getType())) {
            if (words.type(at - 1) == InspectionLexer.AND || words.type(at - 1) == InspectionLexer.OR) {
                return GrammarDiagnostics.comparedWithoutValue(place, phrase(at), words.letters(at - 1));
            }
            int is = words.type(at - 1) == InspectionLexer.NOT ? at - 2 : at - 1;
            if (words.type(is) == InspectionLexer.IS) {
                Span span = words.span(is).to(words.span(at - 1));
                return GrammarDiagnostics.isTooMuch(span, is < at - 1, phrase(at));
            }
        }
        if (isKeywordForValue(at)) {
            return GrammarDiagnostics.reservedWord(place, found.getText());
        }
        if (hopes.isEmpty()
                && Keywords.RESERVED.contains(found.getType())
                && expected.contains(InspectionLexer.VARIANT)
                && words.isOnSameLine(at)) {
            return GrammarDiagnostics.reservedWord(place, found.getText());
        }
        if (enclosing(parser) == InspectionParser.RULE_gaugeKind && words.isOnSameLine(at)) {
            return GrammarDiagnostics.noKindOfGauge(place, found.getText());
        }
        if (found.getType() == InspectionLexer.OTHERWISE
                && Keywords.isName(words.type(at + 1))
                && words.type(at + 2) != InspectionLexer.COLON) {
            return GrammarDiagnostics.otherwiseFirst(place.to(words.span(at + 1)), words.letters(at + 1));
        }
        Optional<Diagnostic> name = nameOfSeveralWords(at, expected);
        if (name.isPresent()) {
            return name.get();
        }
        boolean nothingThere = !words.isOnSameLine(at) || found.getType() == InspectionLexer.RBRACE;
        if (nothingThere && at > 0 && !hopes.isEmpty()) {
            Span before = words.span(at - 1);
            return GrammarDiagnostics.missing(before.behind(), phrase(at - 1), hopes);
        }
        return GrammarDiagnostics.unexpected(place, shown(found), hopes);
    }

    /** Whether a value should stand here, and a word of the language is used as if it were the name of one. */
    boolean isKeywordForValue(int at) {
        boolean goesOn = Keywords.OPERATORS.contains(words.type(at + 1))
                || words.type(at + 1) == InspectionLexer.RPAREN
                || words.type(at + 1) == InspectionLexer.COMMA
                || words.type(at + 1) == InspectionLexer.ARGUMENT_COMMA;
        return Keywords.NEVER_INSIDE.contains(words.type(at)) && words.isOnSameLine(at) && goesOn;
    }

    /** {@code observe head temperature : …}, {@code let low-needle = …}: where a sign should follow the name, it goes on. */
    private Optional<Diagnostic> nameOfSeveralWords(int at, IntervalSet expected) {
        int sign = expected.contains(InspectionLexer.COLON)
                ? InspectionLexer.COLON
                : expected.contains(InspectionLexer.EQUALS) ? InspectionLexer.EQUALS : InspectionLexer.STARTS;
        int end = at;
        while (words.isOnSameLine(end)
                && ((Keywords.isName(words.type(end)) && words.type(end) != sign)
                        || words.type(end) == InspectionLexer.MINUS
                        || words.type(end) == InspectionLexer.NUMBER)) {
            end++;
        }
        if (!expected.contains(sign) || end == at || words.type(end) != sign || !Keywords.isName(words.type(at - 1))) {
            return Optional.empty();
        }
        List<String> parts = IntStream.range(at - 1, end)
                .filter(part -> words.type(part) != InspectionLexer.MINUS)
                .mapToObj(words::letters)
                .toList();
        return Optional.of(
                ClauseDiagnostics.nameOfSeveralWords(words.span(at - 1).to(words.span(end - 1)), parts));
    }

    /** The words of a comparison together: {@code at most}. */
    private String phrase(int at) {
        if (words.type(at) == InspectionLexer.LEAST || words.type(at) == InspectionLexer.MOST) {
            return words.letters(at - 1) + " " + words.letters(at);
        }
        boolean limit = words.type(at) == InspectionLexer.AT && words.isOnSameLine(at + 1);
        return limit ? words.letters(at) + " " + words.letters(at + 1) : words.letters(at);
    }

    /** A word that cannot begin a part of this block. */
    Diagnostic stray(int rule, int at) {
        Token found = words.get(at);
        Span place = Words.span(found);
        String block = Blocks.named(rule);
        if (found.getType() == InspectionLexer.ADVISE && rule == InspectionParser.RULE_checkBody) {
            boolean outcomeBehind = words.type(at + 1) == InspectionLexer.STRING
                    && words.type(at + 2) == InspectionLexer.IF
                    && words.isOnSameLine(at + 3);
            return outcomeBehind
                    ? GrammarDiagnostics.adviceBeforeOutcome(
                            place.to(words.span(at + 3)), words.letters(at + 3), words.letters(at + 1))
                    : GrammarDiagnostics.adviceWithoutOutcome(place);
        }
        Optional<String> unit =
                found.getType() == InspectionLexer.NUMBER && words.isOnSameLine(at) ? unit(at - 1) : Optional.empty();
        if (unit.isPresent()) {
            return GrammarDiagnostics.unitBeforeNumber(words.span(at - 1).to(place), unit.get(), words.letters(at));
        }
        if (found.getType() == InspectionLexer.COMMA && rule == InspectionParser.RULE_checkBody) {
            return GrammarDiagnostics.commaBetweenConditions(place);
        }
        if (Keywords.ITEMS.contains(found.getType())) {
            return GrammarDiagnostics.declarationInside(place, found.getText(), block);
        }
        Optional<String> home = Blocks.home(found.getType());
        boolean ofAnother = rule == InspectionParser.RULE_file
                || rule == InspectionParser.RULE_block
                || (rule == InspectionParser.RULE_observeClauses
                        && !Blocks.keywords(rule).contains(found.getType()));
        if (home.isPresent() && ofAnother) {
            return GrammarDiagnostics.clauseOutside(place, found.getText(), home.get());
        }
        if (words.beginsWithName(at)) {
            return GrammarDiagnostics.firstWordMissing(
                    place, found.getText(), words.type(at + 1) == InspectionLexer.COLON);
        }
        if (words.isOnSameLine(at) && words.type(at - 1) != InspectionLexer.LBRACE) {
            return misspelt(rule, at)
                    .or(() -> misspelt(rule, at - 1))
                    .or(() -> compareWords(at))
                    .or(() -> compareWords(at - 1))
                    .orElseGet(() -> GrammarDiagnostics.unjoined(place, shown(found), isInExpression(at)));
        }
        return GrammarDiagnostics.stray(
                place, shown(found), block, List.copyOf(Keywords.written(Blocks.keywords(rule))));
    }

    /** The word as a unit, where it is one or is meant to be. */
    private Optional<String> unit(int at) {
        if (words.type(at) != InspectionLexer.NAME) {
            return Optional.empty();
        }
        String word = words.letters(at);
        return Unit.find(word).map(known -> word).or(() -> Unit.meant(word));
    }

    /** A word within a line that is nearly one that could go on here. */
    private Optional<Diagnostic> misspelt(int rule, int at) {
        if (words.type(at) != InspectionLexer.NAME) {
            return Optional.empty();
        }
        String word = words.letters(at);
        Set<String> keywords = Keywords.written(Keywords.all(Keywords.OPERATORS, Blocks.keywords(rule)));
        Optional<String> prefix =
                PREFIXES.stream().filter(each -> each.equalsIgnoreCase(word)).findFirst();
        return prefix.or(() -> NearWord.of(word, keywords))
                .map(meant -> GrammarDiagnostics.misspelt(words.span(at), word, meant));
    }

    /** {@code greater than}: what another language, or another shop, calls a comparison, as far as it goes. */
    private Optional<Diagnostic> compareWords(int at) {
        Optional<CompareWord> compare =
                words.type(at) == InspectionLexer.NAME ? CompareWord.of(words.letters(at)) : Optional.empty();
        return compare.map(word -> {
            int start = words.type(at - 1) == InspectionLexer.IS && words.isOnSameLine(at) ? at - 1 : at;
            int end = at + 1;
            while (words.isOnSameLine(end) && CompareWord.goesOn(words.letters(end))) {
                end++;
            }
            return GrammarDiagnostics.otherwiseCompared(words.span(start).to(words.span(end - 1)), word);
        });
    }

    /** Whether what stands before this word in its line is something that is computed or compared. */
    private boolean isInExpression(int at) {
        int from = at;
        while (words.isOnSameLine(from) && !Keywords.NEVER_INSIDE.contains(words.type(from))) {
            from--;
        }
        return switch (words.type(from)) {
            case InspectionLexer.LET,
                    InspectionLexer.DEFINE,
                    InspectionLexer.REQUIRE,
                    InspectionLexer.WHEN,
                    InspectionLexer.ADVISE -> true;
            default -> false;
        };
    }

    private static IntervalSet expected(Parser parser, RecognitionException e) {
        if (!(e instanceof NoViableAltException alternatives) || alternatives.getDeadEndConfigs() == null) {
            return e.getExpectedTokens();
        }
        IntervalSet expected = new IntervalSet();
        for (ATNConfig config : alternatives.getDeadEndConfigs()) {
            expected.addAll(parser.getATN().nextTokens(config.state));
        }
        expected.remove(Token.EPSILON);
        return expected;
    }

    private static int enclosing(Parser parser) {
        RuleContext context = parser.getContext();
        return context.getRuleIndex() == InspectionParser.RULE_typeWords
                ? InspectionParser.RULE_type
                : context.getRuleIndex();
    }

    private static String shown(Token found) {
        String letters = found.getType() == Token.EOF ? "" : found.getText();
        return letters.codePointCount(0, letters.length()) <= 40 ? letters : letters.substring(0, 38) + "\u2026";
    }
}
