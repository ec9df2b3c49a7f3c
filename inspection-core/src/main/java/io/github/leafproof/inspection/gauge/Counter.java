package io.github.leafproof.inspection.gauge;

import java.util.Set;

/**
 * Something that counts, such as strokes or turns of the crank; a count is exact.
 *
 * @param name what the shop calls it
 */
public record Counter(String name) implements Gauge {

    /** Refuses an empty name. */
    public Counter {
        GaugeTerms.requireName(name, "a counter");
    }

    @Override
    public String kind() {
        return "counter";
    }

    @Override
    public Set<String> lastingErrors() {
        return Set.of();
    }
}
