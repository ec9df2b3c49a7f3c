package io.github.leafproof.inspection.quantity;

import java.util.SplittableRandom;

/**
 * Chance from a seed: the same throws on every machine and with every Java.
 *
 * <p>The platform promises no law for its own normal numbers, so they are made here from 64 random bits at a time, with
 * the functions that it does promise to the last bit ({@link StrictMath}).
 */
final class Dice {
    private static final double STEP = 0x1p-53;

    private final SplittableRandom bits;
    private double spare = Double.NaN;

    Dice(long seed) {
        bits = new SplittableRandom(seed);
    }

    /** Any number from 0 up to 1, both excluded. */
    double uniform() {
        return ((bits.nextLong() >>> 11) + 0.5) * STEP;
    }

    /** The normal law with mean 0 and standard deviation 1: Marsaglia's polar method, which makes two at a time. */
    double normal() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        double x;
        double y;
        double square;
        do {
            x = 2 * uniform() - 1;
            y = 2 * uniform() - 1;
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        double stretch = Math.sqrt(-2 * StrictMath.log(square) / square);
        spare = y * stretch;
        return x * stretch;
    }

    /** χ² with so many degrees of freedom: twice a gamma law of half as many (Marsaglia and Tsang 2000). */
    double chiSquared(double degreesOfFreedom) {
        double half = degreesOfFreedom / 2;
        // Their method starts from 1; below it, a power of a uniform number leads down.
        return half < 1 ? 2 * gamma(half + 1) * StrictMath.pow(uniform(), 1 / half) : 2 * gamma(half);
    }

    private double gamma(double shape) {
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double z = normal();
            double root = 1 + c * z;
            double v = root * root * root;
            if (v > 0 && StrictMath.log(uniform()) < z * z / 2 + d - d * v + d * StrictMath.log(v)) {
                return d * v;
            }
        }
    }
}
