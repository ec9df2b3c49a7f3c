package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Series;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An instrument that shows a number: a thermometer, a depth gauge, a rev counter.
 *
 * <p>Two errors come with every reading. The calibration error is the instrument's own and the same each time, so the
 * difference of two readings does not contain it. The rounding to the last digit shown is new with each reading: d/√12 for
 * a step of d (GUM F.2.2.1, clause from memory).
 *
 * @param name what the shop calls it
 * @param of what it measures
 * @param resolution the smallest step it shows, above zero; null when it counts for nothing beside the uncertainty
 * @param uncertainty how far it may be off; null when only the resolution is known
 * @param calibration when it was compared with something better
 */
public record ReadingInstrument(
        String name,
        Dimension of,
        @Nullable Quantity resolution,
        @Nullable Uncertainty uncertainty,
        Calibration calibration)
        implements Gauge {

    /** Refuses an instrument of which neither resolution nor uncertainty is known: its readings would prove anything. */
    public ReadingInstrument {
        GaugeTerms.requireName(name, "a reading instrument");
        if (resolution == null && uncertainty == null) {
            throw new IllegalArgumentException(name
                    + " needs a resolution or an uncertainty, or both: an instrument without either is never wrong");
        }
        if (resolution != null) {
            requireStepOf(of, resolution, name);
        }
        if (uncertainty != null && !uncertainty.dimension().equals(of.difference())) {
            throw new IllegalArgumentException("the uncertainty of " + name + " must be a "
                    + of.difference().words() + ", not a "
                    + uncertainty.dimension().words());
        }
    }

    @Override
    public String kind() {
        return "reading";
    }

    @Override
    public Set<String> lastingErrors() {
        return uncertainty == null ? Set.of() : Set.of(name);
    }

    /**
     * What is known after reading the instrument once.
     *
     * @param shown what it showed, of the instrument's dimension
     * @param readingName names this reading among all readings, so that its rounding is its own
     * @throws IllegalArgumentException when {@code shown} is of another dimension
     */
    public Estimate read(Quantity shown, String readingName) {
        requireReadingOf(shown);
        Estimate reading =
                uncertainty == null ? Estimate.exact(shown) : Estimate.of(shown, uncertainty, Source.stated(name));
        return resolution == null
                ? reading
                : reading.withIndependent(
                        Uncertainty.ofResolution(resolution), Source.withinLimits(lastDigit(readingName)));
    }

    /**
     * What is known after reading the instrument several times. What it may be off is the same each time.
     *
     * @param shown what it showed, in order, each of the instrument's dimension; one or more
     * @param seriesName names these readings among all
     * @throws IllegalArgumentException when something shown is of another dimension
     */
    public Series read(List<Quantity> shown, String seriesName) {
        shown.forEach(this::requireReadingOf);
        Dimension difference = of.difference();
        Estimate off = uncertainty == null
                ? Estimate.exact(0, difference)
                : Estimate.of(Quantity.of(0, shown.get(0).unit().difference()), uncertainty, Source.stated(name));
        double digit = resolution == null ? 0 : Uncertainty.ofResolution(resolution);
        return Series.of(seriesName, shown).takenWith(new Series.Instrument(off, digit, lastDigit(seriesName)));
    }

    private String lastDigit(String readingName) {
        return name + ", last digit of " + readingName;
    }

    private void requireReadingOf(Quantity shown) {
        if (!shown.dimension().equals(of)) {
            throw new IllegalArgumentException(name + " reads " + of.words() + ", but " + shown
                    + " is of another kind (" + shown.dimension().words() + ")");
        }
    }

    private static void requireStepOf(Dimension of, Quantity resolution, String name) {
        if (!resolution.dimension().equals(of.difference())) {
            throw new IllegalArgumentException("the resolution of " + name + " must be a "
                    + of.difference().words() + "; " + resolution + " is a "
                    + resolution.dimension().words());
        }
        if (resolution.base() <= 0) {
            throw new IllegalArgumentException("the resolution of " + name + " must be above zero, not " + resolution);
        }
    }
}
