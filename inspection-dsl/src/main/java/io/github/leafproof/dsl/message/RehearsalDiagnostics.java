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

    public static Diagnostic otherEntry(Span entered, String wanted) {
        return Diagnostic.error(
                        Code.LP505, entered, "what is observed here is of the kind " + wanted + ", and this is not")
                .help("enter a value of that kind, or cannot \"…\" with the reason why it could not be observed");
    }

    public static Diagnostic noQuantity(Span entered, String problem, String remedy) {
        return Diagnostic.error(Code.LP505, entered, problem).help(remedy);
    }

    public static Diagnostic contradictsItself(Span again, String of, Span first) {
        return Diagnostic.error(Code.LP506, again, "the rehearsal expects two different things of " + of)
                .labelled("and this")
                .alsoAt(first, "expects this")
                .help("one case has one outcome; make two rehearsals of it, or keep the right one");
    }

    public static Diagnostic neverComes(Span outcome, String check, String word) {
        return Diagnostic.warning(Code.LP507, outcome, check + " never comes out " + word + ", whatever is entered")
                .help("expect what it can come to, or look at the check once more");
    }
}
