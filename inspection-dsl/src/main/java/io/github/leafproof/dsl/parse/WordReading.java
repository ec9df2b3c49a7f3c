package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/** Cuts a text into words and signs, and says of each sign that the language does not know what to write instead. */
final class WordReading {

    private final Problems problems;
    private final InspectionLexer lexer;
    private final List<CommonToken> words = new ArrayList<>();
    private int lastUnknownEnd = -1;

    private WordReading(Problems problems, int start, int end) {
        this.problems = problems;
        this.lexer = new InspectionLexer(new CharacterWindow(problems.source(), start, end));
        lexer.removeErrorListeners();
        // Lines count from the text's beginning, also when only a stretch of it is read.
        lexer.setLine(problems.source().at(start).line());
    }

    static Words read(Problems problems, int start, int end) {
        return new WordReading(problems, start, end).read();
    }

    private Words read() {
        Token token = lexer.nextToken();
        while (token.getType() != Token.EOF) {
            if (token.getChannel() == Token.DEFAULT_CHANNEL) {
                accept((CommonToken) token);
            }
            token = lexer.nextToken();
        }
        words.add((CommonToken) token);
        return Words.of(problems.source().text(), words);
    }

    private void accept(CommonToken token) {
        Span span = Words.span(token);
        switch (token.getType()) {
            case InspectionLexer.UNKNOWN -> unknown(span);
            case InspectionLexer.SEMICOLON -> problems.add(SignDiagnostics.semicolon(span));
            case InspectionLexer.FOREIGN_COMMENT -> problems.add(SignDiagnostics.foreignComment(span));
            case InspectionLexer.FOREIGN -> foreign(token, span);
            case InspectionLexer.UNCLOSED_STRING -> {
                // Where the text was to end is only guessed at, so what follows on its line may be lost in it.
                problems.add(TextDiagnostics.quoteMissing(span));
                problems.lose(span);
                words.add(token);
            }
            case InspectionLexer.CURLY_STRING -> {
                problems.add(TextDiagnostics.curlyQuotes(span));
                words.add(token);
            }
            default -> words.add(token);
        }
    }

    /** What other languages write so is plain enough to be read on with. */
    private void foreign(CommonToken token, Span span) {
        int meant = switch (token.getText()) {
            case "&&" -> InspectionLexer.AND;
            case "||" -> InspectionLexer.OR;
            case "**" -> InspectionLexer.TO_THE;
            case "+-", "+/-" -> InspectionLexer.PLUS_MINUS;
            case "!" -> InspectionLexer.NOT;
            case "=<" -> InspectionLexer.NOT_MORE;
            case "=>" -> InspectionLexer.NOT_LESS;
            default -> InspectionLexer.EQUALS;
        };
        problems.add(SignDiagnostics.foreign(span, token.getText()));
        token.setType(meant);
        words.add(token);
    }

    /** A run of unknown signs is one mistake. */
    private void unknown(Span span) {
        if (span.start() != lastUnknownEnd) {
            problems.add(SignDiagnostics.unknown(span));
        }
        lastUnknownEnd = span.end();
    }
}
