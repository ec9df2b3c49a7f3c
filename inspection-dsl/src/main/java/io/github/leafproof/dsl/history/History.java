package io.github.leafproof.dsl.history;

import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Report;
import io.github.leafproof.inspection.verdict.Coverage;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the sheets of one engine tell together.
 *
 * @param model the engine's model, by its card
 * @param serial the number on it
 * @param looks the times it was looked at, the earliest first
 * @param findings the checks that found something, in the order in which the procedures ask them
 * @param values what was observed or computed at more than one look
 * @param notes what a reader should know of all this
 * @param units the units that texts show their numbers in
 */
public record History(
        String model,
        String maker,
        String serial,
        List<Look> looks,
        List<Finding> findings,
        List<Followed> values,
        List<String> notes,
        UnitSystem units) {

    /** How sure a rate, its change and the time of the next check are. */
    public static final double CONFIDENCE = 0.95;

    public History {
        looks = List.copyOf(looks);
        findings = List.copyOf(findings);
        values = List.copyOf(values);
        notes = List.copyOf(notes);
    }

    /**
     * One sheet.
     *
     * @param number its place among the looks, from 1
     * @param sheet the job's number or name
     * @param runningTime how long the engine had run in all when it was begun; null when the sheet does not say
     */
    public record Look(
            int number,
            String sheet,
            LocalDate date,
            @Nullable Quantity runningTime,
            @Nullable String condition,
            @Nullable String variant,
            CheckGraph.Identity procedure,
            Release release,
            Report.Input file,
            Report.Input card,
            Report.Input tray) {}

    /** What is left to do, all in all. */
    public enum State {
        /** Nothing is known to be wrong, and nothing waits for another look. */
        CLOSED,
        /** Something waits to be looked at again: a finding that nobody went back to, an open question, a check that is due. */
        TO_BE_LOOKED_AT,
        /** A finding is still there, or something gets worse faster than before. */
        REMAINS
    }

    /** What is left to do, all in all. */
    public State state() {
        boolean worse = values.stream().anyMatch(Followed::isWorsening);
        if (worse || findings.stream().anyMatch(History::isStillWrong)) {
            return State.REMAINS;
        }
        boolean waits =
                findings.stream().anyMatch(finding -> !finding.standing().isSettled())
                        || values.stream().anyMatch(Followed::isDueNow);
        return waits ? State.TO_BE_LOOKED_AT : State.CLOSED;
    }

    /** Whether a change is told from none: its 95 % interval does not hold zero. */
    public static boolean isTold(Estimate change) {
        double k = Coverage.coverageFactor(CONFIDENCE, change.degreesOfFreedom());
        return Math.abs(change.value()) > k * change.standardUncertainty();
    }

    private static boolean isStillWrong(Finding finding) {
        boolean there = finding.standing() == Finding.Standing.REMAINS || finding.standing() == Finding.Standing.STANDS;
        return there && finding.latest() != Outcome.OPEN;
    }
}
