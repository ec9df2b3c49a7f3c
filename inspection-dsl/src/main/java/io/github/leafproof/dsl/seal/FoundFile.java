package io.github.leafproof.dsl.seal;

import io.github.leafproof.inspection.record.Document;
import org.jspecify.annotations.Nullable;

/**
 * What became of a file that a report rests on.
 *
 * @param file the file that stands for it now; null where none was found
 */
public record FoundFile(NamedFile named, @Nullable Document<byte[]> file) {

    /** Whether it is still the same. */
    public enum State {
        UNCHANGED,
        CHANGED,
        MISSING
    }

    /** Whether it is still the same. */
    public State state() {
        if (file == null) {
            return State.MISSING;
        }
        return file.sha256().equals(named.sha256()) ? State.UNCHANGED : State.CHANGED;
    }

    boolean is(NamedFile.Role role) {
        return named.role() == role;
    }

    /** Its bytes and digest, where it was found. */
    Document<byte[]> orElseThrow() {
        if (file == null) {
            throw new IllegalStateException(named + " was not found");
        }
        return file;
    }
}
