package io.github.leafproof.dsl.layout;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.source.Span;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A graph or a tree written out to its last leaf but for places in the text: two that read alike are alike. */
public final class GraphWords {

    private GraphWords() {}

    public static String of(CheckGraph graph) {
        CheckGraph.Identity identity = graph.identity();
        Object parts = Stream.of(
                        identity.name(),
                        identity.title(),
                        identity.revision(),
                        graph.states(),
                        graph.gauges(),
                        graph.facts(),
                        graph.observations(),
                        graph.derived(),
                        graph.checks(),
                        graph.applies(),
                        graph.rule(),
                        graph.release())
                .toList();
        return of(parts);
    }

    public static String of(@Nullable Object thing) {
        if (thing instanceof Span) {
            return "here";
        } else if (thing instanceof Optional<?> perhaps) {
            return of(perhaps.orElse(null));
        } else if (thing instanceof Collection<?> all) {
            return all.stream().map(GraphWords::of).collect(Collectors.joining(",\n", "[", "]"));
        } else if (thing instanceof Map<?, ?> map) {
            return of(map.entrySet().stream()
                    .map(entry -> of(entry.getKey()) + of(entry.getValue()))
                    .sorted()
                    .toList());
        } else if (thing instanceof Record record) {
            return Stream.of(record.getClass().getRecordComponents())
                    .map(component -> component.getName() + " " + of(value(record, component)))
                    .collect(Collectors.joining(", ", record.getClass().getSimpleName() + "(", ")"));
        }
        // What is computed stands beside its words; the code itself has no name.
        return thing != null && thing.getClass().isHidden() ? "code" : String.valueOf(thing);
    }

    private static @Nullable Object value(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
