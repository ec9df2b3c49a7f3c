package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Series;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What can be computed of repeated readings. */
public enum Statistic {
    /** Their mean; what they scatter is part of how well it is known. */
    MEAN("two"),
    /** How far a single reading scatters: the experimental standard deviation. */
    SPREAD("two"),
    /** By how much they rise from each reading to the next. */
    SLOPE("three"),
    /** How many readings there are. */
    COUNT("one");

    private final String fewest;

    Statistic(String fewest) {
        this.fewest = fewest;
    }

    /** All that can be computed of so many readings. */
    static Map<Statistic, Estimate> allOf(Series series) {
        Map<Statistic, Estimate> found = new EnumMap<>(Statistic.class);
        for (Statistic each : values()) {
            each.of(series).ifPresent(estimate -> found.put(each, estimate));
        }
        return Collections.unmodifiableMap(found);
    }

    private Optional<Estimate> of(Series series) {
        return switch (this) {
            case MEAN -> series.mean();
            case SPREAD -> series.spread();
            case SLOPE -> series.slope();
            case COUNT -> Optional.of(Estimate.exact(series.count(), Dimension.RATIO));
        };
    }

    /** How many readings it takes, in a word. */
    String fewest() {
        return fewest;
    }

    /** What it is an amount of, given what each reading is. */
    public Dimension dimension(Dimension reading) {
        return switch (this) {
            case MEAN -> reading;
            case SPREAD, SLOPE -> reading.difference();
            case COUNT -> Dimension.RATIO;
        };
    }

    /** As procedures write it: {@code mean}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one that is written so. */
    public static Optional<Statistic> named(String word) {
        return Arrays.stream(values()).filter(each -> each.word().equals(word)).findFirst();
    }

    /** As procedures write them. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Statistic::word).toList();
    }
}
