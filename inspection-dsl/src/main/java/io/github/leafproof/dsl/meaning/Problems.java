package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The diagnostics of one procedure as they are found. A loop says its body once for each value, and its mistakes only
 * once: the first at a place counts.
 */
final class Problems {

    private record Place(Code code, Span span) {}

    private final List<Diagnostic> found = new ArrayList<>();
    private final Set<Place> places = new HashSet<>();

    void add(Diagnostic diagnostic) {
        if (places.add(new Place(diagnostic.code(), diagnostic.span()))) {
            found.add(diagnostic);
        }
    }

    List<Diagnostic> inFileOrder() {
        return found.stream().sorted(Diagnostic.BY_PLACE).toList();
    }
}
