package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;

/** What is said about texts that are larger or deeper than anybody means. */
final class BoundDiagnostics {

    private BoundDiagnostics() {}

    static Diagnostic tooDeep(Span place) {
        return Diagnostic.error(Code.LP702, place, "this is nested too deep")
                .help("name a part of it with `let` and use the name; brackets may nest " + ProcedureParser.DEEPEST
                        + " deep");
    }

    static Diagnostic textsTooDeep(Span hole) {
        return Diagnostic.error(Code.LP702, hole, "texts are nested too deep")
                .help("name a part of it with `let` and use the name");
    }

    static Diagnostic tooMany(Span last, int more) {
        return Diagnostic.error(
                        Code.LP704,
                        last.behind(),
                        more == 1 ? "one more problem is not listed" : more + " more problems are not listed")
                .help("mend those above first");
    }

    static Diagnostic tooLarge(SourceText source, int mebibytes) {
        return Diagnostic.error(Code.LP701, source.span(0, 0), "the file is larger than " + mebibytes + " MiB")
                .help("a procedure is text of a few pages; is this the right file?");
    }

    static Diagnostic chainTooLong(Span chain, int links, int most) {
        return Diagnostic.error(
                        Code.LP703, chain, "this has " + links + " operators in a row; at most " + most + " are read")
                .help("split it with `let`");
    }
}
