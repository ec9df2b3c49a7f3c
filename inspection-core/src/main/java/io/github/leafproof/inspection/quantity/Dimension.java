package io.github.leafproof.inspection.quantity;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntBinaryOperator;
import java.util.stream.IntStream;

/**
 * What kind of amount a quantity is: a length, a pressure, a length per turn.
 *
 * <p>A dimension is a product of powers of length, mass, time, temperature and angle. Angle counts as a dimension of its
 * own, so that a screw's pitch (length per turn) is not mistaken for a length. An absolute temperature, such as a head at
 * 21 °C, is another dimension than a temperature difference, such as 3 K: their zero points differ, and
 * {@link #sum}/{@link #difference} know what may be added to what. In products and quotients an absolute temperature
 * counts from absolute zero, and the result is never absolute.
 *
 * <p>Work and torque are both force times length here, and a leak's throughput is a power; words name the commoner one.
 */
public final class Dimension {
    private static final List<String> BASES = List.of("length", "mass", "time", "temperature difference", "angle");
    private static final Map<String, Dimension> NAMED = new LinkedHashMap<>();

    /** A plain number: a ratio, a percentage, a count. */
    public static final Dimension RATIO = named("ratio", 0, 0, 0, 0, 0);

    public static final Dimension LENGTH = named("length", 1, 0, 0, 0, 0);
    public static final Dimension MASS = named("mass", 0, 1, 0, 0, 0);
    public static final Dimension TIME = named("time", 0, 0, 1, 0, 0);

    /** How warm something is, on a scale with a zero point: 21 °C. */
    public static final Dimension TEMPERATURE = absoluteTemperature();

    /** How much warmer one thing is than another: 3 K. */
    public static final Dimension TEMPERATURE_DIFFERENCE = named("temperature difference", 0, 0, 0, 1, 0);

    public static final Dimension ANGLE = named("angle", 0, 0, 0, 0, 1);
    public static final Dimension AREA = named("area", 2, 0, 0, 0, 0);
    public static final Dimension VOLUME = named("volume", 3, 0, 0, 0, 0);
    public static final Dimension SPEED = named("speed", 1, 0, -1, 0, 0);
    public static final Dimension ACCELERATION = named("acceleration", 1, 0, -2, 0, 0);
    public static final Dimension ROTATIONAL_SPEED = named("rotational speed", 0, 0, -1, 0, 1);
    public static final Dimension FORCE = named("force", 1, 1, -2, 0, 0);
    public static final Dimension TORQUE = named("torque", 2, 1, -2, 0, 0);
    public static final Dimension PRESSURE = named("pressure", -1, 1, -2, 0, 0);
    public static final Dimension POWER = named("power", 2, 1, -3, 0, 0);
    public static final Dimension DENSITY = named("density", -3, 1, 0, 0, 0);

    /** What a screw advances in a turn: its pitch, or the lead of a needle's thread. */
    public static final Dimension LENGTH_PER_TURN = named("length per turn", 1, 0, 0, 0, -1);

    public static final Dimension VOLUME_FLOW = named("volume flow", 3, 0, -1, 0, 0);
    public static final Dimension MASS_FLOW = named("mass flow", 0, 1, -1, 0, 0);
    public static final Dimension SPECIFIC_ENERGY = named("specific energy", 2, 0, -2, 0, 0);
    public static final Dimension THERMAL_EXPANSION = named("thermal expansion", 0, 0, 0, -1, 0);

    static {
        NAMED.put("energy", TORQUE);
    }

    private final int[] powers;
    private final boolean absolute;

    private Dimension(int[] powers, boolean absolute) {
        this.powers = powers;
        this.absolute = absolute;
    }

    private static Dimension named(String name, int... powers) {
        Dimension dimension = new Dimension(powers, false);
        NAMED.put(name, dimension);
        return dimension;
    }

    private static Dimension absoluteTemperature() {
        Dimension dimension = new Dimension(new int[] {0, 0, 0, 1, 0}, true);
        NAMED.put("temperature", dimension);
        return dimension;
    }

    /** The dimension with this name, as {@link #words()} gives it; {@code energy} is understood as torque. */
    public static Optional<Dimension> named(String words) {
        return Optional.ofNullable(NAMED.get(words.strip().toLowerCase(Locale.ROOT)));
    }

    /** The names that {@link #named(String)} understands. */
    public static List<String> names() {
        return List.copyOf(NAMED.keySet());
    }

    /** What an amount of {@code a} plus an amount of {@code b} is; empty when they cannot be added. */
    public static Optional<Dimension> sum(Dimension a, Dimension b) {
        if (a.absolute && b.absolute) {
            return Optional.empty();
        }
        if (a.absolute || b.absolute) {
            return a.difference().equals(b.difference()) ? Optional.of(TEMPERATURE) : Optional.empty();
        }
        return a.equals(b) ? Optional.of(a) : Optional.empty();
    }

    /** What an amount of {@code a} less an amount of {@code b} is; empty when they cannot be subtracted. */
    public static Optional<Dimension> difference(Dimension a, Dimension b) {
        if (b.absolute) {
            return a.absolute ? Optional.of(TEMPERATURE_DIFFERENCE) : Optional.empty();
        }
        return sum(a, b);
    }

    /** The dimension of a product. */
    public Dimension times(Dimension other) {
        return combine(other, Integer::sum);
    }

    /** The dimension of a quotient. */
    public Dimension dividedBy(Dimension other) {
        return combine(other, (mine, its) -> mine - its);
    }

    /** The dimension of a power; the power may be zero or negative. */
    public Dimension power(int exponent) {
        return of(IntStream.of(powers).map(p -> p * exponent).toArray());
    }

    /** The dimension whose {@code degree}-th power this is; empty when there is none, as for the square root of a length. */
    public Optional<Dimension> root(int degree) {
        if (degree < 1) {
            throw new IllegalArgumentException("a root has a degree of one or more, not " + degree);
        }
        boolean whole = IntStream.of(powers).allMatch(p -> p % degree == 0);
        return whole ? Optional.of(of(IntStream.of(powers).map(p -> p / degree).toArray())) : Optional.empty();
    }

    /** The same kind of amount as a difference: temperature difference for temperature, itself for all others. */
    public Dimension difference() {
        return absolute ? TEMPERATURE_DIFFERENCE : this;
    }

    /** True for temperature alone, whose zero point is not the zero of its scales. */
    public boolean isAbsolute() {
        return absolute;
    }

    /** True for a plain number. */
    public boolean isRatio() {
        return equals(RATIO);
    }

    /** The dimension as people say it: {@code length}, {@code length per turn}; {@code area per time} has no name of its own. */
    public String words() {
        return NAMED.entrySet().stream()
                .filter(entry -> entry.getValue().equals(this))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseGet(this::spelledOut);
    }

    /** The name with its article, for use in a sentence: {@code a length}, {@code an angle}, {@code an amount per time}. */
    public String phrase() {
        String words = words();
        if (words.startsWith("per ")) {
            return "an amount " + words;
        }
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    private String spelledOut() {
        StringBuilder words = new StringBuilder();
        for (int base = 0; base < BASES.size(); base++) {
            if (powers[base] > 0) {
                words.append(words.isEmpty() ? "" : " × ").append(raised(base));
            }
        }
        for (int base = 0; base < BASES.size(); base++) {
            if (powers[base] < 0) {
                words.append(words.isEmpty() ? "per " : " per ").append(raised(base));
            }
        }
        return words.toString();
    }

    private String raised(int base) {
        return BASES.get(base) + Superscript.ofPower(Math.abs(powers[base]));
    }

    /** The powers of length, mass, time, temperature and angle. */
    int[] powers() {
        return powers.clone();
    }

    private Dimension combine(Dimension other, IntBinaryOperator operation) {
        int[] combined = new int[powers.length];
        for (int i = 0; i < combined.length; i++) {
            combined[i] = operation.applyAsInt(powers[i], other.powers[i]);
        }
        return of(combined);
    }

    private static Dimension of(int[] powers) {
        return new Dimension(powers, false);
    }

    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Dimension that && absolute == that.absolute && Arrays.equals(powers, that.powers));
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(powers) + Boolean.hashCode(absolute);
    }

    @Override
    public String toString() {
        return words();
    }
}
