package io.github.leafproof.dsl.parse;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/**
 * Gives each heading the brace that opens its block, where it lacks one, and takes away braces where nothing has a block.
 * Which of the two brackets of a pair was forgotten can be told from the words alone: a stage, a check and their like have
 * a block, and an observation has none.
 */
final class Headings {

    /** What has a block. */
    private static final IntervalSet BLOCKS = new IntervalSet(
            InspectionLexer.STAGE,
            InspectionLexer.CHECK,
            InspectionLexer.FOR,
            InspectionLexer.SETUP,
            InspectionLexer.RELEASE,
            InspectionLexer.REHEARSE);

    /** No block that nobody asked for is longer. */
    private static final int FURTHEST = 1_000;

    /** So many words of a heading are looked through for its brace; a loop over more values is written on one line. */
    private static final int LONGEST_HEADING = 200;

    private static final int NOTHING = Token.INVALID_TYPE;

    private final Problems problems;
    private final Words words;
    private final List<CommonToken> result;
    /** For each open brace, whether it was taken away. */
    private final Deque<Boolean> taken = new ArrayDeque<>();
    /** The word whose block has not begun. */
    private int heading = NOTHING;
    /** The word that the declaration or clause began with. */
    private int part = NOTHING;
    /** Choices whose answers have not begun. */
    private int choices;
    /** Closing braces that are missing, or with a minus sign, too many. */
    private int missing;

    private Headings(Problems problems, Words words) {
        this.problems = problems;
        this.words = words;
        this.result = words.room();
        for (CommonToken word : words.list()) {
            missing += word.getType() == InspectionLexer.LBRACE ? 1 : word.getType() == InspectionLexer.RBRACE ? -1 : 0;
        }
    }

    static Words complete(Problems problems, Words words) {
        return new Headings(problems, words).complete();
    }

    private Words complete() {
        for (int at = 0; at < words.size(); at++) {
            if ((heading != NOTHING && endsHeading(at)) || (choices > 0 && beginsAnswer(at))) {
                openBlock();
            }
            accept(at);
        }
        return words.with(result);
    }

    private void accept(int at) {
        CommonToken word = words.get(at);
        int type = word.getType();
        switch (type) {
            case InspectionLexer.LBRACE -> open(at);
            case InspectionLexer.RBRACE -> close(word);
            default -> {
                note(at, type);
                result.add(word);
            }
        }
    }

    /** Remembers what the words are about. */
    private void note(int at, int type) {
        if (type == InspectionLexer.CHOOSE) {
            choices++;
        } else if (words.beginsDeclaration(at)) {
            part = type;
            choices = 0;
            heading = BLOCKS.contains(type) ? type : NOTHING;
        } else if (heading == NOTHING && Keywords.NEVER_INSIDE.contains(type)) {
            part = type;
            choices = 0;
        } else if (!words.isOnSameLine(at)) {
            // Perhaps a keyword, misspelt; that is not for now.
            part = NOTHING;
        }
    }

    private boolean endsHeading(int at) {
        int type = words.type(at);
        if (type == Token.EOF || type == InspectionLexer.RBRACE || words.beginsDeclaration(at)) {
            return true;
        }
        if (type == InspectionLexer.LBRACE || words.type(at - 1) == heading) {
            return false;
        }
        boolean clause = Keywords.NEVER_INSIDE.contains(type)
                || (heading == InspectionLexer.REHEARSE && type == InspectionLexer.ENGINE)
                || (heading == InspectionLexer.SETUP && words.type(at + 1) == InspectionLexer.ARROW);
        return clause
                || (!words.isOnSameLine(at)
                        && type != InspectionLexer.STRING
                        && words.type(at - 1) != InspectionLexer.COMMA
                        && !goesOnToABrace(at));
    }

    /** Whether the rest of a heading, with its brace, stands on further lines: line breaks are free. */
    private boolean goesOnToABrace(int at) {
        for (int next = at; next < words.size() && next < at + LONGEST_HEADING; next++) {
            int type = words.type(next);
            if (type == InspectionLexer.LBRACE) {
                return true;
            }
            if (type == InspectionLexer.RBRACE
                    || type == InspectionLexer.CHOOSE
                    || type == InspectionLexer.ARROW
                    || Keywords.NEVER_INSIDE.contains(type)
                    || words.beginsDeclaration(next)) {
                return false;
            }
        }
        return false;
    }

    private boolean beginsAnswer(int at) {
        boolean option = words.type(at) == InspectionLexer.STRING
                || words.type(at) == InspectionLexer.OTHERWISE
                || Keywords.isName(words.type(at));
        return option && words.type(at + 1) == InspectionLexer.COLON;
    }

    /** Puts the brace where the block of a heading or the answers of a choice begin. */
    private void openBlock() {
        CommonToken before = result.get(result.size() - 1);
        problems.add(BracketDiagnostics.neverOpened(Words.span(before).behind(), before.getText()));
        result.add(Words.conjured(before, InspectionLexer.LBRACE, "{"));
        taken.push(false);
        missing++;
        opened();
    }

    private void opened() {
        if (choices > 0) {
            choices--;
        } else {
            heading = NOTHING;
            part = NOTHING;
        }
    }

    private void open(int at) {
        CommonToken word = words.get(at);
        boolean doubled = words.type(at - 1) == InspectionLexer.LBRACE && missing > 0;
        if (choices > 0 || heading != NOTHING || (part == NOTHING && !doubled)) {
            opened();
            taken.push(false);
            result.add(word);
            return;
        }
        problems.add(BracketDiagnostics.opensNothing(Words.span(word), words.letters(at), part));
        if (hasPartner(at)) {
            taken.push(true);
        } else {
            missing--;
        }
    }

    /** Whether a brace closes it again, before a declaration that stands no further in. */
    private boolean hasPartner(int at) {
        int depth = 1;
        int indent = words.indent(at);
        for (int next = at + 1; next < words.size() && next < at + FURTHEST; next++) {
            int type = words.type(next);
            depth += type == InspectionLexer.LBRACE ? 1 : type == InspectionLexer.RBRACE ? -1 : 0;
            if (depth == 0) {
                return words.type(at - 1) != InspectionLexer.LBRACE || missing <= 0;
            }
            boolean beginsLine = !words.isOnSameLine(next);
            if (beginsLine && words.beginsDeclaration(next) && words.indent(next) <= indent) {
                return false;
            }
        }
        return false;
    }

    private void close(CommonToken word) {
        part = NOTHING;
        if (taken.isEmpty() || !taken.pop()) {
            result.add(word);
        }
    }
}
