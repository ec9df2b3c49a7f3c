package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.NoViableAltException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNConfig;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Says in the reader's words what is wrong where the text does not follow the grammar. */
final class Mismatch {

    private final SourceText source;
    private final Words words;

    Mismatch(SourceText source, Words words) {
        this.source = source;
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
                return GrammarDiagnostics.misspelt(source, place, found.getText(), meant.get());
            }
            if (parser.getContext().getRuleIndex() == InspectionParser.RULE_hole) {
                return GrammarDiagnostics.unitWithoutIn(source, place, found.getText());
            }
        }
        boolean nothingThere = !words.isOnSameLine(at) || found.getType() == InspectionLexer.RBRACE;
        if (nothingThere && at > 0 && !hopes.isEmpty()) {
            Span before = words.span(at - 1);
            return GrammarDiagnostics.missing(
                    source, new Span(before.end(), before.end()), words.letters(at - 1), hopes);
        }
        return GrammarDiagnostics.unexpected(source, place, shown(found), hopes);
    }

    /** A word that cannot begin a part of this block. */
    Diagnostic stray(int rule, Token found) {
        String block = Blocks.named(rule);
        if (Keywords.ITEMS.contains(found.getType())) {
            return GrammarDiagnostics.declarationInside(source, Words.span(found), found.getText(), block);
        }
        Optional<String> home = Blocks.home(found.getType());
        if (home.isPresent() && (rule == InspectionParser.RULE_file || rule == InspectionParser.RULE_block)) {
            return GrammarDiagnostics.clauseOutside(source, Words.span(found), found.getText(), home.get());
        }
        return GrammarDiagnostics.stray(
                source, Words.span(found), shown(found), block, List.copyOf(Keywords.written(Blocks.keywords(rule))));
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
