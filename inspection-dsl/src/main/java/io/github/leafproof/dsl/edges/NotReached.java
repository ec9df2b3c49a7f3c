package io.github.leafproof.dsl.edges;

/**
 * A condition of which no edge could be found.
 *
 * @param check the check it belongs to
 * @param condition the condition, as the procedure writes it
 * @param why why there is none, as the end of a sentence
 */
public record NotReached(String check, String condition, String why) {}
