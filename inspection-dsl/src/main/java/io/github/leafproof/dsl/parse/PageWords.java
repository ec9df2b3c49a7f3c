package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.Token;
import org.jspecify.annotations.Nullable;

/** Hands out the words of a page one after the other, each with the comments that it carries. */
final class PageWords {

    private static final Pattern AROUND_A_DOT = Pattern.compile("[\\s\\h]*([\\u00B7\\u22C5])[\\s\\h]*");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\h]+");

    private final String text;
    private final List<Token> comments;
    private int nextComment;
    /** Behind the last word or comment that was handed out. */
    private int end;

    private PageWords(String text, List<Token> comments) {
        this.text = text;
        this.comments = comments;
    }

    static PageWords of(SourceText source) {
        String text = source.text();
        InspectionLexer lexer = new InspectionLexer(new CharacterWindow(source, 0, text.length()));
        List<Token> comments = new ArrayList<>();
        for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken()) {
            if (token.getChannel() == InspectionLexer.COMMENTS) {
                comments.add(token);
            }
        }
        return new PageWords(text, comments);
    }

    Passage.Word next(Token token, boolean leansBack, boolean leansOn) {
        List<Passage.Comment> above = new ArrayList<>();
        while (nextComment < comments.size() && start() < token.getStartIndex()) {
            boolean afterBlankLine = isBlankLineUpTo(start());
            above.add(new Passage.Comment(letters(), afterBlankLine));
        }
        boolean afterBlankLine = isBlankLineUpTo(token.getStartIndex());
        end = Math.max(token.getStartIndex(), token.getStopIndex() + 1);
        return new Passage.Word(
                InspectionLexer.VOCABULARY.getSymbolicName(token.getType()),
                letters(token),
                leansBack,
                leansOn,
                above,
                afterBlankLine,
                behind());
    }

    private int start() {
        return comments.get(nextComment).getStartIndex();
    }

    private String letters() {
        Token comment = comments.get(nextComment++);
        end = comment.getStopIndex() + 1;
        return comment.getText().stripTrailing();
    }

    /** The comment that ends the line of the word just read. */
    private @Nullable String behind() {
        int at = end;
        while (at < text.length() && isBlank(text.charAt(at)) && !TextScan.isLineEnd(text.charAt(at))) {
            at++;
        }
        return nextComment < comments.size() && start() == at ? letters() : null;
    }

    private static boolean isBlank(char letter) {
        return Character.isWhitespace(letter) || Character.isSpaceChar(letter);
    }

    private boolean isBlankLineUpTo(int start) {
        int lineEnds = 0;
        for (int at = end; at < start; at++) {
            boolean halfOfOne = text.charAt(at) == '\r' && at + 1 < start && text.charAt(at + 1) == '\n';
            lineEnds += TextScan.isLineEnd(text.charAt(at)) && !halfOfOne ? 1 : 0;
        }
        return lineEnds > 1;
    }

    /** As written; within a unit that is joined from several words the blanks are nobody's choice. */
    private String letters(Token token) {
        if (token.getType() == Token.EOF) {
            return "";
        }
        String written = text.substring(token.getStartIndex(), token.getStopIndex() + 1);
        return token.getType() == InspectionLexer.UNIT
                ? BLANKS.matcher(AROUND_A_DOT.matcher(written).replaceAll("$1")).replaceAll(" ")
                : written;
    }
}
