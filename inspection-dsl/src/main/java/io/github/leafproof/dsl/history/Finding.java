package io.github.leafproof.dsl.history;

import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A check that found something at one look or more: it failed, its evidence disagreed with itself, or it stayed open.
 *
 * @param title the check's title, as the latest procedure has it
 * @param seen what it came to at each look whose procedure asks it
 * @param standing how the matter stands
 * @param first the look that found it first
 * @param lastLook the latest look at which it was judged at all
 * @param latest what it came to then
 * @param remedied the look at which something was last done about it, or at which it last was all right, before it was found
 *     again; null where neither was
 * @param unseenSince whether there were looks after the last one that judged it
 * @param adjustedSince whether it was adjusted after it was last judged
 * @param mended titles of the checks that failed beside it when it was found, and have been put right since, ten at
 *     most: a fault that is still there had another cause
 */
public record Finding(
        String check,
        String title,
        Severity severity,
        List<Seen> seen,
        Standing standing,
        int first,
        int lastLook,
        Outcome latest,
        @Nullable Integer remedied,
        boolean unseenSince,
        boolean adjustedSince,
        List<String> mended) {

    public Finding {
        seen = List.copyOf(seen);
        mended = List.copyOf(mended);
    }

    /** The look at which it was last adjusted; zero where it never was. */
    public int lastAdjusted() {
        return seen.stream()
                .filter(at -> !at.adjusted().isEmpty())
                .mapToInt(Seen::look)
                .max()
                .orElse(0);
    }

    Finding withMended(List<String> titles) {
        return new Finding(
                check,
                title,
                severity,
                seen,
                standing,
                first,
                lastLook,
                latest,
                remedied,
                unseenSince,
                adjustedSince,
                titles);
    }

    /** How the matter of a finding stands. */
    public enum Standing {
        /** It is there again, or still, after something was done about it. */
        REMAINS,
        /** It was there at the latest look, and nothing is written down that was done about it. */
        STANDS,
        /** It came back after it had been put right, and was put right once more: its cause was not found. */
        COMES_BACK,
        /** It was found, or adjusted, and nobody looked at it again. */
        NOT_LOOKED_AT_AGAIN,
        /** It was put right and judged right the same day; no later look has shown yet whether that lasts. */
        PUT_RIGHT,
        /** A later look has shown it to be all right. */
        CLOSED;

        /** As files and people spell it: {@code not_looked_at_again}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** Whether nothing is left to do about it. */
        public boolean isSettled() {
            return this == PUT_RIGHT || this == CLOSED;
        }
    }

    /**
     * What a check came to at one look.
     *
     * @param asFound before anything was adjusted; null where no adjustment bears on it
     * @param adjusted what was adjusted, and by how much of a turn where that is known
     */
    public record Seen(int look, @Nullable Result asFound, Result asLeft, List<String> adjusted) {
        public Seen {
            adjusted = List.copyOf(adjusted);
        }
    }

    /**
     * An outcome and what it was judged by.
     *
     * @param value in words; null where nothing was measured
     */
    public record Result(Outcome outcome, @Nullable String value) {

        /** Whether something was found. */
        boolean isTrouble() {
            return outcome == Outcome.FAILS || outcome == Outcome.CONTRADICTED || outcome == Outcome.OPEN;
        }

        /** Whether the check was judged at all. */
        boolean isJudged() {
            return isTrouble() || isGood();
        }

        boolean isGood() {
            return outcome == Outcome.PASSES || outcome == Outcome.TOLERATED;
        }
    }
}
