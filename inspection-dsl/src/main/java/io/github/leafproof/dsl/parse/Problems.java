package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;

/** What has been found wrong with a text so far. */
final class Problems {

    /** A page of mistakes is enough to begin with. */
    private static final int MOST_LISTED = 100;
    /** What is kept to be put in order; a text with more mistakes is no procedure. */
    private static final int MOST_KEPT = 2_000;

    private final SourceText source;
    private final List<Diagnostic> found = new ArrayList<>();
    private int count;

    Problems(SourceText source) {
        this.source = source;
    }

    SourceText source() {
        return source;
    }

    void add(Diagnostic problem) {
        count++;
        if (found.size() < MOST_KEPT) {
            found.add(problem);
        }
    }

    void clear() {
        found.clear();
        count = 0;
    }

    /** Whether so much is wrong that finer guesses help nobody. */
    boolean areMany() {
        return count >= MOST_KEPT;
    }

    /** The first of them in the order of the text, and how many more there are. */
    List<Diagnostic> inOrder() {
        List<Diagnostic> listed = new ArrayList<>(
                found.stream().sorted(Diagnostic.BY_PLACE).limit(MOST_LISTED).toList());
        if (count > MOST_LISTED) {
            listed.add(BoundDiagnostics.tooMany(listed.get(MOST_LISTED - 1).span(), count - MOST_LISTED));
        }
        return listed;
    }
}
