package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** What is said about brackets without a partner. */
final class BracketDiagnostics {

    private BracketDiagnostics() {}

    static Diagnostic neverClosed(Span open, String sign, Span noticed, String partner) {
        return Diagnostic.error(Code.LP114, open, "this `" + sign + "` is never closed")
                .labelled("opened here")
                .alsoAt(noticed, "`" + partner + "` is missed here")
                .help("write `" + partner + "` where what it opened ends");
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
