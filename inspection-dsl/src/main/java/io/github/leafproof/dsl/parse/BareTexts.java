package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Takes words that stand where a text belongs, but without quotes, for the text that they are meant to be: the words
 * behind {@code ask}, a stage's title, a leaf's marking. Where such a text ends is the end of its line, or the brace there.
 */
final class BareTexts {

    private final Problems problems;
    private final Words words;
    private final List<CommonToken> result;

    private BareTexts(Problems problems, Words words) {
        this.problems = problems;
        this.words = words;
        this.result = words.room();
    }

    static Words quote(Problems problems, Words words) {
        return new BareTexts(problems, words).quote();
    }

    private Words quote() {
        int at = 0;
        while (at < words.size()) {
            int start = start(at);
            int end = start < 0 ? -1 : end(at, start);
            if (end <= start) {
                result.add(words.get(at++));
                continue;
            }
            while (at < start) {
                result.add(words.get(at++));
            }
            add(start, end);
            at = end;
        }
        return words.with(result);
    }

    private void add(int start, int end) {
        CommonToken last = words.withSignsBehind(end - 1);
        Span span = words.span(start).to(Words.span(last));
        // What was said about its signs was said of signs outside of a text.
        problems.forget(span);
        problems.add(TextDiagnostics.quotesMissing(span));
        problems.lose(span);
        result.add(Words.joined(
                words.get(start), last, InspectionLexer.UNQUOTED, span.source().of(span)));
    }

    /** Where a text should begin that the word at this place asks for, and other words stand there; else −1. */
    private int start(int at) {
        return switch (words.type(at)) {
            case InspectionLexer.STAGE, InspectionLexer.REHEARSE -> words.beginsDeclaration(at) ? bare(at + 1) : -1;
            case InspectionLexer.CHECK -> words.beginsDeclaration(at) ? bare(behindTarget(at + 1)) : -1;
            case InspectionLexer.PROCEDURE -> words.type(at + 2) == InspectionLexer.REVISION ? -1 : bare(at + 2);
            case InspectionLexer.ASK, InspectionLexer.BECAUSE, InspectionLexer.USE -> bare(at + 1);
            case InspectionLexer.NOTE -> words.isOnSameLine(at) ? -1 : bare(at + 1);
            case InspectionLexer.ADVISE -> isSentence(at + 1) ? bare(at + 1) : -1;
            case InspectionLexer.ARROW -> Keywords.isName(words.type(at + 1)) ? bare(at + 2) : -1;
            case InspectionLexer.PASSES, InspectionLexer.REFUSES, InspectionLexer.DRAGS ->
                words.type(at + 1) == InspectionLexer.NUMBER ? at + 1 : -1;
            case InspectionLexer.ENGINE, InspectionLexer.GAUGES ->
                (words.isOnSameLine(at) ? isBehindText(at) : words.type(at + 1) == InspectionLexer.NAME)
                                && words.type(at + 2) != InspectionLexer.COLON
                        ? bare(at + 1)
                        : -1;
            default -> -1;
        };
    }

    private int bare(int at) {
        return words.isOnSameLine(at) && Keywords.isName(words.type(at)) ? at : -1;
    }

    private int behindTarget(int at) {
        int behind = at + 1;
        while (words.type(behind) == InspectionLexer.LBRACKET && words.type(behind + 2) == InspectionLexer.RBRACKET) {
            behind += 3;
        }
        return behind;
    }

    /** Two words without anything between them are no value. */
    private boolean isSentence(int at) {
        return words.type(at) == InspectionLexer.NAME
                && words.isOnSameLine(at + 1)
                && (Keywords.isName(words.type(at + 1)) || words.type(at + 1) == InspectionLexer.NOT);
    }

    private boolean isBehindText(int at) {
        return !result.isEmpty()
                && (result.get(result.size() - 1).getType() == InspectionLexer.UNQUOTED
                        || words.type(at - 1) == InspectionLexer.STRING)
                && words.type(at + 1) == InspectionLexer.NAME;
    }

    /** The place behind the text that begins at {@code start} since the word at {@code asking} asks for one. */
    private int end(int asking, int start) {
        int type = words.type(asking);
        if (type == InspectionLexer.PASSES || type == InspectionLexer.REFUSES || type == InspectionLexer.DRAGS) {
            return start + 1;
        }
        int end = start;
        while ((end == start || words.isOnSameLine(end)) && !ends(type, end)) {
            if (words.type(end) == InspectionLexer.STRING || words.type(end) == InspectionLexer.CURLY_STRING) {
                // There is a text; what stands before it is something else.
                return -1;
            }
            end++;
        }
        if (type == InspectionLexer.CHECK) {
            while (end > start && CheckBuilder.HEADING.contains(words.letters(end - 1))) {
                end--;
            }
        }
        return end;
    }

    private boolean ends(int asking, int at) {
        int type = words.type(at);
        if (type == InspectionLexer.LBRACE || type == InspectionLexer.RBRACE || type == Token.EOF) {
            return true;
        }
        return switch (asking) {
            case InspectionLexer.PROCEDURE -> type == InspectionLexer.REVISION;
            case InspectionLexer.ARROW -> type == InspectionLexer.HAZARD;
            case InspectionLexer.ENGINE ->
                type == InspectionLexer.GAUGES || type == InspectionLexer.VARIANT || type == InspectionLexer.SERIAL;
            case InspectionLexer.CHECK, InspectionLexer.STAGE ->
                type == InspectionLexer.REQUIRE || words.beginsDeclaration(at);
            default -> false;
        };
    }
}
