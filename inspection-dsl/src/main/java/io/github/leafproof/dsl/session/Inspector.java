package io.github.leafproof.dsl.session;

import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Act;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Who does the work, by which clock, and in which units it is told.
 *
 * @param name as it stands beside each entry; null when the sheet is not to say
 * @param clock gives each entry its time
 */
public record Inspector(@Nullable String name, Clock clock, UnitSystem units) {

    /** Somebody who goes by the machine's clock and thinks in millimetres. */
    public static Inspector named(@Nullable String name) {
        return new Inspector(name, Clock.system(ZoneId.systemDefault()), UnitSystem.METRIC);
    }

    /** The same by another clock. */
    public Inspector byClock(Clock other) {
        return new Inspector(name, other, units);
    }

    /** The same in other units. */
    public Inspector inUnits(UnitSystem other) {
        return new Inspector(name, clock, other);
    }

    /** Who and when, now; nobody enters twice in a second what would have to be told apart by its time. */
    Act.Stamp stamp() {
        return new Act.Stamp(name, OffsetDateTime.now(clock).truncatedTo(ChronoUnit.SECONDS));
    }
}
