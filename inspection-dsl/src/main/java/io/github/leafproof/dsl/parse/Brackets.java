package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.Span;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;

/**
 * Gives every bracket its partner before the grammar looks at the text, so that one forgotten brace is one mistake and
 * not a hundred. Where a closing brace is missing, the shape of the page tells which: a block ends before a line that
 * begins a declaration no deeper than the block's own line. Where nothing is missing the shape does not matter.
 */
final class Brackets {

    private final Problems problems;
    private final int deepest;
    private final Words words;
    private final List<CommonToken> result;
    private final Deque<Open> open = new ArrayDeque<>();
    /** Closing braces that are missing, or with a minus sign, too many. */
    private int missing;

    private int indent;

    private Brackets(Problems problems, int deepest, Words words) {
        this.deepest = deepest;
        this.problems = problems;
        this.words = words;
        this.result = words.room();
    }

    /** A bracket that waits for its partner, and how far its line is indented. */
    private record Open(CommonToken token, int indent, boolean isCall) {
        boolean isBrace() {
            return token.getType() == InspectionLexer.LBRACE;
        }

        int partner() {
            return switch (token.getType()) {
                case InspectionLexer.LBRACE -> InspectionLexer.RBRACE;
                case InspectionLexer.LPAREN -> InspectionLexer.RPAREN;
                default -> InspectionLexer.RBRACKET;
            };
        }
    }

    /** Throws {@link BoundedParser.TooDeep} where more than {@code deepest} brackets are open. */
    static Words pair(Problems problems, int deepest, Words words) {
        return new Brackets(problems, deepest, words).pair();
    }

    private Words pair() {
        for (CommonToken word : words.list()) {
            missing += word.getType() == InspectionLexer.LBRACE ? 1 : word.getType() == InspectionLexer.RBRACE ? -1 : 0;
        }
        for (int at = 0; at < words.size(); at++) {
            CommonToken word = words.get(at);
            if (!words.isOnSameLine(at)) {
                indent = word.getCharPositionInLine();
                closeByShape(at);
            }
            accept(at, word);
        }
        return words.with(result);
    }

    private void accept(int at, CommonToken word) {
        switch (word.getType()) {
            case InspectionLexer.LBRACE, InspectionLexer.LPAREN, InspectionLexer.LBRACKET -> open(at, word);
            case InspectionLexer.RPAREN, InspectionLexer.RBRACKET -> closeInLine(word);
            case InspectionLexer.RBRACE -> closeBlock(at, word);
            case InspectionLexer.COMMA -> {
                if (!open.isEmpty() && open.element().isCall()) {
                    word.setType(InspectionLexer.ARGUMENT_COMMA);
                }
                result.add(word);
            }
            case Token.EOF -> {
                while (!open.isEmpty()) {
                    closeMissing(word);
                }
                result.add(word);
            }
            default -> {
                if (Keywords.NEVER_INSIDE.contains(word.getType()) && !standsForAName(at)) {
                    closeParentheses(word);
                }
                result.add(word);
            }
        }
    }

    /** {@code f(check)}: somebody has called a thing by a word of the language, and the parser will say so. */
    private boolean standsForAName(int at) {
        int before = words.type(at - 1);
        return before == InspectionLexer.LPAREN
                || before == InspectionLexer.LBRACKET
                || before == InspectionLexer.COMMA
                || before == InspectionLexer.ARGUMENT_COMMA;
    }

    private void open(int at, CommonToken word) {
        if (open.size() == deepest) {
            throw new BoundedParser.TooDeep(Words.span(word));
        }
        boolean isCall = word.getType() == InspectionLexer.LPAREN
                && (Keywords.isName(words.type(at - 1)) || words.type(at + 1) == InspectionLexer.STATED)
                && words.type(at - 2) != InspectionLexer.DEFINE;
        open.push(new Open(word, indent, isCall));
        result.add(word);
    }

    private void closeInLine(CommonToken word) {
        Open last = open.peek();
        if (last == null || last.isBrace()) {
            problems.add(BracketDiagnostics.closesNothing(Words.span(word), word.getText()));
            return;
        }
        if (last.partner() != word.getType()) {
            problems.add(BracketDiagnostics.wrongPartner(
                    Words.span(last.token()), Words.span(word), Keywords.written(last.partner())));
            word.setType(last.partner());
        }
        open.pop();
        result.add(word);
    }

    private void closeBlock(int at, CommonToken word) {
        closeParentheses(word);
        boolean deeperThanItsBlock = missing < 0
                && !words.isOnSameLine(at)
                && !open.isEmpty()
                && indent > open.element().indent();
        if (open.isEmpty() || deeperThanItsBlock) {
            missing++;
            problems.add(BracketDiagnostics.closesNothing(Words.span(word), word.getText()));
            return;
        }
        open.pop();
        result.add(word);
    }

    private void closeParentheses(CommonToken noticed) {
        while (!open.isEmpty() && !open.element().isBrace()) {
            closeMissing(noticed);
        }
    }

    /** Closes blocks whose brace is missing, going by how far this line, whose first word this is, is indented. */
    private void closeByShape(int at) {
        CommonToken word = words.get(at);
        boolean begins = beginsDeclaration(at);
        boolean ends = word.getType() == InspectionLexer.RBRACE;
        if (missing <= 0 || !(begins || ends)) {
            return;
        }
        closeParentheses(word);
        while (missing > 0
                && !open.isEmpty()
                && (begins ? indent <= open.element().indent() : endsAnOuterBlock())) {
            missing--;
            closeMissing(word);
        }
    }

    private boolean endsAnOuterBlock() {
        return open.element().indent() > indent && open.stream().anyMatch(block -> block.indent() == indent);
    }

    private boolean beginsDeclaration(int at) {
        return switch (words.type(at)) {
            case InspectionLexer.SETUP -> words.type(at + 2) == InspectionLexer.STARTS;
            case InspectionLexer.HAZARD -> words.type(at + 2) == InspectionLexer.STRING;
            default -> Keywords.ITEMS.contains(words.type(at));
        };
    }

    /** Puts the partner where it is missed, before {@code noticed}. */
    private void closeMissing(CommonToken noticed) {
        Open last = open.pop();
        CommonToken before = result.get(result.size() - 1);
        boolean atEnd = noticed.getType() == Token.EOF;
        Span place = atEnd ? Words.span(before).behind() : Words.span(noticed).before();
        problems.add(BracketDiagnostics.neverClosed(
                Words.span(last.token()), last.token().getText(), place, Keywords.written(last.partner())));
        CommonToken partner = new CommonToken(before);
        partner.setType(last.partner());
        partner.setStartIndex(before.getStopIndex() + 1);
        partner.setText(Keywords.written(last.partner()));
        result.add(partner);
    }
}
