package io.github.leafproof.inspection.gauge;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When a gauge was last measured, and when it should be measured again; either may be unknown.
 *
 * <p>A gauge past its due date still counts, and whoever leans on it says so.
 *
 * @param calibrated the day it was measured
 * @param due the last day on which that measurement is to be relied on without remark
 */
public record Calibration(
        @Nullable LocalDate calibrated, @Nullable LocalDate due) {

    /** Refuses a due date before the calibration itself. */
    public Calibration {
        if (calibrated != null && due != null && due.isBefore(calibrated)) {
            throw new IllegalArgumentException(
                    "due on " + due + ", which is before it was calibrated on " + calibrated);
        }
    }

    /** Nothing is known of when the gauge was measured. */
    public static Calibration unknown() {
        return new Calibration(null, null);
    }

    /** True when the gauge was due before this day. The due day itself still counts as in time. */
    public boolean overdueOn(LocalDate day) {
        return due != null && day.isAfter(due);
    }
}
