package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** What is said about brackets without a partner. */
final class BracketDiagnostics {

    private BracketDiagnostics() {}

    static Diagnostic neverClosed(Span open, Span place, String partner) {
        return Diagnostic.error(Code.LP114, place, "`" + partner + "` is missing")
                .labelled("here at the latest")
                .alsoAt(open, "opened here")
                .help("write `" + partner + "` where what is opened ends");
    }

    static Diagnostic blockNeverClosed(Span open, Span place, boolean atEnd) {
        int line = open.source().at(open.start()).line();
        return Diagnostic.error(
                        Code.LP114, place, atEnd ? "a `}` is missing at the end" : "a `}` is missing before this")
                .alsoAt(open, "opened here")
                .help("write `}` on a line of its own; it ends the block that line " + line + " opens");
    }

    static Diagnostic neverOpened(Span place, String before) {
        return Diagnostic.error(
                        Code.LP120, place, "`{` is missing after `" + GrammarDiagnostics.shortened(before) + "`")
                .help("write `{` here, and `}` where what it opens ends");
    }

    static Diagnostic opensNothing(Span open, String sign, int part) {
        boolean observation =
                part == InspectionLexer.OBSERVE || part == InspectionLexer.WITH || part == InspectionLexer.ASK;
        return Diagnostic.error(
                        Code.LP142,
                        open,
                        observation ? "an observation has no braces" : "this `" + sign + "` opens nothing")
                .help(
                        observation
                                ? "take them out: what belongs to it follows it, up to the next declaration"
                                : "take it out, and the bracket that closes it");
    }

    static Diagnostic closesNothing(Span close, String sign) {
        return Diagnostic.error(Code.LP115, close, "this `" + sign + "` closes nothing")
                .help("take it out, or find the bracket that is missing before it");
    }

    static Diagnostic wrongPartner(Span open, Span close, String partner) {
        return Diagnostic.error(Code.LP116, close, "the wrong bracket closes here")
                .labelled("should be `" + partner + "`")
                .alsoAt(open, "opened here");
    }
}
