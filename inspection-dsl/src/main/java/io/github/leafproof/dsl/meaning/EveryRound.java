package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.source.Span;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What a loop says in each of its rounds, and what is worth a word only if it is so in all of them: {@code when valve is
 * intake} never holds in the round of the exhaust valve, and is quite right.
 */
final class EveryRound {

    private record Place(Code code, Span span) {}

    private final boolean loops;
    private final Map<Place, Diagnostic> claims = new LinkedHashMap<>();
    private final Set<Place> doubts = new HashSet<>();

    /** @param loops whether there are any; without them everything is said once, and no doubt need be kept */
    EveryRound(boolean loops) {
        this.loops = loops;
    }

    /** In this round it is so. */
    void claim(Diagnostic diagnostic) {
        claims.putIfAbsent(new Place(diagnostic.code(), diagnostic.span()), diagnostic);
    }

    /** In this round it is not so. */
    void doubt(Code code, Span span) {
        if (loops) {
            doubts.add(new Place(code, span));
        }
    }

    void report(Problems problems) {
        claims.forEach((place, diagnostic) -> {
            if (!doubts.contains(place)) {
                problems.add(diagnostic);
            }
        });
    }
}
