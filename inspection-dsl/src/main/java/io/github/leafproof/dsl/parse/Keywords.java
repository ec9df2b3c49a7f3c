package io.github.leafproof.dsl.parse;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** The words of the language in the groups that the grammar cannot name. */
final class Keywords {

    /** Words that begin a declaration. */
    static final KeywordSet ITEMS = set(
            InspectionLexer.LANGUAGE,
            InspectionLexer.PROCEDURE,
            InspectionLexer.APPLIES,
            InspectionLexer.DECIDE,
            InspectionLexer.USE,
            InspectionLexer.CARD,
            InspectionLexer.HAZARD,
            InspectionLexer.GAUGE,
            InspectionLexer.SETUP,
            InspectionLexer.STAGE,
            InspectionLexer.OBSERVE,
            InspectionLexer.LET,
            InspectionLexer.DEFINE,
            InspectionLexer.CHECK,
            InspectionLexer.FOR,
            InspectionLexer.RELEASE,
            InspectionLexer.REHEARSE);

    /** Words that begin a clause of a check. */
    static final KeywordSet CHECK_CLAUSES = set(
            InspectionLexer.AFTER,
            InspectionLexer.WHEN,
            InspectionLexer.REQUIRE,
            InspectionLexer.AT,
            InspectionLexer.IF,
            InspectionLexer.BECAUSE);

    /** Words that begin a clause of an observation. */
    static final KeywordSet OBSERVE_CLAUSES = set(
            InspectionLexer.WITH,
            InspectionLexer.SETUP,
            InspectionLexer.ASK,
            InspectionLexer.HAZARD,
            InspectionLexer.NOTE,
            InspectionLexer.OPTIONAL,
            InspectionLexer.WHEN);

    /** Words that begin a step of a rehearsal. */
    static final KeywordSet STEPS =
            set(InspectionLexer.ENGINE, InspectionLexer.GAUGES, InspectionLexer.ENTER, InspectionLexer.EXPECT);

    /** Words that stand at the beginning of something, so never within parentheses. */
    static final KeywordSet NEVER_INSIDE = KeywordSet.of(ITEMS.or(set(
            InspectionLexer.AFTER,
            InspectionLexer.WHEN,
            InspectionLexer.WITH,
            InspectionLexer.ASK,
            InspectionLexer.REQUIRE,
            InspectionLexer.ADVISE,
            InspectionLexer.BECAUSE,
            InspectionLexer.WHILE)));

    /** Words that can be names too. */
    static final KeywordSet NAMES = KeywordSet.of(
            set(InspectionLexer.NAME).or(IntervalSet.of(InspectionLexer.ACCEPTANCE, InspectionLexer.VARIANT)));

    /** Words that the language keeps to itself. */
    static final KeywordSet RESERVED = KeywordSet.of(IntervalSet.of(InspectionLexer.LANGUAGE, InspectionLexer.PER));

    /** What continues an expression. */
    static final KeywordSet OPERATORS = set(
            InspectionLexer.PLUS,
            InspectionLexer.MINUS,
            InspectionLexer.PLUS_MINUS,
            InspectionLexer.TIMES,
            InspectionLexer.DIVIDED_BY,
            InspectionLexer.TO_THE,
            InspectionLexer.NOT_MORE,
            InspectionLexer.NOT_LESS,
            InspectionLexer.LESS,
            InspectionLexer.GREATER,
            InspectionLexer.EQUALS,
            InspectionLexer.AND,
            InspectionLexer.OR,
            InspectionLexer.AT,
            InspectionLexer.BETWEEN,
            InspectionLexer.WITHIN,
            InspectionLexer.IS,
            InspectionLexer.HAS,
            InspectionLexer.IN,
            InspectionLexer.TOLERATE);

    private Keywords() {}

    private static KeywordSet set(int... types) {
        return KeywordSet.of(new IntervalSet(types));
    }

    /** Whether a word may be a name. */
    static boolean isName(int type) {
        return NAMES.contains(type);
    }

    /** A word as it is written, without the generator's quotes; empty for what has no fixed letters. */
    static String written(int type) {
        String literal = InspectionLexer.VOCABULARY.getLiteralName(type);
        return literal == null ? "" : literal.substring(1, literal.length() - 1);
    }

    /** The written forms of some words, in alphabetical order. */
    static Set<String> written(IntervalSet types) {
        Set<String> words = new TreeSet<>();
        types.toList().stream()
                .filter(type -> type > Token.EOF)
                .map(Keywords::written)
                .filter(word -> !word.isEmpty() && Character.isLetter(word.charAt(0)))
                .forEach(words::add);
        return words;
    }

    /** The word that is written so. */
    static int type(String written) {
        List<Integer> all = IntervalSet.of(1, InspectionLexer.VARIANT).toList();
        return all.stream()
                .filter(type -> written(type).equals(written))
                .findFirst()
                .orElse(Token.INVALID_TYPE);
    }

    /** Several groups as one. */
    static IntervalSet all(IntervalSet... groups) {
        IntervalSet all = new IntervalSet();
        Arrays.stream(groups).forEach(all::addAll);
        return all;
    }
}
