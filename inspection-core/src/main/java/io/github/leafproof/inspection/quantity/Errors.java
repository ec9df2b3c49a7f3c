package io.github.leafproof.inspection.quantity;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * How much a value moves with each source of error: sensitivity × standard uncertainty, with its sign.
 *
 * <p>A stated source has one component. The spread of readings taken together has one for each round, so that the scatter
 * two amounts share is kept without ever writing down a covariance: the sum over rounds of the products of components is
 * the covariance of the means (JCGM 100 clause 5.2.3).
 *
 * <p>Components are kept in the order of their keys, none of them zero: what has cancelled must not show up in a report.
 */
final class Errors {
    static final Errors NONE = new Errors(new Key[0], new double[0]);

    private final Key[] keys;
    private final double[] amounts;

    private Errors(Key[] keys, double[] amounts) {
        this.keys = keys;
        this.amounts = amounts;
    }

    /** One component of one source. */
    record Key(Source source, int component) implements Comparable<Key> {
        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::source).thenComparingInt(Key::component);

        @Override
        public int compareTo(Key other) {
            return this == other ? 0 : ORDER.compare(this, other);
        }

        /** Trials look errors up very many times; what a record brings for this is slow until Java has run for a while. */
        @Override
        public boolean equals(@Nullable Object other) {
            return this == other
                    || (other instanceof Key key && component == key.component && source.equals(key.source));
        }

        @Override
        public int hashCode() {
            return 31 * source.hashCode() + component;
        }
    }

    static Errors of(Source source, double u) {
        if (!(u >= 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException("the standard uncertainty of " + source.name() + " cannot be " + u);
        }
        return u == 0 ? NONE : new Errors(new Key[] {new Key(source, 0)}, new double[] {u});
    }

    static Errors ofRounds(Source spread, List<Double> readings, double mean) {
        double n = readings.size();
        Key[] keys = new Key[readings.size()];
        double[] amounts = new double[readings.size()];
        for (int round = 0; round < keys.length; round++) {
            keys[round] = new Key(spread, round);
            amounts[round] = (readings.get(round) - mean) / Math.sqrt(n * (n - 1));
        }
        return new Errors(keys, amounts).scaled(1);
    }

    /** The errors of a value that moves by {@code a} with the first and by {@code b} with the second. */
    static Errors combined(double a, Errors first, double b, Errors second) {
        int most = first.keys.length + second.keys.length;
        Key[] keys = new Key[most];
        double[] amounts = new double[most];
        int count = combined(
                a,
                first.keys,
                first.amounts,
                first.keys.length,
                b,
                second.keys,
                second.amounts,
                second.keys.length,
                keys,
                amounts);
        if (count < 0) {
            throw new IllegalArgumentException(
                    "the uncertainty from " + keys[~count].source().name() + " grows without bound");
        }
        return count == 0 ? NONE : new Errors(Arrays.copyOf(keys, count), Arrays.copyOf(amounts, count));
    }

    /**
     * The same in rows of so many, each in the order of its keys, into rows that have room for all.
     *
     * @return how many there are; where one grows without bound, the complement of its place
     */
    static int combined(
            double a,
            Key[] firstKeys,
            double[] first,
            int firsts,
            double b,
            Key[] secondKeys,
            double[] second,
            int seconds,
            Key[] keys,
            double[] amounts) {
        int count = 0;
        int i = 0;
        int j = 0;
        while (i < firsts || j < seconds) {
            int order = i == firsts ? 1 : j == seconds ? -1 : firstKeys[i].compareTo(secondKeys[j]);
            Key key = order <= 0 ? firstKeys[i] : secondKeys[j];
            double amount = (order <= 0 ? a * first[i++] : 0) + (order >= 0 ? b * second[j++] : 0);
            keys[count] = key;
            amounts[count] = amount;
            if (!Double.isFinite(amount)) {
                return ~count;
            }
            count += amount == 0 ? 0 : 1;
        }
        return count;
    }

    Errors scaled(double factor) {
        return combined(factor, this, 0, NONE);
    }

    /** The same errors, their sources under other names. */
    Errors renamed(UnaryOperator<String> names) {
        Map<Key, Double> renamed = new TreeMap<>();
        for (int i = 0; i < keys.length; i++) {
            Source source = keys[i].source();
            Source other = new Source(names.apply(source.name()), source.degreesOfFreedom(), source.shape());
            if (renamed.put(new Key(other, keys[i].component()), amounts[i]) != null) {
                throw new IllegalArgumentException("two sources of error would both be called " + other.name());
            }
        }
        return new Errors(
                renamed.keySet().toArray(Key[]::new),
                renamed.values().stream().mapToDouble(Double::doubleValue).toArray());
    }

    boolean isNone() {
        return keys.length == 0;
    }

    boolean has(Source source) {
        return Arrays.stream(keys).anyMatch(key -> key.source().equals(source));
    }

    double standard() {
        return standard(amounts, amounts.length);
    }

    static double standard(double[] amounts, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += amounts[i] * amounts[i];
        }
        return Math.sqrt(sum);
    }

    /** How many components there are. */
    int size() {
        return keys.length;
    }

    /** Copies all into rows that have room for them, and tells how many they are. */
    int copyTo(Key[] intoKeys, double[] intoAmounts) {
        System.arraycopy(keys, 0, intoKeys, 0, keys.length);
        System.arraycopy(amounts, 0, intoAmounts, 0, keys.length);
        return keys.length;
    }

    double covarianceWith(Errors other) {
        double sum = 0;
        int i = 0;
        int j = 0;
        while (i < keys.length && j < other.keys.length) {
            int order = keys[i].compareTo(other.keys[j]);
            sum += order == 0 ? amounts[i] * other.amounts[j] : 0;
            i += order <= 0 ? 1 : 0;
            j += order >= 0 ? 1 : 0;
        }
        return sum;
    }

    /** How far the value is off when every source errs as the trial says. */
    double drawn(MonteCarlo.Trial trial) {
        double off = 0;
        for (int i = 0; i < keys.length; i++) {
            off += amounts[i] * trial.error(keys[i]);
        }
        return off;
    }

    Map<Source, Double> bySource() {
        Map<Source, Double> shares = new TreeMap<>();
        for (int i = 0; i < keys.length; i++) {
            shares.merge(keys[i].source(), Math.abs(amounts[i]), Math::hypot);
        }
        return shares;
    }

    double degreesOfFreedom() {
        return degreesOfFreedom(keys, amounts, keys.length);
    }

    /** Welch and Satterthwaite: u⁴/ν is the sum of the sources' uᵢ⁴/νᵢ. The components of a source stand side by side. */
    static double degreesOfFreedom(Key[] keys, double[] amounts, int count) {
        boolean stated = true;
        for (int i = 0; i < count; i++) {
            stated &= Double.isInfinite(keys[i].source().degreesOfFreedom());
        }
        if (stated) {
            return Double.POSITIVE_INFINITY;
        }
        double u = standard(amounts, count);
        double inverse = 0;
        int next = 0;
        while (next < count) {
            Source source = keys[next].source();
            double share = Math.abs(amounts[next++]);
            while (next < count && keys[next].source().equals(source)) {
                share = Math.hypot(share, Math.abs(amounts[next++]));
            }
            inverse += Math.pow(share / u, 4) / source.degreesOfFreedom();
        }
        return 1 / inverse;
    }
}
