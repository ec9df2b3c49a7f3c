package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.PlayedFile;
import io.github.leafproof.dsl.syntax.Declaration;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which cases are played. */
final class FilterOption {

    @Option(
            names = "--filter",
            paramLabel = "TEXT",
            description = "Run only the rehearsals whose title holds this text, and all of a procedure whose name does;"
                    + " capitals make no difference. Mistakes in procedures are told all the same.")
    private @Nullable String filter;

    /** Which cases of a procedure are asked for. */
    Predicate<Declaration.Rehearse> of(Procedure procedure) {
        boolean all = holds(procedure.graph().identity().name());
        return each -> all || holds(each.title().plain());
    }

    private boolean holds(String text) {
        return filter == null || text.toLowerCase(Locale.ROOT).contains(filter.toLowerCase(Locale.ROOT));
    }

    /** Whether a file has anything to say: not one that none of the asked cases stands in. */
    boolean concerns(PlayedFile file) {
        return filter == null
                || !file.played().isEmpty()
                || file.compiled().procedure().isEmpty();
    }

    /** Whether not a single case is called so, which is no good news; says so where it is. */
    boolean foundNothing(List<PlayedFile> asked, Console console) {
        boolean nothing = filter != null && asked.isEmpty();
        if (nothing) {
            console.once("leafproof: no rehearsal has \"" + filter + "\" in its title, and no procedure in its name\n"
                    + "   help: without --filter all are run, and their titles listed\n");
        }
        return nothing;
    }
}
