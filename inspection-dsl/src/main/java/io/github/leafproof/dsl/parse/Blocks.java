package io.github.leafproof.dsl.parse;

import java.util.Optional;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.IntervalSet;

/** The blocks of a procedure: what each can hold, so that after a mistake reading goes on where the next part begins. */
final class Blocks {

    private static final IntervalSet BLOCK = Keywords.all(Keywords.ITEMS, IntervalSet.of(InspectionLexer.AFTER));

    private Blocks() {}

    /** Whether a rule of the grammar is a run of parts. */
    static boolean isBlock(int rule) {
        return switch (rule) {
            case InspectionParser.RULE_file,
                    InspectionParser.RULE_block,
                    InspectionParser.RULE_setupBody,
                    InspectionParser.RULE_observeClauses,
                    InspectionParser.RULE_checkBody,
                    InspectionParser.RULE_releaseBody,
                    InspectionParser.RULE_rehearseBody,
                    InspectionParser.RULE_arms -> true;
            default -> false;
        };
    }

    /** Whether a rule of the grammar is one part of such a run. */
    static boolean isPart(int rule) {
        return switch (rule) {
            case InspectionParser.RULE_item,
                    InspectionParser.RULE_blockClause,
                    InspectionParser.RULE_setupLine,
                    InspectionParser.RULE_observeClause,
                    InspectionParser.RULE_checkClause,
                    InspectionParser.RULE_releaseRule,
                    InspectionParser.RULE_step,
                    InspectionParser.RULE_arm -> true;
            default -> false;
        };
    }

    /** The words that begin a part of this block, where it is words that do. */
    static IntervalSet keywords(int rule) {
        return switch (rule) {
            case InspectionParser.RULE_file -> Keywords.ITEMS;
            case InspectionParser.RULE_block -> BLOCK;
            case InspectionParser.RULE_observeClauses -> Keywords.OBSERVE_CLAUSES;
            case InspectionParser.RULE_checkBody -> Keywords.CHECK_CLAUSES;
            case InspectionParser.RULE_rehearseBody -> Keywords.STEPS;
            case InspectionParser.RULE_setupBody -> IntervalSet.of(InspectionLexer.WHILE);
            default -> new IntervalSet();
        };
    }

    /** The words that begin the next part, be it of this block or, where nothing closes this one, of the one around. */
    static IntervalSet nextKeywords(int rule) {
        return rule == InspectionParser.RULE_observeClauses ? Keywords.all(keywords(rule), BLOCK) : keywords(rule);
    }

    /** Whether this word begins a part, or ends the block. */
    static boolean canStand(int rule, Words words, int at) {
        int type = words.type(at);
        if (type == Token.EOF || keywords(rule).contains(type)) {
            return true;
        }
        return switch (rule) {
            case InspectionParser.RULE_file -> false;
            case InspectionParser.RULE_observeClauses -> BLOCK.contains(type) || type == InspectionLexer.RBRACE;
            case InspectionParser.RULE_setupBody, InspectionParser.RULE_releaseBody ->
                type == InspectionLexer.RBRACE || Keywords.isName(type) || Keywords.RESERVED.contains(type);
            case InspectionParser.RULE_arms ->
                type == InspectionLexer.RBRACE
                        || type == InspectionLexer.OTHERWISE
                        || type == InspectionLexer.STRING
                        || Keywords.isName(type);
            default -> type == InspectionLexer.RBRACE;
        };
    }

    /** As {@link #canStand}, but after a mistake: only what cannot be the rest of what was misunderstood. */
    static boolean resumes(int rule, Words words, int at) {
        int type = words.type(at);
        if (type == Token.EOF || (type == InspectionLexer.RBRACE && rule != InspectionParser.RULE_file)) {
            return true;
        }
        return switch (rule) {
            case InspectionParser.RULE_file, InspectionParser.RULE_block -> beginsItem(words, at);
            case InspectionParser.RULE_observeClauses ->
                canStand(rule, words, at) && (beginsItem(words, at) || Keywords.OBSERVE_CLAUSES.contains(type));
            case InspectionParser.RULE_setupBody ->
                type == InspectionLexer.WHILE || words.type(at + 1) == InspectionLexer.ARROW;
            case InspectionParser.RULE_releaseBody ->
                words.type(at + 1) == InspectionLexer.WHEN || words.type(at + 1) == InspectionLexer.OTHERWISE;
            case InspectionParser.RULE_arms ->
                words.type(at + 1) == InspectionLexer.COLON
                        && (type == InspectionLexer.OTHERWISE
                                || type == InspectionLexer.STRING
                                || Keywords.isName(type));
            default -> keywords(rule).contains(type) && (isUnmistakable(type) || !words.isOnSameLine(at));
        };
    }

    private static boolean isUnmistakable(int type) {
        return type == InspectionLexer.REQUIRE || type == InspectionLexer.BECAUSE;
    }

    private static boolean beginsItem(Words words, int at) {
        return switch (words.type(at)) {
            case InspectionLexer.SETUP -> words.type(at + 2) == InspectionLexer.STARTS;
            case InspectionLexer.HAZARD -> words.type(at + 2) == InspectionLexer.STRING;
            case InspectionLexer.AFTER -> !words.isOnSameLine(at);
            default -> BLOCK.contains(words.type(at));
        };
    }

    /** What a reader calls such a block. */
    static String named(int rule) {
        return switch (rule) {
            case InspectionParser.RULE_file -> "a procedure";
            case InspectionParser.RULE_block -> "a stage or a for";
            case InspectionParser.RULE_setupBody -> "a setup";
            case InspectionParser.RULE_observeClauses -> "an observation";
            case InspectionParser.RULE_checkBody -> "a check";
            case InspectionParser.RULE_releaseBody -> "a release rule";
            case InspectionParser.RULE_rehearseBody -> "a rehearsal";
            default -> "a choice";
        };
    }

    /** Where a clause belongs that stands among declarations. */
    static Optional<String> home(int type) {
        return switch (type) {
            case InspectionLexer.REQUIRE, InspectionLexer.BECAUSE, InspectionLexer.ADVISE -> Optional.of("a check");
            case InspectionLexer.AT, InspectionLexer.IF -> Optional.of("a check");
            case InspectionLexer.AFTER -> Optional.of("a check or a stage");
            case InspectionLexer.WITH, InspectionLexer.ASK, InspectionLexer.NOTE -> Optional.of("an observation");
            case InspectionLexer.OPTIONAL -> Optional.of("an observation");
            case InspectionLexer.WHEN -> Optional.of("a check or an observation");
            case InspectionLexer.WHILE -> Optional.of("a setup");
            case InspectionLexer.ENTER, InspectionLexer.EXPECT, InspectionLexer.GAUGES, InspectionLexer.ENGINE ->
                Optional.of("a rehearsal");
            default -> Optional.empty();
        };
    }
}
