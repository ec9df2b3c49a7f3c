package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Points at what is declared and serves nothing: probably a name forgotten in a check. */
final class Unused {

    private final Problems problems;
    private final Outline outline;
    private final Names names;

    Unused(Problems problems, Outline outline, Names names) {
        this.problems = problems;
        this.outline = outline;
        this.names = names;
    }

    void look() {
        // What a loop writes out counts as used when one of its rounds is.
        Set<Span> used = new HashSet<>();
        outline.observations.forEach((key, item) -> {
            if (names.isUsed(key)) {
                used.add(item.declaration().target().span());
            }
        });
        outline.lets.forEach((key, item) -> {
            if (names.isUsed(key)) {
                used.add(item.declaration().target().span());
            }
        });
        outline.observations.forEach(
                (key, item) -> warn(used, item.declaration().target().span(), key, "entered, but no check reads it"));
        outline.lets.forEach((key, item) ->
                warnOfOwn(used, item.declaration().target().span(), key, "computed, but nothing reads it"));
        outline.functions.forEach((key, define) -> {
            if (!names.isUsed(key)) {
                warnOfOwn(used, define.name().span(), key, "defined, but never applied");
            }
        });
        outline.cardFacts.forEach((key, fact) -> {
            if (!names.cardFacts().isUsed(key)) {
                warnOfOwn(used, fact.name().span(), "engine." + key, "declared, but nothing reads it");
            }
        });
        gates();
    }

    private void warn(Set<Span> used, Span span, String key, String what) {
        if (!used.contains(span)) {
            problems.add(StructureDiagnostics.unused(span, key, what));
        }
    }

    /** What a part declares and its user has no need of is no news. An observation is: it would be made in vain. */
    private void warnOfOwn(Set<Span> used, Span span, String key, String what) {
        if (!outline.isInPart(span)) {
            warn(used, span, key, what);
        }
    }

    private void gates() {
        Set<String> waitedFor = new HashSet<>();
        Set<Span> used = new HashSet<>();
        for (Item<Declaration.Check> item : outline.checks.values()) {
            Stream.of(item.stageGates(), item.declaration().after())
                    .flatMap(List::stream)
                    .map(item.env()::key)
                    .forEach(waitedFor::add);
        }
        outline.checks.forEach((key, item) -> {
            if (waitedFor.contains(key)) {
                used.add(item.declaration().target().span());
            }
        });
        outline.checks.forEach((key, item) -> {
            Span span = item.declaration().target().span();
            if (item.declaration().gate() && !used.contains(span) && !outline.isInPart(span)) {
                problems.add(StructureDiagnostics.gateForNothing(span, key));
            }
        });
    }
}
