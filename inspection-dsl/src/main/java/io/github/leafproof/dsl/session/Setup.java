package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.BenchState;
import java.util.List;

/**
 * A change of the bench before something is observed: what to do is in {@code change.how()}.
 *
 * @param state what is changed: the covers
 * @param change from which state to which, and how
 * @param cautions to be read before it is done
 */
public record Setup(BenchState state, BenchState.Change change, List<String> cautions) {
    public Setup {
        cautions = List.copyOf(cautions);
    }
}
