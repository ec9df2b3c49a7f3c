package io.github.leafproof.dsl.parse;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;

/** What has been found wrong with a text so far. */
final class Problems {

    private final SourceText source;
    private final List<Diagnostic> found = new ArrayList<>();

    Problems(SourceText source) {
        this.source = source;
    }

    SourceText source() {
        return source;
    }

    void add(Diagnostic problem) {
        found.add(problem);
    }

    int size() {
        return found.size();
    }

    List<Diagnostic> inOrder() {
        return found.stream().sorted(Diagnostic.BY_PLACE).toList();
    }
}
