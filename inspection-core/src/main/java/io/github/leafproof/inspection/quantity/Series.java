package io.github.leafproof.inspection.quantity;

import java.util.List;
import java.util.Optional;

/**
 * Readings of one thing, repeated under the same conditions, in the order in which they were taken.
 *
 * <p>What they scatter is a Type A uncertainty, known with few degrees of freedom (JCGM 100 clause 4.2). What the
 * instrument may be off is the same in each of them: no number of readings makes it smaller, and a slope does not contain
 * it. The last digit shown counts whole as well, since readings that hardly differ are all rounded the same way.
 */
public final class Series {
    private final String name;
    private final List<Quantity> readings;
    private final Instrument instrument;
    private final List<Double> base;

    /**
     * What is known of the instrument that all readings were taken with.
     *
     * @param off nothing, as uncertain as its calibration leaves it
     * @param digit the standard uncertainty from the last digit it shows, in coherent SI units; zero where it adds none
     * @param digitSource the name of that source, one for each series
     */
    public record Instrument(Estimate off, double digit, String digitSource) {}

    private Series(String name, List<Quantity> readings, Instrument instrument) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException(name + " has no reading");
        }
        Dimension first = readings.get(0).dimension();
        if (!readings.stream().map(Quantity::dimension).allMatch(first::equals)) {
            throw new IllegalArgumentException("the readings of " + name + " are not all of one kind");
        }
        this.name = name;
        this.readings = List.copyOf(readings);
        this.instrument = instrument;
        this.base = readings.stream().map(Quantity::base).toList();
    }

    /**
     * Readings of which nothing is known but what they show: their scatter is all there is to say.
     *
     * @param name what was read; no other series may have the name
     * @param readings one or more, all of one kind
     */
    public static Series of(String name, List<Quantity> readings) {
        Dimension difference = readings.get(0).dimension().difference();
        return new Series(name, readings, new Instrument(Estimate.exact(0, difference), 0, ""));
    }

    /** The same readings, taken with an instrument. */
    public Series takenWith(Instrument known) {
        return new Series(name, readings, known);
    }

    /** The readings of one series, then those of the next, all taken with the same instrument; empty for no series. */
    public static Optional<Series> together(List<Series> parts) {
        List<Quantity> all =
                parts.stream().flatMap(part -> part.readings.stream()).toList();
        return parts.stream().findFirst().map(first -> new Series(first.name, all, first.instrument));
    }

    /** How many there are. */
    public int count() {
        return readings.size();
    }

    /** As they were read, in their order. */
    public List<Quantity> readings() {
        return readings;
    }

    /** What each is an amount of. */
    public Dimension dimension() {
        return readings.get(0).dimension();
    }

    /**
     * The mean, with s/√n and n − 1 degrees of freedom (JCGM 100 clause 4.2.3), and on top of it what the instrument may be
     * off; empty for fewer than two readings.
     */
    public Optional<Estimate> mean() {
        return count() < 2
                ? Optional.empty()
                : Optional.of(withDigit(
                        Estimate.ofReadings(base, dimension(), "scatter of " + name)
                                .plus(instrument.off),
                        1));
    }

    /**
     * The experimental standard deviation s of a single reading (JCGM 100 clause 4.2.2), itself known to s/√(2(n − 1))
     * (annex E.4.3, clause from memory); empty for fewer than two readings.
     */
    public Optional<Estimate> spread() {
        if (count() < 2) {
            return Optional.empty();
        }
        double mean = Estimate.ofReadings(base, dimension(), name).value();
        double squares = base.stream().mapToDouble(r -> (r - mean) * (r - mean)).sum();
        double s = Math.sqrt(squares / (count() - 1));
        Estimate spread = Estimate.of(
                s,
                dimension().difference(),
                s / Math.sqrt(2.0 * (count() - 1)),
                Source.stated("number of readings of " + name));
        return Optional.of(withDigit(spread, 1));
    }

    /**
     * By how much the readings rise from each to the next: the slope of the straight line through them by least squares,
     * known to s/√Σ(i − ī)², with s from what is left over and n − 2 degrees of freedom (JCGM 100 annex H.3, from memory);
     * empty for fewer than three readings.
     */
    public Optional<Estimate> slope() {
        int n = count();
        if (n < 3) {
            return Optional.empty();
        }
        double middle = (n - 1) / 2.0;
        double first = base.get(0);
        double level = base.stream().mapToDouble(r -> r - first).sum() / n;
        double width = n * (n * (double) n - 1) / 12;
        double rise = 0;
        for (int i = 0; i < n; i++) {
            rise += (i - middle) * (base.get(i) - first) / width;
        }
        double left = 0;
        for (int i = 0; i < n; i++) {
            double off = base.get(i) - first - level - rise * (i - middle);
            left += off * off;
        }
        Estimate slope = Estimate.of(
                rise,
                dimension().difference(),
                Math.sqrt(left / (n - 2) / width),
                new Source("scatter about the slope of " + name, n - 2.0));
        return Optional.of(withDigit(slope, 1 / Math.sqrt(width)));
    }

    private Estimate withDigit(Estimate statistic, double share) {
        return instrument.digit == 0
                ? statistic
                : statistic.withIndependent(instrument.digit * share, Source.withinLimits(instrument.digitSource));
    }

    /** The readings as they were read, with commas between. */
    @Override
    public String toString() {
        return String.join(", ", readings.stream().map(Quantity::toString).toList());
    }
}
