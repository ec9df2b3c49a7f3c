package io.github.leafproof.dsl.session;

import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.inspection.quantity.Spelling;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.Read;
import io.github.leafproof.inspection.record.Report;
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

    static Problem sheetInTheWay(String sheet, String message, String help) {
        return new Problem("LP761", sheet, "", message, help);
    }

    /** @param begun the file as the journal names it */
    static Problem otherFile(String journal, String what, Report.Input begun) {
        return new Problem(
                "LP765",
                journal,
                "1:1",
                "the " + what + " is not the one that this sheet was begun with: that was " + begun.name()
                        + ", with a SHA-256 that begins "
                        + begun.sha256().substring(0, Math.min(8, begun.sha256().length())),
                "go on with the same files, unchanged, or begin a new sheet with these");
    }

    static <T> Read<T> refused(Problem problem) {
        return new Read.Refused<>(List.of(problem));
    }
}
