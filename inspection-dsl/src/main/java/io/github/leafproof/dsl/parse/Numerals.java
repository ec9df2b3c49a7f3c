package io.github.leafproof.dsl.parse;

import java.util.List;
import java.util.regex.Pattern;
import org.antlr.v4.runtime.CommonToken;

/** Joins the groups of a long number, {@code 9 200}, and takes a decimal comma for what it is meant to be. */
final class Numerals {

    private static final Pattern UP_TO_THREE = Pattern.compile("[0-9]{1,3}");
    private static final Pattern GROUP = Pattern.compile("[0-9]{3}([.][0-9]+)?");
    private static final Pattern DIGITS = Pattern.compile("[0-9]+");
    private static final Pattern BLANK = Pattern.compile("[ \\u00A0\\u2009\\u202F]");

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
            if (isNoughtMissing()) {
                result.add(withNought());
            } else if (isNumber(at)) {
                result.add(number());
            } else {
                result.add(words.get(at++));
            }
        }
        return words.with(result);
    }

    private CommonToken number() {
        CommonToken first = words.get(at++);
        if (!isNumber(at) && words.type(at) != InspectionLexer.COMMA) {
            return first;
        }
        CommonToken last = first;
        StringBuilder digits = new StringBuilder(first.getText());
        if (UP_TO_THREE.matcher(first.getText()).matches()) {
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
            problems.add(SignDiagnostics.decimalComma(Words.span(number), digits.toString()));
            return number;
        }
        return first == last ? first : Words.joined(first, last, InspectionLexer.NUMBER, digits.toString());
    }

    private boolean isNoughtMissing() {
        return words.type(at) == InspectionLexer.FULL_STOP
                && !words.isGlued(at)
                && words.isGlued(at + 1)
                && isNumber(at + 1)
                && DIGITS.matcher(words.letters(at + 1)).matches();
    }

    private CommonToken withNought() {
        CommonToken digits = words.get(at + 1);
        String meant = "0." + digits.getText();
        CommonToken number = Words.joined(words.get(at), digits, InspectionLexer.NUMBER, meant);
        at += 2;
        problems.add(SignDiagnostics.noughtMissing(Words.span(number), meant));
        return number;
    }

    private boolean isNumber(int index) {
        return words.type(index) == InspectionLexer.NUMBER;
    }

    /** Three digits behind a single blank; the last group may have decimals. */
    private boolean isGroup(int index) {
        return isNumber(index)
                && BLANK.matcher(words.gap(index)).matches()
                && GROUP.matcher(words.letters(index)).matches();
    }

    /** A comma between digits without a blank. In a list one writes a blank, so this is a decimal comma. */
    private boolean isDecimalComma(CharSequence digits) {
        return words.type(at) == InspectionLexer.COMMA
                && words.isGlued(at)
                && words.isGlued(at + 1)
                && isNumber(at + 1)
                && DIGITS.matcher(words.letters(at + 1)).matches()
                && digits.chars().noneMatch(digit -> digit == '.');
    }
}
