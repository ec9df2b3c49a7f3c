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
    private record Open(CommonToken token, int indent, boolean isCall, boolean isDefine) {
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
                if (isBehindIndex()) {
                    closeMissing(word);
                }
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
                closeBefore(at, word);
                result.add(word);
            }
        }
    }

    /** Closes what this word cannot stand in. */
    private void closeBefore(int at, CommonToken word) {
        boolean clause =
                !words.isOnSameLine(at) && (beginsConfidence(at) || words.type(at + 2) == InspectionLexer.ADVISE);
        if (clause || (Keywords.NEVER_INSIDE.contains(word.getType()) && !words.standsForAName(at) && !isLater(at))) {
            closeParentheses(word);
        } else if (isBehindIndex() || (word.getType() == InspectionLexer.EQUALS && isOfADefine())) {
            closeMissing(word);
        }
    }

    /** {@code at 99 %}, and not the second line of a condition, {@code at most 3 mm}. */
    private boolean beginsConfidence(int at) {
        return words.type(at) == InspectionLexer.AT
                && words.type(at + 1) != InspectionLexer.LEAST
                && words.type(at + 1) != InspectionLexer.MOST;
    }

    /** {@code is after}, {@code is not after}: a comparison of days, and no clause that names a gate. */
    private boolean isLater(int at) {
        int is = words.type(at - 1) == InspectionLexer.NOT ? at - 2 : at - 1;
        return words.type(at) == InspectionLexer.AFTER && words.type(is) == InspectionLexer.IS;
    }

    /** Between the brackets of an index stands one name. */
    private boolean isBehindIndex() {
        return !open.isEmpty()
                && open.element().token().getType() == InspectionLexer.LBRACKET
                && result.get(result.size() - 1) != open.element().token();
    }

    private boolean isOfADefine() {
        return !open.isEmpty() && open.element().isDefine();
    }

    private void open(int at, CommonToken word) {
        if (open.size() == deepest) {
            throw new BoundedParser.TooDeep(Words.span(word));
        }
        if (isBehindIndex()) {
            closeMissing(word);
        }
        boolean isRound = word.getType() == InspectionLexer.LPAREN;
        boolean isDefine = isRound && words.type(at - 2) == InspectionLexer.DEFINE;
        boolean isCall = isRound
                && !isDefine
                && (Keywords.isName(words.type(at - 1)) || words.type(at + 1) == InspectionLexer.STATED);
        open.push(new Open(word, indent, isCall, isDefine));
        result.add(word);
    }

    private void closeInLine(CommonToken word) {
        Open last = open.peek();
        if (last == null || last.isBrace()) {
            closesNothing(word);
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
            closesNothing(word);
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
        boolean begins = words.beginsDeclaration(at);
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

    /** It may have belonged to what is left of the word before it, whatever that was to be. */
    private void closesNothing(CommonToken word) {
        problems.add(BracketDiagnostics.closesNothing(Words.span(word), word.getText()));
        if (word.getType() != InspectionLexer.RBRACE && !result.isEmpty()) {
            problems.lose(Words.span(result.get(result.size() - 1)).to(Words.span(word)));
            problems.loseName();
        }
    }

    /** Puts the partner where it is missed, before {@code noticed}. */
    private void closeMissing(CommonToken noticed) {
        Open last = open.pop();
        CommonToken before = result.get(result.size() - 1);
        Span opened = Words.span(last.token());
        Span behind = Words.span(before).behind();
        if (Words.isConjured(last.token())) {
            // That it lacks its braces has been said, and what stands in it is not known.
            problems.lose(opened.to(behind));
        } else if (last.isBrace()) {
            boolean atEnd = noticed.getType() == Token.EOF;
            problems.add(BracketDiagnostics.blockNeverClosed(opened, atEnd ? behind : Words.span(noticed), atEnd));
        } else {
            problems.add(BracketDiagnostics.neverClosed(opened, behind, Keywords.written(last.partner())));
            problems.lose(opened.to(behind));
        }
        result.add(Words.conjured(before, last.partner(), Keywords.written(last.partner())));
    }
}
