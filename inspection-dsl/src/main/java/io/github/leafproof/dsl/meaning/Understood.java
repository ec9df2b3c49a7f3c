package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.List;
import java.util.Optional;

/**
 * What became of a procedure: its graph and its rehearsals, or the mistakes that stand in the way. Warnings may come
 * with a graph.
 */
public final class Understood {

    private final Optional<CheckGraph> graph;
    private final List<Declaration.Rehearse> rehearsals;
    private final List<Diagnostic> diagnostics;

    Understood(Optional<CheckGraph> graph, List<Declaration.Rehearse> rehearsals, List<Diagnostic> diagnostics) {
        this.graph = graph;
        this.rehearsals = List.copyOf(rehearsals);
        this.diagnostics = List.copyOf(diagnostics);
    }

    /** The compiled procedure; empty when there are errors. */
    public Optional<CheckGraph> graph() {
        return graph;
    }

    /** The procedure's own cases, their names and words already checked. */
    public List<Declaration.Rehearse> rehearsals() {
        return rehearsals;
    }

    /** All mistakes and warnings, in the order of the file. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
