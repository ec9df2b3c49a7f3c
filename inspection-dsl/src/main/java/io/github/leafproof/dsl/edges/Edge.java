package io.github.leafproof.dsl.edges;

import io.github.leafproof.inspection.verdict.Outcome;
import java.util.List;

/**
 * An entry right beside a place where a check comes out otherwise, in a case that is otherwise one of the procedure's own.
 *
 * @param title what it shows, in words that fit a rehearsal
 * @param check the check that it is about
 * @param observation what is entered otherwise than in the case it was made from
 * @param entered what is entered, as rehearsals write it
 * @param outcome what the check comes to
 * @param from the case that all other entries are from
 * @param expected what comes of the check, and of every other check that comes out otherwise than in that case, as
 *     rehearsals write it
 * @param release what comes of the engine
 */
public record Edge(
        String title,
        String check,
        String observation,
        String entered,
        Outcome outcome,
        Base from,
        List<String> expected,
        String release) {
    public Edge {
        expected = List.copyOf(expected);
    }
}
