package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.Compiled;
import java.util.List;

/**
 * The cases of one file, played.
 *
 * @param name the file as it was named
 * @param compiled the procedure in it, or what is wrong with that
 * @param played its cases, or those that were asked for, in the order of the file; none where it does not compile
 */
public record PlayedFile(String name, Compiled compiled, List<Played> played) {

    public PlayedFile {
        played = List.copyOf(played);
    }

    /** How many cases the procedure has, asked for or not. */
    public int cases() {
        return compiled.procedure()
                .map(procedure -> procedure.rehearsals().size())
                .orElse(0);
    }

    /** How many of the played cases came out as expected. */
    public long asExpected() {
        return played.stream().filter(Played::isAsExpected).count();
    }
}
