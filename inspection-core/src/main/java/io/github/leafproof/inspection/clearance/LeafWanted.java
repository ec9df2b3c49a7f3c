package io.github.leafproof.inspection.clearance;

/**
 * A leaf that the tray lacks, and that could settle what the leaves at hand cannot.
 *
 * @param thinnest in metres: what it has to measure at least; zero when any thinner leaf would do
 * @param thickest in metres: what it has to measure at most; infinite when any thicker leaf would do
 * @param result what has to be felt for it to settle the question
 * @param inPair true when it takes the other such leaf, too: one to enter and one to refuse
 */
public record LeafWanted(double thinnest, double thickest, TrialResult result, boolean inPair) {}
