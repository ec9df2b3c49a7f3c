package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** Mistakes with days of the calendar. */
public final class DateDiagnostics {

    private DateDiagnostics() {}

    public static Diagnostic notInTheCalendar(Span span, String written) {
        return Diagnostic.error(Code.LP235, span, written + " is no day of the calendar")
                .help(
                        "write year, month and day, such as 2026-03-04 for the fourth of March; a difference of numbers is"
                                + " written with blanks");
    }

    public static Diagnostic noBefore(Span span, String words) {
        return Diagnostic.error(
                        Code.LP236,
                        span,
                        "only days are before and after each other, and this is " + TypeDiagnostics.a(words))
                .labelled(words)
                .help("for sizes write: at least, at most, between … and …");
    }

    public static Diagnostic needsDate(Span span, String words) {
        return Diagnostic.error(
                        Code.LP236, span, "a day is compared with a day, and this is " + TypeDiagnostics.a(words))
                .labelled(words)
                .help(
                        "write a date such as 2026-03-04; a time is compared with the time between two days: due - made at"
                                + " most 30 d");
    }

    public static Diagnostic noArithmetic(Span sign, String word, Span day, Span other, String words) {
        return Diagnostic.error(
                        Code.LP237, sign, "a date and " + TypeDiagnostics.a(words) + " cannot be joined by " + word)
                .alsoAt(day, "date")
                .alsoAt(other, words)
                .help("a date less a date is a time, and a date plus or less a time, such as 30 d, is a date");
    }
}
