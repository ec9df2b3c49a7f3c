package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/** What the real lexer and parser take each stretch of a text for, as the beginning of a TextMate scope. */
final class WordKinds {

    static final IntervalSet CONTROL = new IntervalSet(
            InspectionLexer.IF,
            InspectionLexer.THEN,
            InspectionLexer.ELSE,
            InspectionLexer.CHOOSE,
            InspectionLexer.OTHERWISE);
    static final IntervalSet CONSTANTS = new IntervalSet(InspectionLexer.YES, InspectionLexer.NO);

    private final SourceText source;
    private final Problems problems;
    private final List<Kind> kinds = new ArrayList<>();

    private WordKinds(SourceText source) {
        this.source = source;
        this.problems = new Problems(source);
    }

    /** A stretch of the text, and what an editor's scope for it begins with. */
    record Kind(int start, int end, String scope) {}

    static List<Kind> of(SourceText source) {
        WordKinds reading = new WordKinds(source);
        reading.comments();
        reading.read(0, source.text().length(), false);
        return reading.kinds;
    }

    private void comments() {
        InspectionLexer lexer =
                new InspectionLexer(new CharacterWindow(source, 0, source.text().length()));
        lexer.getAllTokens().stream()
                .filter(token -> token.getType() == InspectionLexer.COMMENT)
                .forEach(token -> {
                    add(token.getStartIndex(), token.getStartIndex() + 2, "punctuation.definition.comment.");
                    add(token.getStartIndex() + 2, token.getStopIndex() + 1, "comment.line.");
                });
    }

    private void read(int start, int end, boolean isHole) {
        Words raw = WordReading.read(problems, start, end);
        Words words = Brackets.pair(problems, 200, UnitWords.join(problems, Numerals.join(problems, raw)));
        InspectionParser parser = new InspectionParser(new CommonTokenStream(new ListTokenSource(words.list())));
        parser.allowNesting(200);
        ParseTree tree = isHole ? parser.hole() : parser.file();
        terminals(tree);
    }

    private void terminals(ParseTree tree) {
        if (tree instanceof TerminalNode node) {
            terminal(node);
        }
        for (int i = 0; i < tree.getChildCount(); i++) {
            terminals(tree.getChild(i));
        }
    }

    private void terminal(TerminalNode node) {
        CommonToken token = (CommonToken) node.getSymbol();
        if (token.getType() == InspectionLexer.STRING) {
            text(token.getStartIndex(), token.getStopIndex() + 1);
        } else if (token.getType() != Token.EOF) {
            add(token.getStartIndex(), token.getStopIndex() + 1, scope(token.getType(), node.getParent()));
        }
    }

    private static String scope(int type, ParseTree parent) {
        boolean isWord = Keywords.isName(type) || Keywords.RESERVED.contains(type);
        boolean ofType = parent instanceof InspectionParser.TypeContext
                || parent instanceof InspectionParser.TypeWordsContext
                || parent instanceof InspectionParser.GaugeKindContext;
        if (ofType && (isWord || type == InspectionLexer.DIVIDED_BY)) {
            return "support.type.";
        }
        if (Keywords.isName(type)) {
            boolean isName =
                    parent instanceof InspectionParser.NameContext || parent instanceof InspectionParser.WordContext;
            return isName ? NAME : "keyword.";
        }
        return isWord ? reserved(type) : sign(type);
    }

    /** Names are coloured by what they stand for, as far as an editor can tell. */
    static final String NAME = "name";

    private static String reserved(int type) {
        if (CONTROL.contains(type)) {
            return "keyword.control.";
        } else if (CONSTANTS.contains(type)) {
            return "constant.language.";
        } else if (type == InspectionLexer.ENGINE) {
            return "variable.language.";
        } else if (Keywords.ITEMS.contains(type)) {
            return "keyword.other.declaration.";
        } else if (Keywords.NEVER_INSIDE.contains(type)) {
            return "keyword.other.clause.";
        }
        return "keyword.";
    }

    private static String sign(int type) {
        return switch (type) {
            case InspectionLexer.NUMBER, InspectionLexer.DATE -> "constant.numeric.";
            case InspectionLexer.UNIT -> "keyword.other.unit.";
            case InspectionLexer.LBRACE,
                    InspectionLexer.RBRACE,
                    InspectionLexer.LPAREN,
                    InspectionLexer.RPAREN,
                    InspectionLexer.LBRACKET,
                    InspectionLexer.RBRACKET,
                    InspectionLexer.COLON,
                    InspectionLexer.COMMA,
                    InspectionLexer.ARGUMENT_COMMA,
                    InspectionLexer.FULL_STOP -> "punctuation.";
            default -> "keyword.operator.";
        };
    }

    private void text(int start, int end) {
        add(start, start + 1, "punctuation.definition.string.");
        add(end - 1, end, "punctuation.definition.string.");
        String letters = source.text();
        int at = start + 1;
        while (at < end - 1) {
            if (letters.charAt(at) == '\\') {
                add(at, at + 2, "constant.character.escape.");
                at += 2;
            } else if (letters.charAt(at) == '{') {
                int close = TextScan.holeEnd(letters, at + 1, end - 1);
                add(at, at + 1, "punctuation.section.embedded.");
                add(close - 1, close, "punctuation.section.embedded.");
                read(at + 1, close - 1, true);
                at = close;
            } else {
                add(at, at + 1, "string.quoted.");
                at++;
            }
        }
    }

    private void add(int start, int end, String scope) {
        kinds.add(new Kind(start, end, scope));
    }
}
