package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.quantity.Quantity;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads entries one below the other: each is held against those above it. */
final class Timeline {
    private final Set<String> observed;
    private @Nullable OffsetDateTime last;
    private @Nullable Quantity running;

    /**
     * Goes on below what is there.
     *
     * @param observed the names observed so far; those of the entries to come are added
     * @param last when the last entry was made; null where none says
     * @param running how long the engine had run by then; null where nothing says
     */
    Timeline(Set<String> observed, @Nullable OffsetDateTime last, @Nullable Quantity running) {
        this.observed = observed;
        this.last = last;
        this.running = running;
    }

    List<Entry> entries(List<Spot> spots) {
        return spots.stream().flatMap(spot -> entry(spot).stream()).toList();
    }

    private Optional<Entry> entry(Spot spot) {
        return EntryReading.entry(spot, observed).map(entry -> {
            notBefore(last, entry, spot);
            last = entry.at() == null ? last : entry.at();
            notLess(running, entry, spot);
            running = entry.runningTime() == null ? running : entry.runningTime();
            return entry.after(running);
        });
    }

    private static void notBefore(@Nullable OffsetDateTime last, Entry entry, Spot spot) {
        if (last != null && entry.at() != null && entry.at().isBefore(last)) {
            spot.complain(
                    FileMistake.LP683,
                    "this entry was made at " + entry.at() + ", before the one above it",
                    "entries are a timeline; check the times, or put the entries in the order they were made");
        }
    }

    /** An engine cannot have run less than before. */
    private static void notLess(@Nullable Quantity before, Entry entry, Spot spot) {
        Quantity now = entry.runningTime();
        if (before != null && now != null && now.base() < before.base()) {
            spot.complain(
                    FileMistake.LP684,
                    "the engine had run " + before + " before this entry, and " + now + " by it",
                    "running_time is how long it has run in all, not since the last run; it never becomes less");
        }
    }
}
