package io.github.leafproof.dsl.seal;

import io.github.leafproof.dsl.seal.NamedFile.Role;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.RawFile;
import io.github.leafproof.inspection.record.Report;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the files that a report rests on. What stands where the report says is the file, changed or not; only what is not
 * there is looked for elsewhere: by its digest, since it may have been given another name, and then by the last part of its name,
 * since all may have been laid into one folder.
 */
final class FileSearch {

    /** So many files and folders are looked through for one that is not in its place, and folders so deep. */
    private static final int MOST_SEEN = 20_000;

    private static final int DEEPEST_SEEN = 6;

    private static final String PROCEDURE_ENDING = ".inspection";
    private static final String JSON_ENDING = ".json";

    private final Places places;
    private final Report report;
    private @Nullable List<Path> around;

    private FileSearch(Places places, Report report) {
        this.places = places;
        this.report = report;
    }

    /** Every file that the report names, with what was found for it, in the report's order. */
    static List<FoundFile> of(Report report, Places places) {
        FileSearch search = new FileSearch(places, report);
        List<FoundFile> found = new ArrayList<>();
        for (NamedFile named : NamedFile.of(report)) {
            found.add(new FoundFile(named, search.find(named, found).orElse(null)));
        }
        return found;
    }

    private Optional<Document<byte[]>> find(NamedFile named, List<FoundFile> before) {
        Predicate<Document<byte[]>> unchanged = file -> file.sha256().equals(named.sha256());
        List<Document<byte[]>> inPlace = inPlace(named, before);
        // A shop goes on writing its procedures: the revision of the report may have been kept under another name.
        Stream<Document<byte[]>> first = named.role() == Role.PROCEDURE && places.procedure() == null
                ? inPlace.stream().filter(unchanged)
                : inPlace.stream();
        return first.findFirst()
                .or(() -> around(named).filter(unchanged).findFirst())
                .or(() -> inPlace.stream().findFirst())
                .or(() -> read(in(places.folders(), lastName(named.name()))).stream()
                        .findFirst());
    }

    private List<Document<byte[]>> inPlace(NamedFile named, List<FoundFile> before) {
        return switch (named.role()) {
            case SHEET, CARD, TRAY -> read(in(places.folders(), named.name()));
            case PART -> read(partsFolder(before).stream().flatMap(folder -> in(List.of(folder), named.name())));
            case PROCEDURE -> places.procedure() != null ? read(Stream.of(places.procedure())) : read(likeNamed());
        };
    }

    /** Files that are called as the procedure is; near its sheet, for a start, as {@code history} looks for it. */
    private Stream<Path> likeNamed() {
        String name = report.procedure().name();
        List<String> names =
                List.of(name + "-" + report.procedure().revision() + PROCEDURE_ENDING, name + PROCEDURE_ENDING);
        String sheet = report.sheet().name();
        List<Path> near = Stream.of("", "/..", "/../..")
                .flatMap(up -> in(places.folders(), up.isEmpty() ? "" : sheet + up))
                .toList();
        return names.stream().flatMap(each -> in(near, each));
    }

    private Optional<Path> partsFolder(List<FoundFile> before) {
        return places.root() != null
                ? Optional.of(places.root())
                : before.stream()
                        .filter(file -> file.is(Role.PROCEDURE) && file.file() != null)
                        .map(file -> Path.of(file.orElseThrow().name()))
                        .map(file -> Optional.ofNullable(file.getParent()).orElse(Path.of("")))
                        .findFirst();
    }

    private static Stream<Path> in(List<Path> folders, String name) {
        try {
            Path asNamed = Path.of(name);
            return folders.stream().map(folder -> folder.resolve(asNamed).normalize());
        } catch (InvalidPathException noName) {
            return Stream.empty();
        }
    }

    /** Those that are files and can be read; whoever cannot read one has not got it. */
    private static List<Document<byte[]>> read(Stream<Path> files) {
        return files.filter(Files::isRegularFile)
                .flatMap(file -> RawFile.read(file).value().stream())
                .toList();
    }

    /** The files below the folders that can be what is looked for, those that lie deepest last. */
    private Stream<Document<byte[]>> around(NamedFile named) {
        if (around == null) {
            around = places.folders().stream()
                    .flatMap(folder -> below(folder).stream())
                    .distinct()
                    .sorted(Comparator.comparingInt(Path::getNameCount).thenComparing(Comparator.naturalOrder()))
                    .toList();
        }
        String ending = named.role() == Role.PROCEDURE || named.role() == Role.PART ? PROCEDURE_ENDING : JSON_ENDING;
        return read(around.stream().filter(file -> file.toString().endsWith(ending))).stream();
    }

    private static List<Path> below(Path folder) {
        List<Path> files = new ArrayList<>();
        try {
            Files.walkFileTree(folder, Set.of(), DEEPEST_SEEN, new SimpleFileVisitor<>() {
                private int seen;

                @Override
                public FileVisitResult preVisitDirectory(Path entered, BasicFileAttributes attributes) {
                    boolean hidden = !entered.equals(folder)
                            && lastName(entered.toString()).startsWith(".");
                    return hidden ? FileVisitResult.SKIP_SUBTREE : seen();
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    String name = file.toString();
                    if (name.endsWith(PROCEDURE_ENDING) || name.endsWith(JSON_ENDING)) {
                        files.add(file.normalize());
                    }
                    return seen();
                }

                private FileVisitResult seen() {
                    return ++seen < MOST_SEEN ? FileVisitResult.CONTINUE : FileVisitResult.TERMINATE;
                }

                @Override
                public FileVisitResult visitFileFailed(Path file, IOException unreadable) {
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException unreadable) {
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException unreadable) {
            // What cannot be looked through holds nothing that could be read.
        }
        return files;
    }

    private static String lastName(String path) {
        return path.substring(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);
    }
}
