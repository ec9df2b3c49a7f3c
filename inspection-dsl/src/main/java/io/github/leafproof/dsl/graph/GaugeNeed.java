package io.github.leafproof.dsl.graph;

import io.github.leafproof.inspection.gauge.Counter;
import io.github.leafproof.inspection.gauge.Gauge;
import io.github.leafproof.inspection.gauge.LeafSet;
import io.github.leafproof.inspection.gauge.PinSet;
import io.github.leafproof.inspection.gauge.ReadingInstrument;
import io.github.leafproof.inspection.quantity.Dimension;
import org.jspecify.annotations.Nullable;

/**
 * A gauge that the tray must hold.
 *
 * @param of what a reading instrument reads; null for every other kind
 */
public record GaugeNeed(String name, Kind kind, @Nullable Dimension of) {

    /** The kinds of gauge. */
    public enum Kind {
        LEAF_SET("a leaf set"),
        PIN_SET("a pin set"),
        READING("an instrument to read"),
        COUNTER("a counter");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The need that a gauge meets best, to say what it is. */
    public static GaugeNeed metBy(Gauge gauge) {
        if (gauge instanceof ReadingInstrument instrument) {
            return new GaugeNeed(gauge.name(), Kind.READING, instrument.of());
        }
        Kind kind = gauge instanceof LeafSet ? Kind.LEAF_SET : gauge instanceof PinSet ? Kind.PIN_SET : Kind.COUNTER;
        return new GaugeNeed(gauge.name(), kind, null);
    }

    /** In words: {@code an instrument to read temperature}. */
    public String words() {
        return of == null ? kind.words() : kind.words() + " " + of.words();
    }

    /** Whether a gauge of the tray is of this kind. */
    public boolean isMetBy(Gauge gauge) {
        return switch (kind) {
            case LEAF_SET -> gauge instanceof LeafSet;
            case PIN_SET -> gauge instanceof PinSet;
            case COUNTER -> gauge instanceof Counter;
            case READING ->
                gauge instanceof ReadingInstrument instrument
                        && of != null
                        && instrument.of().equals(of);
        };
    }
}
