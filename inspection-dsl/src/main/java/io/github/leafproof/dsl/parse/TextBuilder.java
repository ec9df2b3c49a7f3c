package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Text;
import io.github.leafproof.inspection.quantity.Letters;
import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;

/** Takes a quoted text apart: letters, escapes, and holes, whose expressions are read as if they stood alone. */
final class TextBuilder {

    private final Problems problems;
    private final int depth;

    TextBuilder(Problems problems, int depth) {
        this.problems = problems;
        this.depth = depth;
    }

    Text text(Token token) {
        Span span = Words.span(token);
        if (token.getType() == InspectionLexer.UNQUOTED) {
            return new Text(List.of(new Text.Plain(token.getText())), span);
        }
        boolean closed = token.getType() == InspectionLexer.STRING;
        List<Text.Piece> pieces = new ArrayList<>();
        StringBuilder letters = new StringBuilder();
        int end = closed ? span.end() - 1 : span.end();
        int at = span.start() + 1;
        while (at < end) {
            int plain = plainEnd(at, end);
            letters.append(source().text(), at, plain);
            at = plain == end ? end : piece(plain, end, letters, pieces);
        }
        flush(letters, pieces);
        return new Text(pieces, span);
    }

    /** Where the letters end that mean nothing but themselves, and that anybody can show. */
    private int plainEnd(int start, int end) {
        String text = source().text();
        int at = start;
        while (at < end && text.charAt(at) >= ' ' && text.charAt(at) <= '~' && "\\{}".indexOf(text.charAt(at)) < 0) {
            at++;
        }
        return at;
    }

    /** Reads one letter, escape or hole, and gives the place behind it. */
    private int piece(int at, int end, StringBuilder letters, List<Text.Piece> pieces) {
        char here = source().text().charAt(at);
        if (here == '\\') {
            return escape(at, end, letters);
        }
        if (here == '{') {
            int close = TextScan.holeEnd(source().text(), at + 1, end);
            if (close >= 0) {
                flush(letters, pieces);
                hole(at, close, pieces);
                return close;
            }
            problems.add(TextDiagnostics.holeNotClosed(source().span(at, at + 1)));
        } else if (here == '}') {
            problems.add(TextDiagnostics.braceInText(source().span(at, at + 1)));
        }
        return letter(at, letters);
    }

    private int letter(int at, StringBuilder letters) {
        int letter = source().text().codePointAt(at);
        int next = at + Character.charCount(letter);
        boolean first = source().text().codePointBefore(at) != letter;
        if (letter != '\t' && !Letters.isShowable(letter) && first) {
            problems.add(SignDiagnostics.inText(source().span(at, next)));
        }
        letters.appendCodePoint(letter);
        return next;
    }

    private int escape(int at, int end, StringBuilder letters) {
        char escaped = at + 1 < end ? source().text().charAt(at + 1) : ' ';
        if ("\"\\{}".indexOf(escaped) < 0) {
            problems.add(TextDiagnostics.unknownEscape(source().span(at, at + 1)));
            letters.append('\\');
            return at + 1;
        }
        letters.append(escaped);
        return at + 2;
    }

    private void hole(int open, int close, List<Text.Piece> pieces) {
        Span span = source().span(open, close);
        if (source().text().substring(open + 1, close - 1).isBlank()) {
            problems.add(TextDiagnostics.emptyHole(span));
        } else if (depth >= TextScan.DEEPEST) {
            problems.add(BoundDiagnostics.textsTooDeep(span));
        } else {
            ProcedureParser.hole(problems, span, depth + 1).ifPresent(pieces::add);
        }
    }

    private static void flush(StringBuilder letters, List<Text.Piece> pieces) {
        if (!letters.isEmpty()) {
            pieces.add(new Text.Plain(letters.toString()));
            letters.setLength(0);
        }
    }

    private SourceText source() {
        return problems.source();
    }
}
