package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.DefaultErrorStrategy;
import org.antlr.v4.runtime.InputMismatchException;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.atn.ATNState;
import org.antlr.v4.runtime.atn.StarLoopEntryState;
import org.antlr.v4.runtime.atn.StarLoopbackState;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.jspecify.annotations.Nullable;

/**
 * What the parser does where the text does not follow the grammar. It says so once, and goes on at the next clause or
 * declaration of the block it is in; since all brackets have partners here, it cannot lose its block. It never mends
 * the text by a guess, save where the slip is plain: a misspelt keyword, a keyword used as a name.
 */
final class Slips extends DefaultErrorStrategy {

    /** Mistakes that leave a clause in pieces; what is left of it then looks wrong as well. */
    private static final Set<Code> DISTURBING = EnumSet.of(
            Code.LP106, Code.LP107, Code.LP114, Code.LP115, Code.LP116, Code.LP118, Code.LP120, Code.LP121, Code.LP142);

    /** The clauses of an observation that stand before a text. */
    private static final Set<String> ASK_FOR_TEXT = Set.of("ask", "note");

    private final Problems problems;
    private final Words words;
    private final int[] partners;
    private final Mismatch mismatch;
    /** Where the parser last gave up, and in which states: twice in the same one, and it would do so for ever. */
    private final Set<Integer> stumbledIn = new HashSet<>();

    private @Nullable Token lastStumble;

    Slips(Problems problems, Words words) {
        this.problems = problems;
        this.words = words;
        this.partners = partners(words);
        this.mismatch = new Mismatch(words);
    }

    private static int[] partners(Words words) {
        int[] partners = new int[words.size()];
        Deque<Integer> open = new ArrayDeque<>();
        for (int at = 0; at < words.size(); at++) {
            partners[at] = at;
            switch (words.type(at)) {
                case InspectionLexer.LBRACE, InspectionLexer.LPAREN, InspectionLexer.LBRACKET -> open.push(at);
                case InspectionLexer.RBRACE, InspectionLexer.RPAREN, InspectionLexer.RBRACKET ->
                    partners[open.pop()] = at;
                default -> {}
            }
        }
        return partners;
    }

    @Override
    public void reportError(Parser parser, RecognitionException e) {
        if (!inErrorRecoveryMode(parser)) {
            beginErrorCondition(parser);
            int at = e.getOffendingToken().getTokenIndex();
            Diagnostic problem = mismatch.describe(parser, e);
            report(at, problem);
            boolean nameless = parser.getContext().getRuleIndex() == InspectionParser.RULE_name
                    && Keywords.ITEMS.contains(words.type(at - 1));
            if (nameless || problem.code() == Code.LP145) {
                problems.loseName();
            }
        }
    }

    /** Leaves the word where it is for the blocks around, save that a clause which read nothing must not stand still. */
    @Override
    public void recover(Parser parser, RecognitionException e) {
        ParserRuleContext context = parser.getContext();
        Token here = parser.getCurrentToken();
        boolean nothingRead = here == context.getStart() && Blocks.isPart(context.getRuleIndex());
        boolean again = here == lastStumble && !stumbledIn.add(parser.getState());
        if (here != lastStumble) {
            lastStumble = here;
            stumbledIn.clear();
            stumbledIn.add(parser.getState());
        }
        if ((nothingRead || again || mismatch.isKeywordForValue(here.getTokenIndex())) && here.getType() != Token.EOF) {
            parser.consume();
        }
    }

    @Override
    public Token recoverInline(Parser parser) {
        Token found = parser.getCurrentToken();
        if (respellInLine(parser)) {
            return parser.consume();
        }
        IntervalSet expected = parser.getExpectedTokens();
        if (parser.getContext().getRuleIndex() == InspectionParser.RULE_name && isKeywordForName(found)) {
            if (!inErrorRecoveryMode(parser)) {
                problems.add(GrammarDiagnostics.reservedWord(Words.span(found), found.getText()));
                // Whatever it was to be, nobody is to be blamed for not knowing it.
                problems.lose(Words.span(found));
            }
            return parser.consume();
        }
        int brace = expected.equals(IntervalSet.of(InspectionLexer.LBRACE)) ? braceOnThisLine(found) : -1;
        if (brace >= 0) {
            reportError(parser, new InputMismatchException(parser));
            problems.lose(Words.span(found).to(words.span(brace - 1)));
            parser.getInputStream().seek(brace);
            return parser.match(InspectionLexer.LBRACE);
        }
        throw new InputMismatchException(parser);
    }

    /** Says what is wrong with a word, unless what is wrong before it in the same clause has most likely brought it there. */
    private void report(int at, Diagnostic problem) {
        int from = at;
        while (words.isOnSameLine(from) && !Keywords.NEVER_INSIDE.contains(words.type(from))) {
            from--;
        }
        if (!problems.hasIn(words.get(from).getStartIndex(), words.get(at).getStartIndex(), DISTURBING)) {
            problems.add(problem);
        }
    }

    private boolean isKeywordForName(Token found) {
        int at = found.getTokenIndex();
        boolean ofALoop = words.type(at) == InspectionLexer.IN
                && words.type(at - 1) == InspectionLexer.FOR
                && words.type(at + 1) != InspectionLexer.IN;
        return Keywords.RESERVED.contains(words.type(at))
                && words.type(at) != InspectionLexer.OTHERWISE
                && words.isOnSameLine(at)
                && !ofALoop
                && !goesOnAsAClause(at);
    }

    /** {@code with ask "…"}: the name is missing, and the word means what it always does. */
    private boolean goesOnAsAClause(int at) {
        return switch (words.type(at)) {
            case InspectionLexer.ASK, InspectionLexer.ADVISE, InspectionLexer.BECAUSE ->
                words.type(at + 1) == InspectionLexer.STRING;
            case InspectionLexer.HAZARD ->
                words.type(at - 1) != InspectionLexer.HAZARD && Keywords.isName(words.type(at + 1));
            default -> false;
        };
    }

    private int braceOnThisLine(Token found) {
        int at = found.getTokenIndex();
        int furthest = at + 20;
        while (at < furthest && words.isOnSameLine(at) && words.type(at) != InspectionLexer.RBRACE) {
            if (words.type(at) == InspectionLexer.LBRACE) {
                return at;
            }
            at++;
        }
        return -1;
    }

    /** Before each part of a block: skips what cannot be one. */
    @Override
    public void sync(Parser parser) {
        ATNState state = parser.getInterpreter().atn.states.get(parser.getState());
        boolean loop = state instanceof StarLoopEntryState || state instanceof StarLoopbackState;
        if (loop && state.ruleIndex == InspectionParser.RULE_typeWords) {
            // A type is words of any number, so the misspelt beginning of the next line would be one more.
            int next = parser.getCurrentToken().getTokenIndex();
            boolean beforeText =
                    words.type(next) == InspectionLexer.NAME && words.type(next + 1) == InspectionLexer.STRING;
            if (!(beforeText && takeFor(next, NearWord.amongFew(words.letters(next), ASK_FOR_TEXT)))
                    && !respell(InspectionParser.RULE_observeClauses, next)
                    && words.beginsWithName(next)) {
                words.get(next).setType(InspectionLexer.UNKNOWN);
            }
            return;
        }
        if (respellInLine(parser) || !loop || !Blocks.isBlock(state.ruleIndex)) {
            return;
        }
        int rule = state.ruleIndex;
        int at = parser.getCurrentToken().getTokenIndex();
        int begun = at;
        boolean skipping = inErrorRecoveryMode(parser);
        if (!skipping && !Blocks.canStand(rule, words, at)) {
            if (respell(rule, at)) {
                return;
            }
            if (rule == InspectionParser.RULE_arms && words.type(at) == InspectionLexer.COMMA) {
                problems.add(ClauseDiagnostics.commaBetweenArms(words.span(at)));
                parser.consume();
                return;
            }
            report(at, mismatch.stray(rule, at));
            beginErrorCondition(parser);
            skipping = true;
            at = partners[at] + 1;
        }
        if (skipping) {
            int until = words.beginsWithName(at) ? InspectionParser.RULE_block : rule;
            while (!Blocks.resumes(until, words, at) && !respell(rule, at)) {
                if (at > begun && words.beginsWithName(at)) {
                    problems.add(mismatch.stray(rule, at));
                }
                at = partners[at] + 1;
            }
            loseUpTo(at, parser.getCurrentToken().getTokenIndex());
            parser.getInputStream().seek(at);
        }
    }

    /** What is skipped is lost, and what stands before it on its line was perhaps not to end there. */
    private void loseUpTo(int end, int start) {
        if (end > start) {
            Span first = words.isOnSameLine(start) ? words.span(start - 1).behind() : words.span(start);
            problems.lose(first.to(words.span(end - 1)));
        }
    }

    /** A word within a line that cannot stand there and is nearly a keyword that can is taken for it. */
    private boolean respellInLine(Parser parser) {
        int at = parser.getCurrentToken().getTokenIndex();
        if (words.type(at) != InspectionLexer.NAME
                || !words.isOnSameLine(at)
                || inErrorRecoveryMode(parser)
                || problems.areMany()) {
            return false;
        }
        IntervalSet expected = parser.getExpectedTokens();
        return !expected.contains(InspectionLexer.NAME)
                && takeFor(at, NearWord.of(words.letters(at), Keywords.written(expected)));
    }

    /** A word at the beginning of a line that is nearly a keyword of this block is taken for it. */
    private boolean respell(int rule, int at) {
        if (words.type(at) != InspectionLexer.NAME || words.isOnSameLine(at) || problems.areMany()) {
            return false;
        }
        return takeFor(at, NearWord.of(words.letters(at), Keywords.written(Blocks.nextKeywords(rule))));
    }

    private boolean takeFor(int at, Optional<String> meant) {
        CommonToken word = words.get(at);
        meant.ifPresent(keyword -> {
            Span span = Words.span(word);
            problems.add(GrammarDiagnostics.misspelt(span, word.getText(), keyword));
            word.setType(Keywords.type(keyword));
        });
        return meant.isPresent();
    }
}
