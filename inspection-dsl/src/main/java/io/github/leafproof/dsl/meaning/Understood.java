package io.github.leafproof.dsl.meaning;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What became of a procedure: its graph and its rehearsals, or the mistakes that stand in the way. Warnings may come
 * with a graph.
 */
public final class Understood {

    private final Optional<CheckGraph> graph;
    private final List<Declaration.Rehearse> rehearsals;
    private final List<Diagnostic> diagnostics;
    private final Optional<Vetting> vetting;
    private final Optional<Supplier<Sayings>> sayings;

    Understood(Optional<CheckGraph> graph, List<Declaration.Rehearse> rehearsals, List<Diagnostic> diagnostics) {
        this(graph, rehearsals, diagnostics, Optional.empty(), Optional.empty());
    }

    Understood(
            Optional<CheckGraph> graph,
            List<Declaration.Rehearse> rehearsals,
            List<Diagnostic> diagnostics,
            Optional<Vetting> vetting,
            Optional<Supplier<Sayings>> sayings) {
        this.graph = graph;
        this.sayings = sayings;
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

    /** What finds everything that the procedure can say; there is one where there is a graph. It takes as long as compiling. */
    public Optional<Supplier<Sayings>> sayings() {
        return sayings;
    }

    /** All mistakes and warnings, in the order of the file. */
    public List<Diagnostic> diagnostics() {
        return diagnostics;
    }
}
