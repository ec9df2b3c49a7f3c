package io.github.leafproof.inspection.clearance;

/**
 * Two trials that cannot both be right: what entered is thicker than what did not, by more than their uncertainty can
 * explain. Both are to be repeated.
 *
 * @param passing the trial that shows how large the gap is at least
 * @param refusing the trial that shows what it is smaller than
 */
public record Contradiction(FeelTrial passing, FeelTrial refusing) {}
