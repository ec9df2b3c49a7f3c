package io.github.leafproof.dsl.parse;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;

/** Joins the groups of a long number, {@code 9 200}, and takes a decimal comma for what it is meant to be. */
final class Numerals {

    private final Problems problems;
    private final Words words;
    private final List<CommonToken> result;
    private int at;

    private Numerals(Problems problems, Words words) {
        this.problems = problems;
        this.words = words;
        this.result = words.room();
    }

    static Words join(Problems problems, Words words) {
        return new Numerals(problems, words).join();
    }

    private Words join() {
        while (at < words.size()) {
            if (isNumber(at)) {
                result.add(number());
            } else {
                result.add(words.get(at++));
            }
        }
        return words.with(result);
    }

    private CommonToken number() {
        CommonToken first = words.get(at++);
        CommonToken last = first;
        StringBuilder digits = new StringBuilder(first.getText());
        if (first.getText().matches("[0-9]{1,3}")) {
            while (isGroup(at) && digits.indexOf(".") < 0) {
                last = words.get(at++);
                digits.append(last.getText());
            }
        }
        if (isDecimalComma(digits)) {
            last = words.get(at + 1);
            digits.append('.').append(last.getText());
            at += 2;
            CommonToken number = Words.joined(first, last, InspectionLexer.NUMBER, digits.toString());
            problems.add(SignDiagnostics.decimalComma(problems.source(), Words.span(number), digits.toString()));
            return number;
        }
        return first == last ? first : Words.joined(first, last, InspectionLexer.NUMBER, digits.toString());
    }

    private boolean isNumber(int index) {
        return words.type(index) == InspectionLexer.NUMBER;
    }

    /** Three digits behind a single blank; the last group may have decimals. */
    private boolean isGroup(int index) {
        return isNumber(index)
                && words.gap(index).matches("[ \u00A0\u2009\u202F]")
                && words.letters(index).matches("[0-9]{3}([.][0-9]+)?");
    }

    /** A comma between digits without a blank. In a list one writes a blank, so this is a decimal comma. */
    private boolean isDecimalComma(CharSequence digits) {
        return words.type(at) == InspectionLexer.COMMA
                && words.isGlued(at)
                && words.isGlued(at + 1)
                && isNumber(at + 1)
                && words.letters(at + 1).matches("[0-9]+")
                && digits.chars().noneMatch(digit -> digit == '.');
    }
}
