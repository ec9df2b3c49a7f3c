package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.Locale;

/** What is said about single signs and numbers. */
final class SignDiagnostics {

    private SignDiagnostics() {}

    static Diagnostic unknown(SourceText source, Span sign) {
        int character = source.text().codePointAt(sign.start());
        boolean visible = character > ' ' && !Character.isISOControl(character) && Character.isDefined(character);
        String shown = visible
                ? "`" + Character.toString(character) + "`"
                : String.format(Locale.ROOT, "the invisible character U+%04X", character);
        return Diagnostic.error(Code.LP106, source, sign, shown + " means nothing here")
                .help("take it out, or put it in quotes if it belongs to a text");
    }

    static Diagnostic semicolon(SourceText source, Span sign) {
        return Diagnostic.error(Code.LP109, source, sign, "no semicolon is needed")
                .help("take it out");
    }

    static Diagnostic plusMinus(SourceText source, Span sign) {
        return Diagnostic.error(Code.LP110, source, sign, "an uncertainty cannot be written in a procedure")
                .help("write `within 0.05 mm of x` for a limit; how well a gauge measures is said in the gauge tray");
    }

    static Diagnostic decimalComma(SourceText source, Span number, String meant) {
        return Diagnostic.error(Code.LP111, source, number, "a decimal comma")
                .help("write " + meant + "; between two values write a blank after the comma");
    }

    static Diagnostic noughtMissing(SourceText source, Span number, String meant) {
        return Diagnostic.error(Code.LP112, source, number, "a number begins with a digit")
                .help("write " + meant);
    }

    static Diagnostic stopBehindUnit(SourceText source, Span stop, String unit) {
        return Diagnostic.error(Code.LP113, source, stop, "a unit has no full stop")
                .help("write " + unit);
    }
}
