package io.github.leafproof.inspection.record;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A file that Java code took for sound and that is not; the message lists all its problems. */
public final class RecordException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    // An exception can be serialized, so its parts have to be of a kind that can be, too.
    private final transient List<Problem> problems;

    /** Complains of these problems. */
    public RecordException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = new ArrayList<>(problems);
    }

    /** What is wrong. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }
}
