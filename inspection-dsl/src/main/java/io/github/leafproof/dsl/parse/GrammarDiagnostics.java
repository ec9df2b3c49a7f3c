package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What is said where words come in an order that means nothing. */
final class GrammarDiagnostics {

    private static final Set<String> COMPARE = Set.of(
            "above", "atleast", "atmost", "below", "equal", "equals", "exceeds", "greater", "larger", "less", "more",
            "over", "smaller", "under");
    private static final String HOW_TO_COMPARE =
            "values are compared with `at least`, `at most`, `between \u2026 and \u2026`, `within \u2026 of \u2026` or `is`";

    private GrammarDiagnostics() {}

    static Diagnostic missing(Span place, String before, List<String> hopes) {
        return Diagnostic.error(
                Code.LP120, place, Expectations.either(hopes) + " is missing after `" + shortened(before) + "`");
    }

    static Diagnostic unexpected(Span place, String found, List<String> hopes) {
        String what = found.isEmpty() ? "the end of the text" : "`" + found + "`";
        Diagnostic unexpected = Diagnostic.error(
                Code.LP121,
                place,
                hopes.isEmpty()
                        ? what + " does not belong here"
                        : what + " stands where " + Expectations.either(hopes) + " should");
        return isCompareWord(found) ? unexpected.help(HOW_TO_COMPARE) : unexpected;
    }

    static Diagnostic isTooMuch(Span is, boolean negated, String comparison) {
        return negated
                ? Diagnostic.error(Code.LP140, is, "`is not` cannot stand before `" + comparison + "`")
                        .help("write `not` before the whole comparison: not x " + comparison + " \u2026")
                : Diagnostic.error(Code.LP140, is, "no `is` is needed before `" + comparison + "`")
                        .help("take it out");
    }

    static Diagnostic unjoined(Span place, String found, String before) {
        Diagnostic unjoined =
                Diagnostic.error(Code.LP121, place, "nothing joins `" + found + "` to what stands before it");
        return isCompareWord(found) || isCompareWord(before) ? unjoined.help(HOW_TO_COMPARE) : unjoined;
    }

    private static boolean isCompareWord(String word) {
        return COMPARE.contains(word.toLowerCase(Locale.ROOT));
    }

    static Diagnostic stray(Span place, String found, String block, List<String> keywords) {
        Diagnostic stray = Diagnostic.error(Code.LP121, place, "`" + found + "` does not belong here");
        if (keywords.isEmpty()) {
            return stray;
        }
        String begins = keywords.size() > 8 ? "a word such as observe, check or let" : Expectations.either(keywords);
        return stray.help("what stands in " + block + " begins with " + begins);
    }

    static Diagnostic reservedWord(Span place, String word) {
        return Diagnostic.error(Code.LP118, place, "`" + word + "` is a word of the language and cannot be a name")
                .help("take another name, such as " + word + "_here");
    }

    static Diagnostic misspelt(Span place, String word, String meant) {
        return Diagnostic.error(Code.LP119, place, "there is no `" + word + "` here")
                .help("write `" + meant + "`, if that is what is meant");
    }

    static Diagnostic unitWithoutIn(Span place, String unit) {
        return Diagnostic.error(Code.LP121, place, "`" + unit + "` does not belong here")
                .help("to show a value in a unit write `in` between the two: {gap in thou}");
    }

    static Diagnostic declarationInside(Span place, String word, String block) {
        return Diagnostic.error(Code.LP122, place, "`" + word + "` cannot stand inside " + block)
                .help("write it before, as a declaration of its own");
    }

    static Diagnostic clauseOutside(Span place, String word, String home) {
        return Diagnostic.error(Code.LP123, place, "`" + word + "` stands alone; it is a part of " + home)
                .help("move it into the braces of " + home);
    }

    private static String shortened(String word) {
        return word.length() <= 40 ? word : word.substring(0, 38) + "\u2026";
    }
}
