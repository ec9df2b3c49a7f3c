package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.List;

/** What is said where words come in an order that means nothing. */
final class GrammarDiagnostics {

    private GrammarDiagnostics() {}

    static Diagnostic missing(SourceText source, Span place, String before, List<String> hopes) {
        return Diagnostic.error(
                Code.LP120,
                source,
                place,
                Expectations.either(hopes) + " is missing after `" + shortened(before) + "`");
    }

    static Diagnostic unexpected(SourceText source, Span place, String found, List<String> hopes) {
        String what = found.isEmpty() ? "the end of the text" : "`" + found + "`";
        return Diagnostic.error(
                Code.LP121,
                source,
                place,
                hopes.isEmpty()
                        ? what + " does not belong here"
                        : what + " stands where " + Expectations.either(hopes) + " should");
    }

    static Diagnostic stray(SourceText source, Span place, String found, String block, List<String> keywords) {
        Diagnostic stray =
                Diagnostic.error(Code.LP121, source, place, "`" + found + "` does not belong here, inside " + block);
        return keywords.isEmpty()
                ? stray
                : stray.help("each part of " + block + " begins with one of: " + String.join(", ", keywords));
    }

    static Diagnostic reservedWord(SourceText source, Span place, String word) {
        return Diagnostic.error(
                        Code.LP118, source, place, "`" + word + "` is a word of the language and cannot be a name")
                .help("take another name, such as " + word + "_here");
    }

    static Diagnostic misspelt(SourceText source, Span place, String word, String meant) {
        return Diagnostic.error(Code.LP119, source, place, "there is no `" + word + "` here")
                .help("write `" + meant + "`, if that is what is meant");
    }

    static Diagnostic unitWithoutIn(SourceText source, Span place, String unit) {
        return Diagnostic.error(Code.LP121, source, place, "`" + unit + "` does not belong here")
                .help("to show a value in a unit write `in` between the two: {gap in thou}");
    }

    static Diagnostic declarationInside(SourceText source, Span place, String word, String block) {
        return Diagnostic.error(Code.LP122, source, place, "`" + word + "` cannot stand inside " + block)
                .help("write it before, as a declaration of its own");
    }

    static Diagnostic clauseOutside(SourceText source, Span place, String word, String home) {
        return Diagnostic.error(Code.LP123, source, place, "`" + word + "` stands alone; it is a part of " + home)
                .help("move it into the braces of " + home);
    }

    private static String shortened(String word) {
        return word.length() <= 40 ? word : word.substring(0, 38) + "\u2026";
    }
}
