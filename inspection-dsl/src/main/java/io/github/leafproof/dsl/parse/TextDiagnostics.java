package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Text;

/** What is said about quoted texts. */
final class TextDiagnostics {

    private TextDiagnostics() {}

    static Diagnostic quoteMissing(Span text) {
        return Diagnostic.error(Code.LP107, text, "the closing quote is missing")
                .help("a text ends on the line where it begins; write \" where it ends");
    }

    static Diagnostic curlyQuotes(Span text) {
        return Diagnostic.error(Code.LP108, text, "these quotes are not the straight double ones")
                .help("write \" before and after a text");
    }

    static Diagnostic quotesMissing(Span text) {
        String letters = text.source().of(text);
        String shown = letters.length() > 60 ? letters.substring(0, 58) + "\u2026" : letters;
        return Diagnostic.error(Code.LP143, text, "a text stands in quotes").help("write \"" + shown + "\"");
    }

    static Diagnostic holeNotClosed(Span brace) {
        return Diagnostic.error(Code.LP130, brace, "this `{` is never closed within its text")
                .help("write } behind the value, or \\{ where a brace is meant to be printed");
    }

    static Diagnostic braceInText(Span brace) {
        return Diagnostic.error(Code.LP131, brace, "this `}` closes nothing")
                .help("write \\} where a brace is meant to be printed");
    }

    static Diagnostic unknownEscape(Span backslash) {
        return Diagnostic.error(Code.LP132, backslash, "a backslash stands before \", \\, { or } only")
                .help("write \\\\ where a backslash is meant to be printed");
    }

    static Diagnostic emptyHole(Span hole) {
        return Diagnostic.error(Code.LP133, hole, "there is no value between these braces")
                .help("write the value to be shown, such as {gap}, or \\{\\} where braces are meant to be printed");
    }

    static Diagnostic tooManyDigits(Span number) {
        return Diagnostic.error(Code.LP134, number, "at most " + Text.MOST_DIGITS + " digits can be shown");
    }

    static Diagnostic holeInOption(Span option) {
        return Diagnostic.error(Code.LP135, option, "an option is a fixed word and cannot hold a value")
                .help("write \\{ and \\} where braces belong to the option");
    }
}
