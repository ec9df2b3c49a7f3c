package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/** The words and signs of a text in order, with what the passes before the grammar want to know of them. */
final class Words {

    private final String text;
    private final List<CommonToken> words;

    private Words(String text, List<CommonToken> words) {
        this.text = text;
        this.words = words;
    }

    static Words of(String text, List<CommonToken> words) {
        return new Words(text, words);
    }

    /** How many there are; the end of the text counts as the last. */
    int size() {
        return words.size();
    }

    CommonToken get(int index) {
        return words.get(Math.min(Math.max(index, 0), words.size() - 1));
    }

    int type(int index) {
        return index < 0 ? Token.INVALID_TYPE : get(index).getType();
    }

    /** Whether this one stands right behind the one before, without so much as a blank. */
    boolean isGlued(int index) {
        return index > 0 && get(index).getStartIndex() == get(index - 1).getStopIndex() + 1;
    }

    /** Whether this one stands on the line of the one before. */
    boolean isOnSameLine(int index) {
        return index > 0 && get(index).getLine() == get(index - 1).getLine() && type(index) != Token.EOF;
    }

    /** What stands between this one and the one before. */
    String gap(int index) {
        return index == 0
                ? ""
                : text.substring(get(index - 1).getStopIndex() + 1, get(index).getStartIndex());
    }

    /** The word with the signs behind it that are no words: {@code Are all bolts tight?} */
    CommonToken withSignsBehind(int index) {
        CommonToken last = get(index);
        String gap = gap(index + 1);
        int end = 0;
        while (end < gap.length() && "\r\n/#{".indexOf(gap.charAt(end)) < 0) {
            end++;
        }
        CommonToken whole = new CommonToken(last);
        whole.setStopIndex(
                last.getStopIndex() + gap.substring(0, end).stripTrailing().length());
        return whole;
    }

    /** The letters of a word as they stand in the text. */
    String letters(int index) {
        return get(index).getText();
    }

    /** Whether a line begins here that names something without saying what it is to be: {@code head : temperature}. */
    boolean beginsWithName(int index) {
        return !isOnSameLine(index)
                && (Keywords.isName(type(index)) || type(index) == InspectionLexer.UNKNOWN)
                && (type(index + 1) == InspectionLexer.COLON || type(index + 1) == InspectionLexer.EQUALS);
    }

    Span span(int index) {
        return span(get(index));
    }

    static Span span(Token token) {
        return CharacterWindow.span(token, token.getStartIndex(), end(token));
    }

    /** From the first of some words to the last of them. */
    static Span span(Token first, Token last) {
        return CharacterWindow.span(first, first.getStartIndex(), Math.max(end(first), end(last)));
    }

    private static int end(Token token) {
        int start = token.getStartIndex();
        return token.getType() == Token.EOF ? start : Math.max(start, token.getStopIndex() + 1);
    }

    List<CommonToken> list() {
        return words;
    }

    /** The same words with some joined or left out. */
    Words with(List<CommonToken> others) {
        return new Words(text, others);
    }

    /** A word that covers several, written in a given way. */
    static CommonToken joined(CommonToken first, CommonToken last, int type, String letters) {
        CommonToken token = new CommonToken(first);
        token.setType(type);
        token.setStopIndex(last.getStopIndex());
        token.setText(letters);
        return token;
    }

    /** A word that nobody wrote, behind one that somebody did. */
    static CommonToken conjured(CommonToken before, int type, String letters) {
        CommonToken token = new CommonToken(before);
        token.setType(type);
        token.setStartIndex(before.getStopIndex() + 1);
        token.setText(letters);
        return token;
    }

    /** Whether nobody wrote it. */
    static boolean isConjured(Token token) {
        return token.getStopIndex() < token.getStartIndex();
    }

    /** Whether a declaration begins here; a few of its words mean something in other places as well. */
    boolean beginsDeclaration(int index) {
        return switch (type(index)) {
            case InspectionLexer.SETUP -> hasInLine(index + 1, InspectionLexer.STARTS);
            case InspectionLexer.HAZARD -> type(index + 2) == InspectionLexer.STRING;
            // After these two it is what a rehearsal expects.
            case InspectionLexer.RELEASE ->
                type(index - 1) != InspectionLexer.EXPECT
                        && type(index - 1) != InspectionLexer.COMMA
                        && !standsForAName(index);
            default -> Keywords.ITEMS.contains(type(index)) && !standsForAName(index);
        };
    }

    private boolean hasInLine(int index, int type) {
        int at = index;
        while (isOnSameLine(at) && type(at) != type && Keywords.isName(type(at))) {
            at++;
        }
        return isOnSameLine(at) && type(at) == type;
    }

    /** How far the line is indented that this one stands on. */
    int indent(int index) {
        int first = index;
        while (isOnSameLine(first)) {
            first--;
        }
        return get(first).getCharPositionInLine();
    }

    /** {@code f(check)}, {@code let check}: somebody calls a thing by a word of the language, and the parser will say so. */
    boolean standsForAName(int index) {
        return isOnSameLine(index)
                && switch (type(index - 1)) {
                    case InspectionLexer.LPAREN,
                            InspectionLexer.LBRACKET,
                            InspectionLexer.COMMA,
                            InspectionLexer.ARGUMENT_COMMA -> true;
                    default -> Keywords.ITEMS.contains(type(index - 1)) || Keywords.OPERATORS.contains(type(index - 1));
                };
    }

    List<CommonToken> room() {
        return new ArrayList<>(words.size());
    }
}
