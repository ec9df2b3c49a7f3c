package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.report.Parting;
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
     * @param way what led to it, from the entries on, and where that leaves the way to what was expected
     */
    public record Surprise(String place, String of, String expected, String got, Parting way) {

        /** What led to it, a line each. */
        public List<String> why() {
            return way.lines(of);
        }

        /** What was expected and what came, in a line. */
        public String words() {
            return "expected " + of + " " + expected + ", got " + got;
        }
    }
}
