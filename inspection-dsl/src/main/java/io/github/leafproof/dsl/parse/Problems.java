package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;

/** What has been found wrong with a text so far, and what of it is lost for that. */
final class Problems {

    /** A page of mistakes is enough to begin with. */
    private static final int MOST_LISTED = 100;
    /** What is kept to be put in order; a text with more mistakes is no procedure. */
    private static final int MOST_KEPT = 2_000;

    private final SourceText source;
    private final List<Diagnostic> found = new ArrayList<>();
    private final NavigableMap<Integer, Code> byPlace = new TreeMap<>();
    private final List<Span> lost = new ArrayList<>();
    private boolean nameless;
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
            byPlace.put(problem.span().start(), problem.code());
            problem.labels().forEach(label -> byPlace.putIfAbsent(label.span().start(), problem.code()));
        }
    }

    /** Adds what others found. */
    void include(Problems others) {
        others.found.forEach(this::add);
        count += others.count - others.found.size();
        lost.addAll(others.lost);
        nameless |= others.nameless;
    }

    /** Whether one of these kinds of mistakes begins in this stretch. */
    boolean hasIn(int start, int end, Set<Code> kinds) {
        return byPlace.subMap(start, true, end, true).values().stream().anyMatch(kinds::contains);
    }

    /** Takes back what was said about a stretch. */
    void forget(Span stretch) {
        int before = found.size();
        found.removeIf(problem ->
                problem.span().start() >= stretch.start() && problem.span().end() <= stretch.end());
        byPlace.subMap(stretch.start(), true, stretch.end(), false).clear();
        count -= before - found.size();
    }

    /** Takes note of a stretch that could not be made sense of, so that nobody is blamed for what may have stood in it. */
    void lose(Span stretch) {
        lost.add(stretch);
    }

    /** Takes note that a declaration is lost whose name could not be read, so that any name may have been its. */
    void loseName() {
        nameless = true;
    }

    /** The whole text, of which nothing is read. */
    void loseAll() {
        lose(source.span(0, source.text().length()));
    }

    Damage damage() {
        return Damage.of(lost, nameless);
    }

    void clear() {
        found.clear();
        byPlace.clear();
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
