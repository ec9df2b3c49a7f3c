package io.github.leafproof.dsl.fuzz;

import java.util.List;
import java.util.Random;

/** Where choices come from: a fuzzer's bytes, which it can learn from, or a seed. */
public interface Chance {

    /** A number from 0 up to, not including, a bound. */
    int below(int bound);

    /** The choices that a fuzzer's input stands for, a byte each; once it is used up, always the first. */
    static Chance of(byte[] input) {
        int[] used = {0};
        return bound -> used[0] == input.length ? 0 : Byte.toUnsignedInt(input[used[0]++]) % bound;
    }

    /** The same choices for the same seed. */
    static Chance of(long seed) {
        return new Random(seed)::nextInt;
    }

    /** Once in so many times, and never once an input is used up. */
    default boolean oneIn(int times) {
        return below(times) == times - 1;
    }

    default <T> T of(List<T> some) {
        return some.get(below(some.size()));
    }
}
