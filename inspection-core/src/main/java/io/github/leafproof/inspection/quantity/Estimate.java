package io.github.leafproof.inspection.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * A value, how well it is known, and why no better.
 *
 * <p>Uncertainty is carried to first order (JCGM 100 clause 5): each estimate remembers, for every source of error, how
 * much the value moves when that source errs by one standard uncertainty. What two values share therefore cancels in their
 * difference and adds up in their sum, with no correlation ever to be stated by hand. Values and uncertainties are in
 * coherent SI units (m, kg, s, K, rad).
 *
 * <p>First order has an end: where a function has no slope, as a square at zero, its uncertainty vanishes although the value
 * is plainly uncertain (JCGM 101 clause 9.4, clause from memory). Ask for the amount itself there, not for its square, or
 * ask {@link MonteCarlo}.
 *
 * <p>Callers have checked dimensions before they calculate; a wrong dimension, a division by zero or the root of a negative
 * value is an {@link IllegalArgumentException}.
 */
public final class Estimate {
    private final double value;
    private final Dimension dimension;
    private final Errors errors;

    private Estimate(double value, Dimension dimension, Errors errors) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(dimension.phrase() + " of " + value + " is not an amount");
        }
        this.value = value;
        this.dimension = dimension;
        this.errors = errors;
    }

    /** An amount known exactly, such as a limit. */
    public static Estimate exact(Quantity quantity) {
        return exact(quantity.base(), quantity.dimension());
    }

    /** An amount known exactly, in coherent SI units. */
    public static Estimate exact(double base, Dimension dimension) {
        return new Estimate(base, dimension, Errors.NONE);
    }

    /**
     * An amount with a stated uncertainty, whose statement also says which law the source follows.
     *
     * @throws QuantityException when the uncertainty is not an amount of the same kind
     */
    public static Estimate of(Quantity value, Uncertainty uncertainty, Source source) {
        Dimension of = value.dimension().difference();
        if (!of.equals(uncertainty.dimension())) {
            throw new QuantityException(
                    "an uncertainty given as " + uncertainty.dimension().phrase() + " says nothing about "
                            + value.dimension().phrase(),
                    "give the uncertainty as " + of.phrase());
        }
        Source shaped = source.shaped(uncertainty.shape());
        return of(value.base(), value.dimension(), uncertainty.standard(), shaped);
    }

    /** An amount with standard uncertainty {@code u}, both in coherent SI units. */
    public static Estimate of(double base, Dimension dimension, double u, Source source) {
        return new Estimate(base, dimension, Errors.of(source, u));
    }

    /**
     * The mean of readings repeated under the same conditions: its uncertainty is s/√n, with n − 1 degrees of freedom
     * (JCGM 100 clause 4.2). Readings without any spread give a mean without uncertainty; the instrument's own must be
     * added in any case.
     */
    public static Estimate ofReadings(List<Double> base, Dimension dimension, String source) {
        return readTogether(List.of(base), List.of(dimension), source).get(0);
    }

    /**
     * The means of several amounts read together, round by round. What moves them together from round to round is kept
     * (JCGM 100 clause 5.2.3), and all share one source with n − 1 degrees of freedom.
     *
     * @param series one list of readings for each amount, all of the same length of two or more
     * @param dimensions what each amount is
     * @param source the name of the occasion; no other occasion may have it
     */
    public static List<Estimate> readTogether(List<List<Double>> series, List<Dimension> dimensions, String source) {
        if (series.size() != dimensions.size()) {
            throw new IllegalArgumentException("every series needs its dimension");
        }
        int rounds = series.get(0).size();
        if (rounds < 2 || series.stream().anyMatch(readings -> readings.size() != rounds)) {
            throw new IllegalArgumentException(
                    "readings of " + source + " must be two or more, as many of one amount as of the other");
        }
        Source spread = new Source(source, rounds - 1.0);
        List<Estimate> means = new ArrayList<>();
        for (int i = 0; i < series.size(); i++) {
            List<Double> readings = series.get(i);
            double mean = mean(readings);
            means.add(new Estimate(mean, dimensions.get(i), Errors.ofRounds(spread, readings, mean)));
        }
        return List.copyOf(means);
    }

    // The mean of differences from the first reading: equal readings give exactly that reading.
    private static double mean(List<Double> readings) {
        double first = readings.get(0);
        return first + readings.stream().mapToDouble(r -> r - first).sum() / readings.size();
    }

    /** The value in coherent SI units. */
    public double value() {
        return value;
    }

    /** The combined standard uncertainty in coherent SI units; zero for an exact amount. */
    public double standardUncertainty() {
        return errors.standard();
    }

    /**
     * The effective degrees of freedom of the uncertainty (Welch and Satterthwaite, JCGM 100 clause G.4); infinite when
     * every source is stated rather than found by repeating.
     */
    public double degreesOfFreedom() {
        return errors.degreesOfFreedom();
    }

    /** What the value is an amount of. */
    public Dimension dimension() {
        return dimension;
    }

    /** True when nothing about the value is uncertain. */
    public boolean isExact() {
        return errors.isNone();
    }

    /** This amount and another; a temperature may take a temperature difference. */
    public Estimate plus(Estimate other) {
        Optional<Dimension> sum = Dimension.sum(dimension, other.dimension);
        if (sum.isEmpty()) {
            throw wrong("added to", other);
        }
        return new Estimate(value + other.value, sum.get(), Errors.combined(1, errors, 1, other.errors));
    }

    /** This amount less another; of two temperatures, their difference. */
    public Estimate minus(Estimate other) {
        Optional<Dimension> left = Dimension.difference(dimension, other.dimension);
        if (left.isEmpty()) {
            throw wrong("reduced by", other);
        }
        return new Estimate(value - other.value, left.get(), Errors.combined(1, errors, -1, other.errors));
    }

    /** The product; a temperature counts from absolute zero. */
    public Estimate times(Estimate other) {
        return new Estimate(
                value * other.value,
                dimension.times(other.dimension),
                Errors.combined(other.value, errors, value, other.errors));
    }

    /** The quotient; a temperature counts from absolute zero. */
    public Estimate dividedBy(Estimate other) {
        if (other.value == 0) {
            throw new IllegalArgumentException(
                    dimension.phrase() + " cannot be divided by " + other.dimension.phrase() + " of zero");
        }
        return new Estimate(
                value / other.value,
                dimension.dividedBy(other.dimension),
                Errors.combined(1 / other.value, errors, -value / other.value / other.value, other.errors));
    }

    /** The opposite amount; a temperature has none. */
    public Estimate negated() {
        if (dimension.isAbsolute()) {
            throw new IllegalArgumentException("a temperature has no opposite; only a difference has");
        }
        return new Estimate(-value, dimension, errors.scaled(-1));
    }

    /** A whole power, which may be zero or negative. */
    public Estimate power(int exponent) {
        if (value == 0 && exponent < 0) {
            throw new IllegalArgumentException(dimension.phrase() + " of zero has no power of " + exponent);
        }
        double slope = exponent == 0 ? 0 : exponent * Math.pow(value, exponent - 1.0);
        return map(x -> Math.pow(x, exponent), slope, dimension.power(exponent));
    }

    /** The square root; of an uncertain amount only above zero, where the root has a slope. */
    public Estimate sqrt() {
        Dimension root = dimension
                .root(2)
                .orElseThrow(() -> new IllegalArgumentException(dimension.phrase() + " has no square root"));
        if (value < 0 || (value == 0 && !isExact())) {
            throw new IllegalArgumentException(
                    "no square root can be taken of " + Display.of(value, dimension, 0, Unit.coherent(dimension)));
        }
        return map(Math::sqrt, value == 0 ? 0 : 0.5 / Math.sqrt(value), root);
    }

    /** The amount without its sign. */
    public Estimate absolute() {
        return value < 0 ? negated() : this;
    }

    /** So many times this amount; a temperature counts from absolute zero. */
    public Estimate scaledBy(double factor) {
        return times(exact(factor, Dimension.RATIO));
    }

    /**
     * The same amount, made less certain by a source of its own.
     *
     * @throws IllegalArgumentException when the source already has its share here
     */
    public Estimate withIndependent(double u, Source source) {
        if (errors.has(source)) {
            throw new IllegalArgumentException(source.name() + " is already counted");
        }
        return new Estimate(value, dimension, Errors.combined(1, errors, 1, Errors.of(source, u)));
    }

    /**
     * The same amount, its sources of error under other names: what went wrong on one day is not what went wrong on another,
     * although both days call it the same.
     *
     * @throws IllegalArgumentException when two sources would have one name
     */
    public Estimate withSources(UnaryOperator<String> names) {
        return new Estimate(value, dimension, errors.renamed(names));
    }

    /**
     * A function of this amount.
     *
     * @param function the function, of a value in coherent SI units
     * @param derivative its slope at this value
     * @param result what the function's value is an amount of
     */
    public Estimate map(DoubleUnaryOperator function, double derivative, Dimension result) {
        return new Estimate(function.applyAsDouble(value), result, errors.scaled(derivative));
    }

    /**
     * What a model makes of several amounts: how far each moves it is found by trying (JCGM 100 clause 5.1.3, note 2), and
     * what the amounts share, they share in the result.
     *
     * @param model the function, of values in coherent SI units; not a number where it has none
     * @param result what the function's value is an amount of
     * @param inputs the amounts, in the model's order
     */
    public static Estimate through(ToDoubleFunction<double[]> model, Dimension result, List<Estimate> inputs) {
        double[] at = inputs.stream().mapToDouble(Estimate::value).toArray();
        Errors errors = Errors.NONE;
        for (int i = 0; i < at.length; i++) {
            Estimate input = inputs.get(i);
            double slope = input.isExact() ? 0 : Slope.of(model, at, i, input.standardUncertainty());
            errors = Errors.combined(1, errors, slope, input.errors);
        }
        return new Estimate(model.applyAsDouble(at), result, errors);
    }

    /** The smaller of two amounts; of two equal ones, the less certain. */
    public static Estimate min(Estimate a, Estimate b) {
        return choose(a, b, Double.compare(a.value, b.value));
    }

    /** The larger of two amounts; of two equal ones, the less certain. */
    public static Estimate max(Estimate a, Estimate b) {
        return choose(a, b, Double.compare(b.value, a.value));
    }

    private static Estimate choose(Estimate a, Estimate b, int order) {
        if (!a.dimension.equals(b.dimension)) {
            throw a.wrong("compared with", b);
        }
        boolean first = order == 0 ? a.standardUncertainty() >= b.standardUncertainty() : order < 0;
        return first ? a : b;
    }

    /** How far the two err together, from −1 to 1; zero when either is exact. */
    public double correlationWith(Estimate other) {
        double together = standardUncertainty() * other.standardUncertainty();
        return together == 0 ? 0 : Math.max(-1, Math.min(1, errors.covarianceWith(other.errors) / together));
    }

    Errors errors() {
        return errors;
    }

    /** The value in one trial, in which every source errs as the trial says. */
    double drawn(MonteCarlo.Trial trial) {
        return value + errors.drawn(trial);
    }

    /** What each source adds to the uncertainty, the largest first; a source without effect is left out. */
    public List<Contribution> contributions() {
        Map<Source, Double> shares = new TreeMap<>(errors.bySource());
        return shares.entrySet().stream()
                .map(share -> new Contribution(share.getKey().name(), share.getValue()))
                .sorted(Comparator.comparingDouble((Contribution c) -> -c.amount())
                        .thenComparing(Contribution::source))
                .toList();
    }

    private IllegalArgumentException wrong(String deed, Estimate other) {
        return new IllegalArgumentException(dimension.phrase() + " cannot be " + deed + " " + other.dimension.phrase());
    }

    /** The value with its uncertainty, in metric units. */
    @Override
    public String toString() {
        return Display.withUncertainty(this, UnitSystem.METRIC);
    }
}
