package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.inspection.quantity.Estimate;
import org.jspecify.annotations.Nullable;

/** Where a whole estimate, sources of error and all, is found among the values of the slots: in one number. */
final class Origin {

    private static final int VALUE = 0;
    private static final int MIDDLE = 1;
    private static final int STATISTIC = 2;
    private static final Statistic[] STATISTICS = Statistic.values();
    private static final int KINDS = STATISTIC + STATISTICS.length;

    private Origin() {}

    /** The number in a slot. */
    static int ofValue(int slot) {
        return slot * KINDS + VALUE;
    }

    /** The middle of the gap in a slot. */
    static int ofMiddle(int slot) {
        return slot * KINDS + MIDDLE;
    }

    /** A statistic of the readings in a slot. */
    static int ofStatistic(int slot, Statistic statistic) {
        return slot * KINDS + STATISTIC + Truth.number(statistic);
    }

    /**
     * The estimate that is there.
     *
     * @param given the values that somebody entered; null for what is computed
     * @param computed the values that the interpreter computed
     */
    static Estimate estimate(int origin, Value[] given, Value[] computed) {
        int slot = origin / KINDS;
        int kind = origin % KINDS;
        Value value = given[slot] == null ? computed[slot] : given[slot];
        @Nullable Estimate found = null;
        if (kind == VALUE && value instanceof Value.Amount amount) {
            found = amount.estimate();
        } else if (kind == MIDDLE && value instanceof Value.Felt felt) {
            found = felt.middle().orElse(null);
        } else if (kind >= STATISTIC && value instanceof Value.Readings readings) {
            found = readings.statistics().get(STATISTICS[kind - STATISTIC]);
        }
        if (found == null) {
            throw new IllegalStateException("there is no estimate");
        }
        return found;
    }
}
