package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** Mistakes in a procedure's rehearsals. */
public final class RehearsalDiagnostics {

    private RehearsalDiagnostics() {}

    public static Diagnostic titleTwice(Span again, Span first) {
        return Diagnostic.error(Code.LP501, again, "two rehearsals have this title")
                .labelled("again here")
                .alsoAt(first, "first here")
                .help("say in each title what it shows");
    }

    // lacking: what it does not name: engine, gauges, or both
    public static Diagnostic incomplete(Span span, String lacking) {
        return Diagnostic.error(Code.LP502, span, "this rehearsal names no " + lacking)
                .help("begin it with: engine \"cards/….json\"   gauges \"trays/….json\"");
    }

    public static Diagnostic expectsNothing(Span span) {
        return Diagnostic.error(Code.LP503, span, "this rehearsal expects nothing, so it could never fail")
                .help("end it with, for instance: expect release ready");
    }
}
