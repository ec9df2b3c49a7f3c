package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.inspection.record.Problem;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Tells of the sheets of an archive that cannot be judged, one after the other. What is wrong with a card that many sheets
 * name is told with the first of them; only the latest thousand of such problems are remembered.
 */
final class Tellings {

    private static final int MOST_REMEMBERED = 1_000;

    private final Console console;
    private final Map<Problem, Boolean> told = new LinkedHashMap<>(16, 0.75f, true);

    Tellings(Console console) {
        this.console = console;
    }

    void tell(Comparison.Damaged damaged) {
        String sheet = damaged.place().file();
        for (Problem problem : damaged.problems()) {
            boolean own = problem.file().equals(sheet);
            if (own || isNew(problem)) {
                console.err().print(problem + "\n");
            }
        }
        damaged.problems().stream()
                .filter(problem -> problem.isError() && !problem.file().equals(sheet))
                .map(Problem::file)
                .distinct()
                .forEach(file ->
                        console.err().print(damaged.place() + ": not judged, for what is told of " + file + "\n"));
    }

    private boolean isNew(Problem problem) {
        boolean isNew = told.put(problem, true) == null;
        if (told.size() > MOST_REMEMBERED) {
            told.remove(told.keySet().iterator().next());
        }
        return isNew;
    }
}
