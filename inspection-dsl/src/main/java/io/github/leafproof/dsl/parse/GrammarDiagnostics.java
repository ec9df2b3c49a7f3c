package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Spelling;
import java.util.List;
import java.util.Optional;

/** What is said where words come in an order that means nothing. */
final class GrammarDiagnostics {

    private GrammarDiagnostics() {}

    static Diagnostic missing(Span place, String before, List<String> hopes) {
        return Diagnostic.error(
                        Code.LP120, place, Expectations.either(hopes) + " is missing after `" + shortened(before) + "`")
                .help(
                        hopes.equals(List.of("`else`"))
                                ? "say what it is in the other case: if \u2026 then \u2026 else \u2026"
                                : "write it here");
    }

    static Diagnostic unexpected(Span place, String found, List<String> hopes) {
        String what = found.isEmpty() ? "the end of the text" : "`" + found + "`";
        List<String> meant = found.equals("if") && hopes.contains("`when`") ? List.of("`when`") : hopes;
        return Diagnostic.error(
                        Code.LP121,
                        place,
                        meant.isEmpty()
                                ? what + " does not belong here"
                                : what + " stands where " + Expectations.either(meant) + " should")
                .help(instead(found, meant));
    }

    private static String instead(String found, List<String> hopes) {
        boolean colon = hopes.equals(List.of("`:`"));
        if (found.equals("(")) {
            return colon
                    ? "an index stands in square brackets: lash[valve]"
                    : "take the parentheses out, if they are not part of a value";
        }
        if (found.equals("=") && !hopes.contains("a name")) {
            return "take it out";
        }
        if (hopes.isEmpty()) {
            return "take it out, or look for what is missing before it";
        }
        String write = "write " + Expectations.either(hopes);
        if (hopes.size() > 1 || !hopes.get(0).startsWith("`")) {
            return write + " before it, or instead of it";
        }
        boolean isWord = !found.isEmpty() && Character.isLetterOrDigit(found.codePointAt(0));
        boolean isOther = found.equals("to") || found.equals("if");
        boolean goesOn = isWord || found.isEmpty() || ")]},\"".indexOf(found.charAt(0)) >= 0;
        return write + (goesOn && !isOther ? " before it" : " instead");
    }

    static Diagnostic noKindOfGauge(Span place, String found) {
        Diagnostic none = Diagnostic.error(Code.LP121, place, "`" + shortened(found) + "` is no kind of gauge");
        List<String> kinds = List.of("leaf set", "pin set", "reading of", "counter");
        Optional<String> kind = kinds.stream()
                .filter(each -> each.regionMatches(true, 0, found, 0, 3) || isNear(found, each))
                .findFirst();
        boolean quantity = Dimension.names().stream().anyMatch(each -> (each + " ").startsWith(found + " "));
        return none.help(
                kind.isPresent()
                        ? "write " + kind.get() + (kind.get().endsWith("of") ? " and what it reads" : "")
                        : quantity
                                ? "write `reading of` before it: an instrument that is read"
                                : "a gauge is a leaf set, a pin set, a counter, or the reading of a quantity, such as: reading"
                                        + " of temperature");
    }

    private static boolean isNear(String found, String kind) {
        return Spelling.nearest(found, List.of(kind.substring(0, (kind + " ").indexOf(' ')), kind))
                .isPresent();
    }

    static Diagnostic otherwiseCompared(Span words, CompareWord meant) {
        return Diagnostic.error(
                        Code.LP119, words, "there is no `" + words.source().of(words) + "` here")
                .help(meant.remedy());
    }

    static Diagnostic otherwiseFirst(Span both, String result) {
        return Diagnostic.error(Code.LP144, both, "`otherwise` stands before its result")
                .help("write: " + result + " otherwise");
    }

    static Diagnostic isTooMuch(Span is, boolean negated, String comparison) {
        return negated
                ? Diagnostic.error(Code.LP140, is, "`is not` cannot stand before `" + comparison + "`")
                        .help("write `not` before the whole comparison: not x " + comparison + " \u2026")
                : Diagnostic.error(Code.LP140, is, "no `is` is needed before `" + comparison + "`")
                        .help("take it out");
    }

    static Diagnostic unjoined(Span place, String found, boolean inExpression) {
        if (found.equals(".")) {
            return Diagnostic.error(Code.LP121, place, "no full stop stands here")
                    .help("take it out");
        }
        return inExpression
                ? Diagnostic.error(Code.LP121, place, "nothing joins `" + found + "` to what stands before it")
                        .help("take it out, or write between the two what joins them, such as `and` or `+`")
                : Diagnostic.error(Code.LP121, place, "`" + found + "` does not belong here")
                        .help("take it out, or look for what is missing before it");
    }

    static Diagnostic stray(Span place, String found, String block, List<String> keywords) {
        Diagnostic stray = Diagnostic.error(Code.LP121, place, "`" + found + "` does not belong here");
        if (keywords.isEmpty()) {
            return stray.help("take it out, or look for what is missing before it");
        }
        String begins = keywords.size() > 8 ? "a word such as observe, check or let" : Expectations.either(keywords);
        return stray.help("what stands in " + block + " begins with " + begins);
    }

    static Diagnostic firstWordMissing(Span name, String word, boolean typed) {
        return Diagnostic.error(Code.LP146, name, "this line does not say what `" + word + "` is to be")
                .help(
                        typed
                                ? "begin it with observe for what is entered, or gauge for what it is measured with:"
                                        + " observe " + word + " : \u2026"
                                : "begin it with let: let " + word + " = \u2026");
    }

    static Diagnostic adviceWithoutOutcome(Span advise) {
        return Diagnostic.error(Code.LP144, advise, "`advise` stands without the outcome it is for")
                .help("begin with the outcome: if high advise \"Screw it in\", or if fails, if low, if open");
    }

    static Diagnostic adviceBeforeOutcome(Span all, String outcome, String advice) {
        return Diagnostic.error(Code.LP144, all, "the advice stands before the outcome it is for")
                .help("write: if " + outcome + " advise " + shortened(advice));
    }

    static Diagnostic unitBeforeNumber(Span both, String unit, String number) {
        return Diagnostic.error(Code.LP144, both, "the unit stands before its number")
                .help("write " + number + " " + unit);
    }

    static Diagnostic commaBetweenConditions(Span comma) {
        return Diagnostic.error(Code.LP121, comma, "a comma joins no conditions")
                .help("write `and` instead of it, or begin a line of its own with `require`");
    }

    static Diagnostic comparedWithoutValue(Span place, String comparison, String joined) {
        return Diagnostic.error(
                        Code.LP120,
                        place,
                        "what is compared is missing between `" + joined + "` and `" + comparison + "`")
                .help("say it again, as in: x at least 1 mm and x at most 3 mm; or write: x between 1 mm and 3 mm");
    }

    static Diagnostic reservedWord(Span place, String word) {
        return Diagnostic.error(Code.LP118, place, "`" + word + "` is a word of the language and cannot be a name")
                .help("take another name, such as " + word + "_here");
    }

    static Diagnostic misspelt(Span place, String word, String meant) {
        return Diagnostic.error(Code.LP119, place, "there is no `" + word + "` here")
                .help(
                        Spelling.differsOnlyInCase(word, meant)
                                ? "write `" + meant + "`: the words of the language have no capitals"
                                : "write `" + meant + "`, if that is what is meant");
    }

    static Diagnostic unitWithoutIn(Span place, String unit, String example) {
        return Diagnostic.error(Code.LP121, place, "`" + unit + "` does not belong here")
                .help("to show a value in a unit write `in` between the two: " + example);
    }

    static Diagnostic declarationInside(Span place, String word, String block) {
        return Diagnostic.error(Code.LP122, place, "`" + word + "` cannot stand inside " + block)
                .help("write it before, as a declaration of its own");
    }

    static Diagnostic clauseOutside(Span place, String word, String home) {
        return Diagnostic.error(Code.LP123, place, "`" + word + "` stands alone; it is a part of " + home)
                .help(
                        home.equals("an observation")
                                ? "write it behind the observation that it belongs to"
                                : "move it into the braces of " + home);
    }

    static String shortened(String word) {
        return word.length() <= 40 ? word : word.substring(0, 38) + "\u2026";
    }
}
