package io.github.leafproof.inspection.gauge;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The gauges a bench has at hand.
 *
 * @param name what the shop calls the tray
 * @param gauges the gauges, no two of the same name; a tray may be empty
 */
public record GaugeTray(String name, List<Gauge> gauges) {

    /** Refuses two gauges of the same name. */
    public GaugeTray {
        GaugeTerms.requireName(name, "a tray");
        gauges = List.copyOf(gauges);
        Set<String> names = new HashSet<>();
        for (Gauge gauge : gauges) {
            if (!names.add(gauge.name())) {
                throw new IllegalArgumentException(name + " has two gauges called " + gauge.name());
            }
        }
    }

    /** The gauge of this name, spelled exactly so. */
    public Optional<Gauge> gauge(String wanted) {
        return gauges.stream().filter(gauge -> gauge.name().equals(wanted)).findFirst();
    }
}
