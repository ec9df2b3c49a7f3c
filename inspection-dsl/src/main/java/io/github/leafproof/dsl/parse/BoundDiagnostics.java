package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;

/** What is said about texts that are larger or deeper than anybody means. */
final class BoundDiagnostics {

    private BoundDiagnostics() {}

    static Diagnostic tooDeep(SourceText source, Span place) {
        return Diagnostic.error(Code.LP702, source, place, "this is nested too deep")
                .help("name a part of it with `let` and use the name; brackets may nest 200 deep");
    }

    static Diagnostic textsTooDeep(SourceText source, Span hole) {
        return Diagnostic.error(Code.LP702, source, hole, "texts are nested too deep")
                .help("name a part of it with `let` and use the name");
    }

    static Diagnostic tooMany(SourceText source, Span last, int more) {
        return Diagnostic.error(
                        Code.LP704,
                        source,
                        new Span(last.end(), last.end()),
                        more == 1 ? "one more problem is not listed" : more + " more problems are not listed")
                .help("mend those above first");
    }

    static Diagnostic tooLarge(SourceText source, int mebibytes) {
        return Diagnostic.error(Code.LP701, source, new Span(0, 0), "the file is larger than " + mebibytes + " MiB")
                .help("a procedure is text of a few pages; is this the right file?");
    }

    static Diagnostic chainTooLong(SourceText source, Span chain, int links, int most) {
        return Diagnostic.error(
                        Code.LP703,
                        source,
                        chain,
                        "this has " + links + " operators in a row; at most " + most + " are read")
                .help("split it with `let`");
    }
}
