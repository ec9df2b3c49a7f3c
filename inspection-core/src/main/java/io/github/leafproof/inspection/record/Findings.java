package io.github.leafproof.inspection.record;

import io.github.leafproof.inspection.record.Problem.Level;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Gathers what is wrong with one file while it is read, and gives it back in the order of the file. */
final class Findings {
    /** More than anybody mends in one go; a file of nothing but mistakes must not fill the memory with complaints. */
    static final int MOST = 500;

    private record Finding(int offset, Problem problem) {}

    private final String file;
    private final LineIndex lines;
    private final List<Finding> found = new ArrayList<>();
    private int errors;
    private int complaints;

    /** Problems of a text that is known, and of which the first line is this one of the file. */
    Findings(String file, String text, long firstLine) {
        this.file = file;
        this.lines = new LineIndex(text, firstLine);
    }

    /** The one problem of a file whose text nobody has seen. */
    static Problem whole(String file, FileMistake mistake, String message, @Nullable String help) {
        return new Problem(mistake.level(), mistake.name(), file, "", message, help);
    }

    void add(FileMistake mistake, int offset, @Nullable Trail trail, String message, @Nullable String help) {
        errors += mistake.level() == Level.ERROR ? 1 : 0;
        complaints++;
        if (isFull()) {
            return;
        }
        found.add(new Finding(
                offset, new Problem(mistake.level(), mistake.name(), file, place(offset, trail), message, help)));
    }

    /** Whether more has been found than is shown. */
    boolean isFull() {
        return complaints > MOST;
    }

    /** How many errors were found so far; a reader that compares two counts knows whether what it read is sound. */
    int errors() {
        return errors;
    }

    List<Problem> inOrder() {
        List<Problem> ordered = found.stream()
                .sorted(Comparator.comparingInt(Finding::offset))
                .map(Finding::problem)
                .collect(Collectors.toCollection(ArrayList::new));
        if (isFull()) {
            ordered.add(whole(
                    file,
                    FileMistake.LP609,
                    "there are more problems than the " + MOST + " shown",
                    "mend these first, then read the file again"));
        }
        return ordered;
    }

    /** Line, column and path, as {@link Problem#place()} promises them. */
    String place(int offset, @Nullable Trail trail) {
        return lines.place(offset) + (trail == null ? "" : " " + trail);
    }
}
