package io.github.leafproof.examples.speed;

import io.github.leafproof.inspection.verdict.Coverage;
import java.util.Arrays;

/**
 * The eleven verdicts on one engine and its release, in numbers, since all engines of the comparison know these. One object is
 * filled again and again, so that nobody pays for the place that the answer is put in.
 */
public final class Verdicts {
    public static final int PASSES = 0;
    public static final int FAILS = 1;
    public static final int OPEN = 2;
    public static final int BLOCKED = 3;

    public static final int READY = 0;
    public static final int HOLD = 1;
    public static final int REJECT = 2;
    public static final int UNFINISHED = 3;

    public static final int COLD = 0;
    public static final int LASH_INTAKE = 1;
    public static final int LASH_EXHAUST = 2;
    public static final int RECESS = 3;
    public static final int NEEDLE = 4;
    public static final int OPENING = 5;
    public static final int PRIME = 6;
    public static final int FASTENERS = 7;
    public static final int BOX = 8;
    public static final int COMPRESSION = 9;
    public static final int COVERS = 10;
    public static final int RELEASE = 11;

    private final int[] numbers = new int[12];

    public int get(int check) {
        return numbers[check];
    }

    public void set(int check, int verdict) {
        numbers[check] = verdict;
    }

    /** Φ, the normal law: the same method for every engine. */
    public static double phi(double z) {
        return Coverage.probabilityBelow(z, Double.POSITIVE_INFINITY);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Verdicts verdicts && Arrays.equals(numbers, verdicts.numbers);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers);
    }

    @Override
    public String toString() {
        return Arrays.toString(numbers);
    }
}
