package io.github.leafproof.dsl.syntax;

import io.github.leafproof.dsl.source.Span;
import java.util.List;

/**
 * What a declaration names or an expression refers to: {@code cold}, or {@code lash[valve]} with an index for each loop
 * it stands in. An index is a loop's variable or one of its values.
 */
public record Target(Name name, List<Name> indexes, Span span) {

    public Target {
        indexes = List.copyOf(indexes);
    }

    /** As one writes it: {@code lash[intake]}. */
    @Override
    public String toString() {
        StringBuilder written = new StringBuilder(name.text());
        indexes.forEach(index -> written.append('[').append(index.text()).append(']'));
        return written.toString();
    }
}
