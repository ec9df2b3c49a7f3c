package io.github.leafproof.dsl.graph;

import io.github.leafproof.inspection.record.Entry;
import io.github.leafproof.inspection.record.JobSheet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How the entries of one sheet became those of another: the last ones were taken back, others were added.
 *
 * @param takenBack the entries that are gone
 * @param added the entries that are new
 */
record SheetChange(List<Entry> takenBack, List<Entry> added) {

    static SheetChange between(JobSheet before, JobSheet now) {
        List<Entry> old = before.entries();
        List<Entry> all = now.entries();
        int same = 0;
        while (same < old.size() && same < all.size() && old.get(same).equals(all.get(same))) {
            same++;
        }
        return new SheetChange(old.subList(same, old.size()), all.subList(same, all.size()));
    }

    /** What is entered otherwise now. */
    Set<String> names() {
        Set<String> names = new HashSet<>();
        takenBack.forEach(entry -> names.add(entry.observe()));
        added.forEach(entry -> names.add(entry.observe()));
        return names;
    }
}
