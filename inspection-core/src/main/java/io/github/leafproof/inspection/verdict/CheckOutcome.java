package io.github.leafproof.inspection.verdict;

/**
 * One check and what came of it.
 *
 * @param name the check's name
 * @param severity how much hangs on it
 * @param outcome what came of it
 */
public record CheckOutcome(String name, Severity severity, Outcome outcome) {}
