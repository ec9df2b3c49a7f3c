package io.github.leafproof.inspection.gauge;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Source;
import io.github.leafproof.inspection.quantity.Uncertainty;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One feeler leaf, or one pin: what is stamped on it, and what it measures.
 *
 * <p>Each leaf is a source of error of its own: its thickness may be off by as much as its uncertainty says, and by the same
 * amount every time it is offered.
 */
public final class Leaf implements Feeler {

    /** How far a marking may be off: common practice, from leaves marked 0.10 mm that measured 0.076 and 0.127 mm. */
    private static final double SHARE_A_MARKING_MAY_BE_OFF = 0.25;

    private static final Uncertainty BY_MICROMETER = Uncertainty.limits(Quantity.parse("0.004 mm"));

    private final String set;
    private final Quantity marked;
    private final @Nullable Quantity measured;
    private final Uncertainty uncertainty;
    private final Calibration calibration;
    private final String label;
    /** Every trial with it asks for this, and every check that rests on the trial. */
    private final Estimate thickness;

    /**
     * A leaf.
     *
     * @param set the set the leaf belongs to; marking and set together name the leaf
     * @param marked the thickness stamped on it, a length above zero
     * @param measured the thickness found with a micrometer, a length above zero; null when nobody has measured it
     * @param uncertainty how well the thickness is known: of the measurement, or of the marking when never measured
     * @param calibration when it was measured
     * @throws IllegalArgumentException if a thickness is no length, or not above zero
     */
    public Leaf(
            String set,
            Quantity marked,
            @Nullable Quantity measured,
            Uncertainty uncertainty,
            Calibration calibration) {
        GaugeTerms.requireName(set, "the set a leaf belongs to");
        GaugeTerms.requireLengthAboveZero(marked, "the marking of a leaf");
        if (measured != null) {
            GaugeTerms.requireLengthAboveZero(measured, "the measured thickness of the leaf marked " + marked);
        }
        if (!uncertainty.dimension().equals(Dimension.LENGTH)) {
            throw new IllegalArgumentException("the uncertainty of the leaf marked " + marked
                    + " must be a length, not a " + uncertainty.dimension().words());
        }
        this.set = set;
        this.marked = marked;
        this.measured = measured;
        this.uncertainty = uncertainty;
        this.calibration = calibration;
        this.label = GaugeTerms.stamped(marked) + " " + marked.unit();
        this.thickness =
                Estimate.of(measured == null ? marked : measured, uncertainty, Source.stated(set + " " + label));
    }

    /** A leaf that was measured. */
    public static Leaf measured(String set, Quantity marked, Quantity measured, Uncertainty uncertainty) {
        return new Leaf(set, marked, measured, uncertainty, Calibration.unknown());
    }

    /**
     * A leaf that was never measured: its marking may be off by a quarter either way (common practice: leaves marked
     * 0.10 mm have measured 0.076 and 0.127 mm).
     */
    public static Leaf asMarked(String set, Quantity marked) {
        return asMarked(set, marked, uncertaintyOfMarking(marked));
    }

    /** A leaf that was never measured, for whose marking somebody vouches within the given uncertainty. */
    public static Leaf asMarked(String set, Quantity marked, Uncertainty uncertainty) {
        return new Leaf(set, marked, null, uncertainty, Calibration.unknown());
    }

    /** What a marking alone is worth: limits of a quarter of it either way (common practice, see {@link #asMarked}). */
    public static Uncertainty uncertaintyOfMarking(Quantity marked) {
        GaugeTerms.requireLengthAboveZero(marked, "the marking of a leaf");
        return Uncertainty.limits(Quantity.of(marked.value() * SHARE_A_MARKING_MAY_BE_OFF, marked.unit()));
    }

    /** What a measurement with an ordinary micrometer is worth: ±4 µm up to 25 mm (DIN 863, from a one-page extract). */
    public static Uncertainty uncertaintyByMicrometer() {
        return BY_MICROMETER;
    }

    /** The same leaf with what is known of its calibration. */
    public Leaf with(Calibration known) {
        return new Leaf(set, marked, measured, uncertainty, known);
    }

    /** The set the leaf belongs to. */
    public String set() {
        return set;
    }

    /** The thickness stamped on it. */
    public Quantity marked() {
        return marked;
    }

    /** The thickness found with a micrometer; null when nobody has measured it. */
    public @Nullable Quantity measured() {
        return measured;
    }

    /** How well the thickness is known. */
    public Uncertainty uncertainty() {
        return uncertainty;
    }

    /** When it was measured. */
    public Calibration calibration() {
        return calibration;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public Estimate thickness() {
        return thickness;
    }

    String errorName() {
        return set + " " + label;
    }

    @Override
    public List<Leaf> leaves() {
        return List.of(this);
    }

    @Override
    public Leaf asIfMeasured() {
        return measured == null ? new Leaf(set, marked, marked, BY_MICROMETER, calibration) : this;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Leaf that
                && set.equals(that.set)
                && marked.equals(that.marked)
                && Objects.equals(measured, that.measured)
                && uncertainty.equals(that.uncertainty)
                && calibration.equals(that.calibration);
    }

    @Override
    public int hashCode() {
        return Objects.hash(set, marked, measured, uncertainty, calibration);
    }

    @Override
    public String toString() {
        return set + " " + label;
    }
}
