package io.github.leafproof.inspection.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

/** Writes a text that a person keeps, such as a procedure, in place of what its file held. */
public final class TextFile {
    private TextFile() {}

    /**
     * Writes the text as UTF-8. Whoever opens the file meanwhile finds the old content or the new one, and never a part;
     * when writing fails, the old content is still whole. A link stays one: what it leads to is written.
     *
     * @return why it could not be written; empty when it was
     */
    public static Optional<Problem> write(Path file, String text) {
        return AtomicFile.write(whereItLeads(file), text.getBytes(StandardCharsets.UTF_8));
    }

    private static Path whereItLeads(Path file) {
        try {
            return file.toRealPath();
        } catch (IOException notThereYet) {
            return file;
        }
    }
}
