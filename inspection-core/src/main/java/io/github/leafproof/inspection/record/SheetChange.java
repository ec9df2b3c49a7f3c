package io.github.leafproof.inspection.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How the entries of one sheet became those of another: the last ones were taken back, others were added.
 *
 * @param takenBack the entries that are gone
 * @param added the entries that are new
 */
public record SheetChange(List<Entry> takenBack, List<Entry> added) {

    public SheetChange {
        takenBack = List.copyOf(takenBack);
        added = List.copyOf(added);
    }

    /** The change between two sheets; where one was made from the other, entry by entry, found without looking further. */
    public static SheetChange between(OpenSheet before, OpenSheet now) {
        if (!before.isRelated(now)) {
            return between(before.entries(), now.entries());
        }
        List<Entry> takenBack = new ArrayList<>();
        List<Entry> added = new ArrayList<>();
        OpenSheet left = before;
        OpenSheet right = now;
        while (!left.isSame(right)) {
            int longer = left.size() - right.size();
            if (longer >= 0) {
                takenBack.add(left.last().orElseThrow());
                left = left.withoutLast();
            }
            if (longer <= 0) {
                added.add(right.last().orElseThrow());
                right = right.withoutLast();
            }
        }
        Collections.reverse(takenBack);
        Collections.reverse(added);
        return new SheetChange(takenBack, added);
    }

    private static SheetChange between(List<Entry> old, List<Entry> all) {
        int same = 0;
        while (same < old.size() && same < all.size() && old.get(same).equals(all.get(same))) {
            same++;
        }
        return new SheetChange(old.subList(same, old.size()), all.subList(same, all.size()));
    }

    /** The observations that are entered otherwise now, by their names. */
    public Set<String> names() {
        Set<String> names = new HashSet<>();
        takenBack.forEach(entry -> names.add(entry.observe()));
        added.forEach(entry -> names.add(entry.observe()));
        return names;
    }

    /** The entries for an observation that there are now, of those that there were. */
    public List<Entry> of(String observation, List<Entry> before) {
        List<Entry> entries = new ArrayList<>(before);
        for (Entry gone : takenBack) {
            if (gone.observe().equals(observation)) {
                entries.remove(entries.size() - 1);
            }
        }
        for (Entry entry : added) {
            if (entry.observe().equals(observation)) {
                entries.add(entry);
            }
        }
        return entries;
    }
}
