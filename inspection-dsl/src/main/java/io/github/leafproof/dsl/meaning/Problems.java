package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Damage;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The diagnostics of one procedure as they are found. A loop says its body once for each value, and its mistakes only
 * once: the first at a place counts.
 */
final class Problems {

    /** Nobody reads more at once; as many as the grammar's room lists. */
    static final int MOST = 100;

    /** Among more names than these no likely one is looked for: it would take longer than all the rest. */
    private static final int MOST_NAMES = 10_000;

    private record Place(Code code, Span span) {}

    private final List<SourceText> files;
    private final Damage damage;
    private final List<Diagnostic> found = new ArrayList<>();
    private final Set<Place> places = new HashSet<>();
    private boolean unlistedError;

    /**
     * Begins with what was found wrong when the text was read.
     *
     * @param files the texts of the procedure in the order in which their mistakes are told
     * @param damage where nothing is to be complained of, since the damage itself has been
     */
    Problems(List<Diagnostic> before, List<SourceText> files, Damage damage) {
        this.files = new ArrayList<>(files);
        // Files that were refused as a whole are none of the procedure's.
        before.forEach(each -> this.files.add(each.source()));
        this.damage = damage;
        before.forEach(this::list);
    }

    void add(Diagnostic diagnostic) {
        if (!isHurt(diagnostic.span())) {
            list(diagnostic);
        }
    }

    /** Whether something may be lost in what stands here, so that it is not to be blamed for what it lacks. */
    boolean isHurt(Span span) {
        return damage.touches(span);
    }

    private void list(Diagnostic diagnostic) {
        if (!places.add(new Place(diagnostic.code(), diagnostic.span()))) {
            return;
        }
        if (found.size() < MOST) {
            found.add(diagnostic);
        } else {
            unlistedError |= diagnostic.isError();
        }
    }

    boolean anyError() {
        return unlistedError || found.stream().anyMatch(Diagnostic::isError);
    }

    /** The names among which the one that was meant may be looked for: none where nobody would read the answer. */
    Collection<String> near(Collection<String> known) {
        return found.size() < MOST && known.size() <= MOST_NAMES ? known : List.of();
    }

    List<Diagnostic> inFileOrder() {
        List<Diagnostic> sorted = new ArrayList<>(
                found.stream().sorted(Diagnostic.inOrderOf(files)).toList());
        if (places.size() > found.size()) {
            Diagnostic last = sorted.get(sorted.size() - 1);
            sorted.add(StructureDiagnostics.moreProblems(last.span(), places.size() - found.size(), anyError()));
        }
        return sorted;
    }
}
