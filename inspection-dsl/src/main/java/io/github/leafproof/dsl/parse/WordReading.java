package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/** Cuts a text into words and signs, and says of each sign that the language does not know what to write instead. */
final class WordReading {

    private static final Pattern STATE_AND_TEXT = Pattern.compile("[ \\t]*+\\w++[ \\t]*+\"");

    /** A word and the blank behind it, about. */
    private static final int LETTERS_OF_A_WORD = 5;

    private final Problems problems;
    private final InspectionLexer lexer;
    private final List<CommonToken> words;
    private int lastUnknownEnd = -1;

    private WordReading(Problems problems, int start, int end) {
        this.problems = problems;
        this.words = new ArrayList<>((end - start) / LETTERS_OF_A_WORD);
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
                if (isComment(token)) {
                    problems.add(SignDiagnostics.foreignComment(span));
                    return;
                }
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
            case "=>" -> leadsToAState(span) ? InspectionLexer.ARROW : InspectionLexer.NOT_LESS;
            default -> InspectionLexer.EQUALS;
        };
        problems.add(SignDiagnostics.foreign(span, token.getText(), meant == InspectionLexer.ARROW));
        token.setType(meant);
        words.add(token);
    }

    /** {@code out => fitted "Screw it in"}: behind the sign a name and then a text, as nothing else has. */
    private boolean leadsToAState(Span sign) {
        return STATE_AND_TEXT
                .matcher(problems.source().text())
                .region(sign.end(), problems.source().text().length())
                .lookingAt();
    }

    /** A single quote that nothing closes, where no text is asked for: a note to the reader. */
    private boolean isComment(CommonToken quote) {
        String letters = quote.getText();
        CommonToken before = words.isEmpty() ? null : words.get(words.size() - 1);
        if (letters.charAt(0) != '\'' || (letters.length() > 1 && letters.endsWith("'"))) {
            return false;
        }
        if (before == null || before.getLine() != quote.getLine()) {
            return true;
        }
        return switch (before.getType()) {
            case InspectionLexer.STRING,
                    InspectionLexer.NUMBER,
                    InspectionLexer.LBRACE,
                    InspectionLexer.RBRACE,
                    InspectionLexer.RPAREN,
                    InspectionLexer.RBRACKET -> true;
            case InspectionLexer.NAME ->
                words.size() > 1 && words.get(words.size() - 2).getType() == InspectionLexer.NUMBER;
            default -> false;
        };
    }

    /** A run of unknown signs is one mistake. */
    private void unknown(Span span) {
        if (span.start() != lastUnknownEnd) {
            problems.add(SignDiagnostics.unknown(span));
        }
        lastUnknownEnd = span.end();
    }
}
