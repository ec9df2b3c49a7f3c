package io.github.leafproof.dsl.history;

import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Something that was observed or computed at more than one look.
 *
 * @param byFeel whether it is a gap known by leaves or pins
 * @param sights what it was at each of them
 * @param changes how it changed from as left at one look to as found at the next; an adjustment is no change
 * @param adjustings what each adjustment did to it
 * @param slope by how much it changes in an hour of running since it was last adjusted: the straight line through three looks
 *     or more, per second; null where there are fewer
 * @param perReading by how much repeated readings rise from each to the next, over all looks; null where there are none, or
 *     they were read with other gauges
 * @param pace whether it changes faster than before
 * @param nextCheck when it has to be looked at again; null where no limit is held against it or no rate is known
 */
public record Followed(
        String name,
        boolean byFeel,
        List<Sight> sights,
        List<Change> changes,
        List<Adjusting> adjustings,
        @Nullable Estimate slope,
        @Nullable Estimate perReading,
        Pace pace,
        @Nullable NextCheck nextCheck) {

    public Followed {
        sights = List.copyOf(sights);
        changes = List.copyOf(changes);
        adjustings = List.copyOf(adjustings);
    }

    /** Whether it goes to a limit faster than before: a part is coming loose, or about to break. */
    public boolean isWorsening() {
        return pace == Pace.FASTER && nextCheck != null;
    }

    /** Whether it has to be looked at before the engine runs again. */
    public boolean isDueNow() {
        return nextCheck != null && nextCheck.state() == NextCheck.State.DUE_NOW;
    }

    /** Whether there is anything to follow but words. */
    public boolean isMeasured() {
        return sights.stream()
                .anyMatch(sight ->
                        sight.asFound().number() != null || sight.asLeft().number() != null);
    }

    /** Whether it ever was anything else. */
    public boolean isSteady() {
        return sights.stream()
                        .flatMap(sight ->
                                List.of(sight.asFound().words(), sight.asLeft().words()).stream())
                        .distinct()
                        .count()
                < 2;
    }

    /**
     * What it was at one look.
     *
     * @param asLeft the same as found where nothing was adjusted
     */
    public record Sight(int look, boolean adjusted, Point asFound, Point asLeft) {}

    /**
     * What is known of it at one time.
     *
     * @param words the value as reports show it, or why there is none
     * @param number as a number; null where it is none
     * @param unfit why the number counts for nothing, such as a lash measured on a warm engine; null where it counts
     * @param runningTime how long the engine had run in all; null where no sheet says
     */
    public record Point(
            String words,
            @Nullable Estimate number,
            @Nullable String unfit,
            @Nullable Quantity runningTime) {

        /** The number, where it is to be relied on. */
        @Nullable
        Estimate counts() {
            return unfit == null ? number : null;
        }
    }

    /**
     * What running did to it between two looks, or standing.
     *
     * @param rate per second of running; null where nobody knows how long the engine ran, or it did not
     * @param told whether the change is told from none, with 95 % confidence
     */
    public record Change(
            int from,
            int to,
            Estimate amount,
            @Nullable Estimate hours,
            @Nullable Estimate rate,
            boolean told) {}

    /**
     * What an adjustment did, from as found to as left at one look.
     *
     * @param turn how far the screw was turned; null where the sheet does not say, or it was turned more than once
     * @param perTurn how far a whole turn would have moved it: the adjuster's pitch and lever as they really are, with what the
     *     lock nut did
     */
    public record Adjusting(
            int look,
            Estimate moved,
            @Nullable Quantity turn,
            @Nullable Estimate perTurn) {}

    /** How the latest rate compares with the one before it. */
    public enum Pace {
        /** Fewer than two rates are known. */
        UNKNOWN,
        /** The difference of the two cannot be told from none. */
        NOT_TOLD,
        /** It changes less with an hour of running than before, as it should while an engine beds in (common practice). */
        SLOWER,
        /** It changes more with an hour of running than before, which is a finding (common practice). */
        FASTER;

        /** As files and people spell it: {@code not_told}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * When it has to be looked at again.
     *
     * @param limit the limit that it goes to, in words
     * @param look the look at which it was last known
     * @param rate the latest rate, per second of running
     * @param left how long it may run until it is nearer to the limit than its standard uncertainty, at that rate (common
     *     practice); null where the rate is not told from none
     * @param sure how long, in seconds of running, it is sure to be short of the limit, with 95 % confidence
     * @param runningTime how long the engine had run in all when it was last known
     */
    public record NextCheck(
            String limit,
            int look,
            Estimate rate,
            @Nullable Estimate left,
            double sure,
            @Nullable Quantity runningTime,
            State state) {

        /** What is known of the time. */
        public enum State {
            /** It may be beyond its limit already. */
            DUE_NOW,
            /** It is due after some running. */
            DUE,
            /** The rate is not told from none: it may be due, or never. */
            OPEN,
            /** It surely moves away from all its limits. */
            MOVES_AWAY;

            /** As files and people spell it: {@code due_now}. */
            public String word() {
                return name().toLowerCase(Locale.ROOT);
            }
        }
    }
}
