package io.github.leafproof.dsl.parse;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.misc.IntervalSet;

/** What could stand at a place, by the names people give it. Whatever may but need not follow there is left out. */
final class Expectations {

    /** A longer list helps nobody. */
    private static final int MOST = 4;

    private static final IntervalSet VALUES = new IntervalSet(
            InspectionLexer.NUMBER,
            InspectionLexer.DATE,
            InspectionLexer.YES,
            InspectionLexer.NO,
            InspectionLexer.ENGINE,
            InspectionLexer.LPAREN,
            InspectionLexer.CHOOSE,
            InspectionLexer.MINUS,
            InspectionLexer.NOT,
            InspectionLexer.IF);

    private static final IntervalSet TEXTS = new IntervalSet(
            InspectionLexer.STRING,
            InspectionLexer.UNCLOSED_STRING,
            InspectionLexer.UNQUOTED,
            InspectionLexer.CURLY_STRING);

    private static final IntervalSet FURTHER = Keywords.all(
            Keywords.OPERATORS,
            Keywords.ITEMS,
            Keywords.CHECK_CLAUSES,
            Keywords.OBSERVE_CLAUSES,
            Keywords.STEPS,
            IntervalSet.of(org.antlr.v4.runtime.Token.EOF),
            new IntervalSet(
                    InspectionLexer.COMMA,
                    InspectionLexer.ARGUMENT_COMMA,
                    InspectionLexer.RBRACE,
                    InspectionLexer.LBRACKET,
                    InspectionLexer.FULL_STOP,
                    InspectionLexer.WHILE,
                    InspectionLexer.OTHERWISE,
                    InspectionLexer.UNIT));

    private Expectations() {}

    /**
     * The names of what is expected.
     *
     * @param rule the rule of the grammar that was being read
     * @return at most four, or none where almost anything could stand there
     */
    static List<String> of(IntervalSet expected, int rule) {
        if (rule == InspectionParser.RULE_type) {
            return List.of("a type (length, number, yes/no \u2026)");
        }
        if (rule == InspectionParser.RULE_gaugeKind) {
            return List.of("leaf set", "pin set", "reading of a dimension", "counter");
        }
        if (rule == InspectionParser.RULE_entered) {
            return List.of("what is entered (21 degC, yes, passes \"0.05\" \u2026)");
        }
        List<String> names = new ArrayList<>();
        IntervalSet rest = new IntervalSet(expected);
        if (expected.contains(InspectionLexer.NUMBER) && expected.contains(InspectionLexer.LPAREN)) {
            names.add("a value");
            rest = without(without(without(rest, VALUES), TEXTS), Keywords.NAMES);
        } else if (expected.contains(InspectionLexer.NAME) && expected.contains(InspectionLexer.VARIANT)) {
            names.add("a name");
            rest = without(rest, Keywords.NAMES);
        }
        if (rest.contains(InspectionLexer.STRING)) {
            names.add("a text in quotes");
            rest = without(rest, TEXTS);
        }
        if (rest.equals(new IntervalSet(InspectionLexer.UNIT))) {
            names.add("a unit");
        }
        IntervalSet definite = without(rest, FURTHER);
        definite.toList().forEach(type -> names.add(named(type)));
        if (names.isEmpty() && rest.size() <= MOST) {
            rest.toList().forEach(type -> names.add(named(type)));
        }
        return names.size() > MOST ? List.of() : List.copyOf(names);
    }

    private static IntervalSet without(IntervalSet set, IntervalSet others) {
        return set.subtract(others);
    }

    private static String named(int type) {
        return switch (type) {
            case InspectionLexer.NUMBER -> "a number";
            case InspectionLexer.DATE -> "a date";
            case InspectionLexer.NAME -> "a name";
            case InspectionLexer.UNIT -> "a unit";
            case InspectionLexer.DIGITS -> "`digits`";
            case InspectionLexer.ARROW -> "`->`";
            case InspectionLexer.STATED -> "`u` or `U` and how well it is known";
            case org.antlr.v4.runtime.Token.EOF -> "the end";
            default -> "`" + sign(type) + "`";
        };
    }

    private static String sign(int type) {
        return switch (type) {
            case InspectionLexer.MINUS -> "-";
            case InspectionLexer.DIVIDED_BY -> "/";
            case InspectionLexer.TIMES -> "*";
            default -> Keywords.written(type);
        };
    }

    /** Words of which one is meant, as a reader says them: {@code a, b or c}. */
    static String either(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
