package io.github.leafproof.inspection.quantity;

/**
 * A unit with a name of its own: {@code mm}, {@code psi}, {@code °C}.
 *
 * <p>An amount in coherent SI units is (number + shift) × factor; the shift is zero for all but the temperature scales.
 */
record Atom(String symbol, Dimension dimension, Exact factor, Exact shift) {
    static Atom base(String symbol, Dimension dimension) {
        return new Atom(symbol, dimension, Exact.ONE, Exact.ZERO);
    }
}
