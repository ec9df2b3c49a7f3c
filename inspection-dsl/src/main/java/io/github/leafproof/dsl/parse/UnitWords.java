package io.github.leafproof.dsl.parse;

import java.util.List;
import org.antlr.v4.runtime.CommonToken;

/**
 * Joins the words of each unit to one. A unit stands behind a number or behind {@code in}, on the same line: a word,
 * and further words joined by {@code per}, by a middle dot, or by a slash without blanks. The grammar alone cannot
 * tell a unit from a name, since both are words of the shop's choosing. For the same reason it cannot tell the {@code u}
 * of an uncertainty from a name, so that is marked here too.
 */
final class UnitWords {

    private final Problems problems;
    private final Words words;
    private final List<CommonToken> result;
    private final StringBuilder unit = new StringBuilder();
    private int at;

    private UnitWords(Problems problems, Words words) {
        this.problems = problems;
        this.words = words;
        this.result = words.room();
    }

    static Words join(Problems problems, Words words) {
        return new UnitWords(problems, words).join();
    }

    private Words join() {
        while (at < words.size()) {
            boolean mayHaveUnit = mayHaveUnit();
            result.add(words.get(at++));
            boolean noCall = words.type(at - 1) == InspectionLexer.NUMBER
                    || words.type(at - 2) == InspectionLexer.FULL_STOP
                    || words.type(at - 1) == InspectionLexer.RPAREN;
            if (mayHaveUnit && isUnitWord(at)) {
                readUnit();
            }
            if (isUncertainty(at, noCall)) {
                words.get(at + 1).setType(InspectionLexer.STATED);
            }
        }
        return words.with(result);
    }

    private boolean mayHaveUnit() {
        return switch (words.type(at)) {
            case InspectionLexer.NUMBER -> true;
            case InspectionLexer.IN -> words.type(at - 2) != InspectionLexer.FOR;
            default -> false;
        };
    }

    private void readUnit() {
        CommonToken first = words.get(at);
        unit.setLength(0);
        readWord();
        while (isJoin() && isUnitWord(at + 1)) {
            unit.append(sign(at++));
            readWord();
        }
        result.add(Words.joined(first, words.get(at - 1), InspectionLexer.UNIT, unit.toString()));
        if (words.type(at) == InspectionLexer.FULL_STOP && words.isGlued(at)) {
            problems.add(SignDiagnostics.stopBehindUnit(words.span(at)));
            at++;
        }
    }

    private void readWord() {
        unit.append(words.letters(at++));
        boolean power = words.type(at) == InspectionLexer.TO_THE && words.isGlued(at) && words.isGlued(at + 1);
        if (power && isDigit(words.letters(at + 1))) {
            unit.append(words.letters(at + 1));
            at += 2;
        }
    }

    private static boolean isDigit(String letters) {
        return letters.length() == 1 && letters.charAt(0) >= '1' && letters.charAt(0) <= '9';
    }

    private boolean isJoin() {
        return switch (words.type(at)) {
            case InspectionLexer.PER, InspectionLexer.MIDDLE_DOT -> words.isOnSameLine(at);
            case InspectionLexer.DIVIDED_BY -> words.isGlued(at) && words.isGlued(at + 1);
            default -> false;
        };
    }

    private String sign(int index) {
        return switch (words.type(index)) {
            case InspectionLexer.PER -> " per ";
            case InspectionLexer.MIDDLE_DOT -> "\u00B7";
            default -> "/";
        };
    }

    private boolean isUnitWord(int index) {
        if (!words.isOnSameLine(index)) {
            return false;
        }
        return switch (words.type(index)) {
            case InspectionLexer.UNIT_SIGN, InspectionLexer.PERCENT -> true;
            case InspectionLexer.NAME -> !beginsSomethingElse(index);
            case InspectionLexer.IN -> isInch(index);
            default -> false;
        };
    }

    /** {@code 4 in} is a length, while {@code 4 in thou} is a number to be shown in another unit. */
    private boolean isInch(int index) {
        return words.type(index + 1) == InspectionLexer.IN || !isUnitWord(index + 1);
    }

    /**
     * Whether the word is the next arm of a choice, {@code plastic: …}, or is called, indexed or pointed from. A word
     * before a comma is a unit: of an arm for several options, the first option stands on a new line.
     */
    private boolean beginsSomethingElse(int index) {
        return switch (words.type(index + 1)) {
            case InspectionLexer.LPAREN -> !isUncertainty(index + 1, true);
            case InspectionLexer.COLON, InspectionLexer.LBRACKET, InspectionLexer.ARROW -> true;
            default -> false;
        };
    }

    /**
     * Whether an uncertainty is stated here, {@code (u 0.2 K)}. Behind a name only a number can tell it from the arguments
     * of a function; where nothing can be called, anything that may follow will do.
     */
    private boolean isUncertainty(int index, boolean noCall) {
        if (words.type(index) != InspectionLexer.LPAREN
                || !words.letters(index + 1).equalsIgnoreCase("u")) {
            return false;
        }
        return switch (words.type(index + 2)) {
            case InspectionLexer.NUMBER -> true;
            case InspectionLexer.EQUALS, InspectionLexer.MINUS -> noCall;
            default -> false;
        };
    }
}
