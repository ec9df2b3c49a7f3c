package io.github.leafproof.dsl.parts;

import io.github.leafproof.dsl.parse.SourceReading;
import io.github.leafproof.dsl.syntax.Part;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The folder that procedures and their parts live in. Nothing outside of it is read, whatever the names and the links in
 * it say: a procedure from a stranger cannot ask for other files of the machine.
 */
public final class ProcedureFolder implements Shelf {

    /** So many files are looked through for one that was probably meant, and folders so deep. */
    private static final int MOST_SEEN = 2_000;

    private static final int DEEPEST_SEEN = 6;

    private final Path root;

    private ProcedureFolder(Path root) {
        this.root = root;
    }

    /** The shelf whose names are seen from this folder. */
    public static ProcedureFolder of(Path root) {
        return new ProcedureFolder(root);
    }

    /** The name that a file has on this shelf; its whole path, which is nobody's name, when it lies elsewhere. */
    public String nameOf(Path file) {
        Path whole = file.toAbsolutePath();
        try {
            Path real = root.toRealPath();
            whole = file.toRealPath();
            return whole.startsWith(real) ? name(real.relativize(whole)) : whole.toString();
        } catch (IOException | SecurityException unreadable) {
            return whole.toString();
        }
    }

    @Override
    public Found find(String name) {
        try {
            Path file = root.resolve(name);
            if (!Files.exists(file)) {
                return new Found.Missing(names());
            }
            Path real = root.toRealPath();
            Path found = file.toRealPath();
            if (!found.startsWith(real)) {
                return new Found.Outside();
            }
            String own = name(real.relativize(found));
            if (!own.equals(name) && own.equalsIgnoreCase(name)) {
                // Some machines do not mind capitals; a procedure shall be found on all of them or on none.
                return new Found.Missing(List.of(own));
            }
            SourceReading reading = SourceReading.read(found, root.resolve(own).toString());
            return reading.source()
                    .<Found>map(text -> new Found.There(new Part(own, text)))
                    .orElseGet(() -> new Found.Unreadable(reading.problems()));
        } catch (IOException | SecurityException | InvalidPathException unreadable) {
            return new Found.Missing(List.of());
        }
    }

    private static String name(Path relative) {
        return relative.toString().replace(relative.getFileSystem().getSeparator(), "/");
    }

    /** What there is instead. */
    private Set<String> names() throws IOException {
        Set<String> names = new TreeSet<>();
        Files.walkFileTree(root, Set.of(), DEEPEST_SEEN, new SimpleFileVisitor<>() {
            private int seen;

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                String name = name(root.relativize(file));
                if (name.endsWith(PartName.ENDING) && !Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                    names.add(name);
                }
                return ++seen < MOST_SEEN ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
                return FileVisitResult.CONTINUE;
            }
        });
        return names;
    }
}
