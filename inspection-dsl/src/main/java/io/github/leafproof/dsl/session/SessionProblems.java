package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import java.util.List;

/** What a session refuses, in words. */
final class SessionProblems {

    private SessionProblems() {}

    static <T> Read<T> noObservation(Standing standing, String named) {
        List<String> names = standing.basis().graph().observations().stream()
                .map(Node.Observation::name)
                .toList();
        return refused(new Problem(
                "LP676",
                standing.sheet().name(),
                "",
                "the procedure observes nothing called " + named,
                Spelling.nearest(named, names)
                        .map(near -> "did you mean " + near + "?")
                        .orElse(null)));
    }

    static <T> Read<T> nothingToTakeBack(String sheet) {
        return refused(
                new Problem(
                        "LP768",
                        sheet,
                        "",
                        "there is nothing to take back",
                        "nothing was done yet, or not since the sheet was written; what stands on a written sheet can be corrected"));
    }

    static <T> Read<T> refused(Problem problem) {
        return new Read.Refused<>(List.of(problem));
    }
}
