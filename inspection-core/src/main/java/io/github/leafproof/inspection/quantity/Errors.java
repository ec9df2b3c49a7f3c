package io.github.leafproof.inspection.quantity;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much a value moves with each source of error: sensitivity × standard uncertainty, with its sign.
 *
 * <p>A stated source has one component. The spread of readings taken together has one for each round, so that the scatter
 * two amounts share is kept without ever writing down a covariance: the sum over rounds of the products of components is
 * the covariance of the means (JCGM 100 clause 5.2.3).
 */
final class Errors {
    static final Errors NONE = new Errors(new TreeMap<>());

    private final SortedMap<Key, Double> components;

    private Errors(SortedMap<Key, Double> components) {
        this.components = components;
    }

    private record Key(Source source, int component) implements Comparable<Key> {
        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::source).thenComparingInt(Key::component);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    static Errors of(Source source, double u) {
        if (!(u >= 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException("the standard uncertainty of " + source.name() + " cannot be " + u);
        }
        SortedMap<Key, Double> components = new TreeMap<>();
        put(components, new Key(source, 0), u);
        return new Errors(components);
    }

    static Errors ofRounds(Source spread, List<Double> readings, double mean) {
        double n = readings.size();
        double scale = Math.sqrt(n * (n - 1));
        SortedMap<Key, Double> components = new TreeMap<>();
        for (int round = 0; round < readings.size(); round++) {
            put(components, new Key(spread, round), (readings.get(round) - mean) / scale);
        }
        return new Errors(components);
    }

    static Errors combined(double a, Errors first, double b, Errors second) {
        SortedMap<Key, Double> components = new TreeMap<>();
        first.components.forEach((key, error) -> put(components, key, a * error));
        second.components.forEach((key, error) -> put(components, key, components.getOrDefault(key, 0.0) + b * error));
        return new Errors(components);
    }

    Errors scaled(double factor) {
        return combined(factor, this, 0, NONE);
    }

    // What cancels is gone: a share of nothing must not show up in a report.
    private static void put(SortedMap<Key, Double> components, Key key, double error) {
        if (!Double.isFinite(error)) {
            throw new IllegalArgumentException(
                    "the uncertainty from " + key.source().name() + " grows without bound");
        }
        if (error == 0) {
            components.remove(key);
        } else {
            components.put(key, error);
        }
    }

    boolean isNone() {
        return components.isEmpty();
    }

    boolean has(Source source) {
        return components.keySet().stream().anyMatch(key -> key.source().equals(source));
    }

    double standard() {
        return rootSumSquare(components.values());
    }

    Map<Source, Double> bySource() {
        Map<Source, Double> shares = new TreeMap<>();
        components.forEach((key, error) -> shares.merge(key.source(), Math.abs(error), Math::hypot));
        return shares;
    }

    double covarianceWith(Errors other) {
        return components.entrySet().stream()
                .mapToDouble(entry -> entry.getValue() * other.components.getOrDefault(entry.getKey(), 0.0))
                .sum();
    }

    double degreesOfFreedom() {
        double u = standard();
        double inverse = bySource().entrySet().stream()
                .mapToDouble(share ->
                        Math.pow(share.getValue() / u, 4) / share.getKey().degreesOfFreedom())
                .sum();
        return inverse > 0 ? 1 / inverse : Double.POSITIVE_INFINITY;
    }

    private static double rootSumSquare(Iterable<Double> errors) {
        double sum = 0;
        for (double error : errors) {
            sum = Math.hypot(sum, error);
        }
        return sum;
    }
}
