package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** Mistakes with what a value is said to be known to. */
public final class UncertaintyDiagnostics {

    private UncertaintyDiagnostics() {}

    public static Diagnostic unlike(Span value, String valueWords, Span uncertainty, String words) {
        String help = switch (valueWords) {
            case "number" -> "is the unit of the value missing?";
            case "temperature" -> "write how far it may be off in K";
            default -> "write it in a unit of " + valueWords + ", or in per cent of the value";
        };
        return Diagnostic.error(
                        Code.LP227,
                        uncertainty,
                        "an uncertainty given as " + TypeDiagnostics.a(words) + " says nothing about "
                                + TypeDiagnostics.a(valueWords))
                .labelled(words)
                .alsoAt(value, valueWords)
                .help(help);
    }

    public static Diagnostic notAboveNought(Span uncertainty) {
        return Diagnostic.error(Code.LP228, uncertainty, "an uncertainty is above zero")
                .help(
                        "give the amount alone, without a sign; what is taken as exact is written without an uncertainty");
    }

    public static Diagnostic coverageMissing(Span uncertainty) {
        return Diagnostic.error(Code.LP229, uncertainty.behind(), "the coverage factor is missing")
                .help("a certificate states it with U, mostly as k 2: write (U …, k 2); a standard uncertainty is"
                        + " written (u …)");
    }

    public static Diagnostic coverageTooMany(Span coverage) {
        return Diagnostic.error(Code.LP229, coverage, "only an expanded uncertainty has a coverage factor")
                .help("write a large U if the uncertainty is an expanded one; otherwise take this out");
    }

    public static Diagnostic badCoverage(Span coverage) {
        return Diagnostic.error(Code.LP229, coverage, "a coverage factor is a plain number above zero")
                .help("write it as the certificate states it, mostly k 2");
    }

    public static Diagnostic counted(Span sign, Span count) {
        return Diagnostic.error(Code.LP230, sign, "what is counted is known exactly")
                .alsoAt(count, "count")
                .help(
                        "take the uncertainty out; what is measured, and only given in whole numbers, is a number and no count");
    }
}
