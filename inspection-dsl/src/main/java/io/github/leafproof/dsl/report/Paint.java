package io.github.leafproof.dsl.report;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;

/** Colour for those who can see it; the words say the same without. */
public enum Paint {
    /** None. */
    PLAIN {
        @Override
        String paint(String code, String words) {
            return words;
        }
    },
    /** As a terminal understands it. */
    COLOURED {
        @Override
        String paint(String code, String words) {
            return "\u001b[" + code + "m" + words + "\u001b[0m";
        }
    };

    private static final String BOLD = "1";
    private static final String GREEN = "32";
    private static final String RED = "1;31";
    private static final String YELLOW = "33";
    private static final String GREY = "90";

    /** Colour where a person wants it. */
    public static Paint of(boolean colour) {
        return colour ? COLOURED : PLAIN;
    }

    abstract String paint(String code, String words);

    /** Words that stand out. */
    public String strong(String words) {
        return words.isEmpty() ? words : paint(BOLD, words);
    }

    /** Words about an outcome. */
    public String outcome(Outcome outcome, String words) {
        return switch (outcome) {
            case PASSES -> paint(GREEN, words);
            case FAILS, CONTRADICTED -> paint(RED, words);
            case TOLERATED, OPEN -> paint(YELLOW, words);
            case UNTESTED, BLOCKED, NOT_APPLICABLE -> paint(GREY, words);
        };
    }

    /** Words about a release. */
    public String release(Release release, String words) {
        return switch (release) {
            case READY -> paint(GREEN, words);
            case REJECT -> paint(RED, words);
            case HOLD, UNFINISHED -> paint(YELLOW, words);
        };
    }
}
