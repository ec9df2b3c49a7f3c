package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.message.StructureDiagnostics;
import io.github.leafproof.dsl.source.Span;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiPredicate;

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
        warn(outline.observations, (key, observe) -> names.isUsed(key), (key, observe) -> {
            Span span = observe.target().span();
            problems.add(StructureDiagnostics.unused(span, key, "entered, but no check reads it"));
        });
        warn(
                outline.lets,
                (key, let) -> names.isUsed(key),
                (key, let) -> warnOfOwn(let.target().span(), key, "computed, but nothing reads it"));
        outline.functions.forEach((key, define) -> {
            if (!names.isUsed(key)) {
                warnOfOwn(define.name().span(), key, "defined, but never applied");
            }
        });
        outline.cardFacts.forEach((key, fact) -> {
            if (!names.cardFacts().isUsed(key)) {
                warnOfOwn(fact.name().span(), "engine." + key, "declared, but nothing reads it");
            }
        });
        gates();
    }

    /** What a loop writes out counts as used when one of its rounds is. */
    private static <D extends Declaration> void warn(
            Map<String, Item<D>> all, BiPredicate<String, D> isUsed, BiConsumer<String, D> warning) {
        Map<String, D> idle = new LinkedHashMap<>();
        all.forEach((key, item) -> {
            if (!isUsed.test(key, item.declaration())) {
                idle.put(key, item.declaration());
            }
        });
        if (idle.isEmpty()) {
            return;
        }
        Set<Span> used = new HashSet<>();
        all.forEach((key, item) -> {
            if (!idle.containsKey(key)) {
                used.add(item.declaration().span());
            }
        });
        idle.forEach((key, declaration) -> {
            if (!used.contains(declaration.span())) {
                warning.accept(key, declaration);
            }
        });
    }

    /** What a part declares and its user has no need of is no news. An observation is: it would be made in vain. */
    private void warnOfOwn(Span span, String key, String what) {
        if (!outline.isInPart(span)) {
            problems.add(StructureDiagnostics.unused(span, key, what));
        }
    }

    private void gates() {
        Set<String> waitedFor = new HashSet<>();
        for (Item<Declaration.Check> item : outline.checks.values()) {
            item.stageGates().forEach(gate -> waitedFor.add(item.env().key(gate)));
            item.declaration().after().forEach(gate -> waitedFor.add(item.env().key(gate)));
        }
        warn(outline.checks, (key, check) -> !check.gate() || waitedFor.contains(key), (key, check) -> {
            if (!outline.isInPart(check.span())) {
                problems.add(StructureDiagnostics.gateForNothing(check.target().span(), key));
            }
        });
    }
}
