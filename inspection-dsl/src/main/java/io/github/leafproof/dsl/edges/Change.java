package io.github.leafproof.dsl.edges;

import io.github.leafproof.inspection.record.Given;

/**
 * Something else to enter for an observation.
 *
 * @param given as a sheet holds it
 * @param text as a rehearsal writes it
 * @param name what a title calls it
 */
record Change(Given given, String text, String name) {

    /** A change that a title calls what a rehearsal writes. */
    static Change of(Given given, String text) {
        return new Change(given, text, text.replace("\"", ""));
    }
}
