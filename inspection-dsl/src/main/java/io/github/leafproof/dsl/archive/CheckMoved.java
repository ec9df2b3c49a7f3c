package io.github.leafproof.dsl.archive;

import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Side;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A check that came out otherwise.
 *
 * @param title its title in the new revision, or in the only one that has it
 * @param before how it came out under the old revision; null where that has no such check
 * @param after how it came out under the new revision; null where that has no such check
 * @param changes what is not the same about it, as far as it can be put in a line; none where one revision lacks it, or
 *     where only a gate before it came out otherwise
 */
public record CheckMoved(
        String name,
        String title,
        @Nullable Found before,
        @Nullable Found after,
        List<Change> changes) {

    public CheckMoved {
        changes = List.copyOf(changes);
    }

    /**
     * How a check came out.
     *
     * @param side on which side it fails, where it has sides
     * @param probability that the requirement holds; null where nothing could be judged
     * @param requirement what must hold, limits in numbers
     * @param value what was found; empty where nothing was measured
     * @param reasons why it came out so, a sentence each
     * @param missing what it lacks, or waits for
     */
    public record Found(
            Outcome outcome,
            Side side,
            Report.@Nullable Probability probability,
            String requirement,
            String value,
            List<String> reasons,
            List<String> missing) {
        public Found {
            reasons = List.copyOf(reasons);
            missing = List.copyOf(missing);
        }

        /** The outcome with its side: {@code fails low}. */
        public String word() {
            return CheckMoved.word(outcome, side);
        }
    }

    /**
     * Something that is not the same.
     *
     * @param what what it is: {@code requires}, {@code decided}, or the name of a value
     * @param before as the old revision has it; null where it has none
     * @param after as the new revision has it; null where it has none
     */
    public record Change(
            String what, @Nullable String before, @Nullable String after) {}

    /** How it came out under the old revision, in words; where that has no such check, it says so. */
    public String wordBefore() {
        return before == null ? NO_CHECK : before.word();
    }

    /** How it came out under the new revision, in words; where that has no such check, it says so. */
    public String wordAfter() {
        return after == null ? NO_CHECK : after.word();
    }

    private static final String NO_CHECK = "no such check";

    private static String word(Outcome outcome, Side side) {
        return side == Side.NONE
                ? outcome.word()
                : outcome.word() + " " + side.name().toLowerCase(Locale.ROOT);
    }
}
