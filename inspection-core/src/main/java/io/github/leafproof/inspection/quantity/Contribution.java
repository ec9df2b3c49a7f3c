package io.github.leafproof.inspection.quantity;

/**
 * What one source adds to an estimate's standard uncertainty.
 *
 * @param source the name of the source
 * @param amount its share, |sensitivity| × u, in coherent SI units of the estimate
 */
public record Contribution(String source, double amount) {}
