package io.github.leafproof.dsl.message;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;

/** Mistakes with repeated readings. */
public final class SeriesDiagnostics {

    private SeriesDiagnostics() {}

    public static Diagnostic ofNoQuantity(Span of, String words) {
        return Diagnostic.error(Code.LP232, of, "no series is made of " + words)
                .labelled(words)
                .help("repeated readings are of a quantity, a number or a count, as in: series of rotational speed");
    }

    public static Diagnostic isNoNumber(Span span, String words, String written) {
        return Diagnostic.error(Code.LP233, span, "this is a " + words + ", and a number or a quantity is needed here")
                .labelled(words)
                .help("take its mean(" + written + "), its spread(" + written + "), its slope(" + written
                        + ") from reading to reading, or their count(" + written + ")");
    }

    public static Diagnostic needsSeries(Span span, String function, String words) {
        return Diagnostic.error(
                        Code.LP234,
                        span,
                        function + " is taken of repeated readings, and this is " + TypeDiagnostics.a(words))
                .labelled(words)
                .help("give it what is observed as a series, as in: observe rpm : series of rotational speed");
    }
}
