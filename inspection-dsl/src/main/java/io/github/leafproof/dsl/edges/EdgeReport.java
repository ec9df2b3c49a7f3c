package io.github.leafproof.dsl.edges;

import java.util.List;

/**
 * The edges of a procedure.
 *
 * @param edges what was found, in the order of the checks
 * @param notReached the conditions of which none was found, in the order of the checks
 */
public record EdgeReport(List<Edge> edges, List<NotReached> notReached) {
    public EdgeReport {
        edges = List.copyOf(edges);
        notReached = List.copyOf(notReached);
    }
}
