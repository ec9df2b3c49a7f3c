package io.github.leafproof.dsl.rehearsal;

import io.github.leafproof.dsl.Procedure;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The procedures below a folder. Files that are used by procedures and are none themselves stand aside: they have no line
 * that begins with {@code procedure}.
 */
public final class ProcedureFiles {

    private static final String ENDING = ".inspection";

    private ProcedureFiles() {}

    /** Whether a file is called as procedures and their parts are. */
    public static boolean isNamedSo(Path file) {
        return String.valueOf(file.getFileName()).endsWith(ENDING);
    }

    /**
     * All procedures in a folder and the folders in it, by the order of their names. Links to folders are not followed.
     *
     * @throws IOException if a folder cannot be read
     */
    public static List<Path> below(Path folder) throws IOException {
        return below(folder, file -> !Procedure.isPart(file));
    }

    /** All files in a folder and the folders in it that are called as procedures are, parts or not. */
    public static List<Path> allBelow(Path folder) throws IOException {
        return below(folder, file -> true);
    }

    private static List<Path> below(Path folder, Predicate<Path> wanted) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(ProcedureFiles::isNamedSo)
                    .filter(Files::isRegularFile)
                    .sorted(Comparator.comparing(
                            file -> folder.relativize(file).toString().replace('\\', '/')))
                    .filter(wanted)
                    .toList();
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
    }
}
