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
    private final Optional<Vetting> vetting;

    Understood(Optional<CheckGraph> graph, List<Declaration.Rehearse> rehearsals, List<Diagnostic> diagnostics) {
        this(graph, rehearsals, diagnostics, Optional.empty());
    }

    Understood(
            Optional<CheckGraph> graph,
            List<Declaration.Rehearse> rehearsals,
            List<Diagnostic> diagnostics,
            Optional<Vetting> vetting) {
        this.graph = graph;
        this.vetting = vetting;
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

    /** What tells whether the procedure goes together with a card and a tray; there is one where there is a graph. */
    public Optional<Vetting> vetting() {
        return vetting;
    }

    /** All mistakes and warnings, in the order of the file. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
