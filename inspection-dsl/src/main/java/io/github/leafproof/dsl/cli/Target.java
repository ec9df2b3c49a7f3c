package io.github.leafproof.dsl.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file that a command is to write.
 *
 * @param option the option that names it
 * @param what what is written
 */
record Target(Path file, String option, String what) {

    /** The target of an option; null where the option is not given. */
    static @Nullable Target of(@Nullable Path file, String option, String what) {
        return file == null ? null : new Target(file, option, what);
    }

    /** Written over the file it was made from it would take the evidence with it; says so where it would. */
    boolean overwrites(Path input, Console console) {
        boolean same = isSame(file, input);
        if (same) {
            console.once("leafproof: " + option + " would write the " + what + " over " + input
                    + "\n   help: name another file for the " + what + "\n");
        }
        return same;
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException unreadable) {
            // Then it cannot be written either, and whoever tries says so.
            return false;
        }
    }
}
