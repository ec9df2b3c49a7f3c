package io.github.leafproof.inspection.mechanism;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What one input of a calculation must be, compared with the others: a rod longer than the crank's throw.
 *
 * @param input which of the inputs
 * @param side which way it must differ
 * @param words the limit in words
 * @param limit the limit, from all inputs in coherent SI units
 * @param otherwise what would follow otherwise, after "or"
 */
record Bound(Input input, Side side, String words, ToDoubleFunction<double[]> limit, String otherwise) {

    /** Which way. */
    enum Side {
        ABOVE("above"),
        AT_LEAST("at least"),
        BELOW("below"),
        AT_MOST("at most");

        private final String words;

        Side(String words) {
            this.words = words;
        }

        private boolean holds(double value, double limit) {
            return switch (this) {
                case ABOVE -> value > limit;
                case AT_LEAST -> value >= limit;
                case BELOW -> value < limit;
                case AT_MOST -> value <= limit;
            };
        }
    }

    String condition() {
        return input.words() + " must be " + side.words + " " + words;
    }

    Optional<String> refused(double[] all, int place) {
        double bound = limit.applyAsDouble(all);
        if (side.holds(all[place], bound)) {
            return Optional.empty();
        }
        return Optional.of(input.is(all[place]) + " and must be " + side.words + " " + words + ", " + input.limit(bound)
                + ", or " + otherwise);
    }
}
