package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.inspection.record.Problem;
import java.util.List;

/**
 * What one rehearsal came to.
 *
 * @param title what it shows
 * @param place its file, line and column
 * @param surprises where something else came out than was expected
 * @param problems why it could not be run, such as a card that cannot be read
 */
public record Rehearsed(String title, String place, List<Surprise> surprises, List<Problem> problems) {

    public Rehearsed {
        surprises = List.copyOf(surprises);
        problems = List.copyOf(problems);
    }

    /** Whether everything came out as expected. */
    public boolean isAsExpected() {
        return surprises.isEmpty() && problems.isEmpty();
    }

    /**
     * One expectation that was not met.
     *
     * @param place file, line and column of the expectation
     * @param of the check, or release
     * @param expected the outcome that was expected, as procedures write it
     * @param got the outcome it has
     * @param why what led to it, a line each
     */
    public record Surprise(String place, String of, String expected, String got, List<String> why) {
        public Surprise {
            why = List.copyOf(why);
        }
    }
}
