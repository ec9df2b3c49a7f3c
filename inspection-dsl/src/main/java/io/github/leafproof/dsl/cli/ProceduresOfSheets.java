package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.Problem;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds the procedures that sheets name, and reads each of them once. */
final class ProceduresOfSheets {

    private static final String ENDING = ".inspection";

    private final @Nullable Path folder;
    private final RootOption root;
    private final @Nullable Target target;
    private final Console console;
    private final Map<Path, Optional<Procedure>> read = new LinkedHashMap<>();

    /**
     * Where to look.
     *
     * @param folder of all procedures; null for the folder of each sheet, then the one above it
     * @param target what the command writes and must not write over one of these; null where it writes nothing
     */
    ProceduresOfSheets(@Nullable Path folder, RootOption root, @Nullable Target target, Console console) {
        this.folder = folder;
        this.root = root;
        this.target = target;
        this.console = console;
    }

    /** The procedure that a sheet was filled in by; empty after telling why it is not there, or what is wrong with it. */
    Optional<Procedure> of(Document<JobSheet> sheet) {
        List<Path> folders = folder == null ? near(Path.of(sheet.name())) : List.of(folder);
        List<String> names = names(sheet.content());
        Optional<Path> file = folders.stream()
                .flatMap(each -> names.stream().map(name -> resolved(each, name)))
                .flatMap(Optional::stream)
                .filter(Files::isRegularFile)
                .findFirst();
        if (file.isEmpty()) {
            console.complainOfFiles(List.of(missing(sheet, folders, names)));
        }
        return file.flatMap(found -> read.computeIfAbsent(found, this::read));
    }

    /** A revision that was kept goes before the one in use now. */
    private static List<String> names(JobSheet sheet) {
        return List.of(sheet.procedure() + "-" + sheet.revision() + ENDING, sheet.procedure() + ENDING);
    }

    private static List<Path> near(Path sheet) {
        Path own = RootOption.folderOf(sheet);
        return List.of(own, own.resolve("..").normalize());
    }

    /** A sheet may name anything; only a name in the folder itself is looked for. */
    private static Optional<Path> resolved(Path folder, String name) {
        try {
            return Path.of(name).getNameCount() == 1 && !Path.of(name).isAbsolute()
                    ? Optional.of(folder.resolve(name))
                    : Optional.empty();
        } catch (InvalidPathException noName) {
            return Optional.empty();
        }
    }

    private static Problem missing(Document<JobSheet> sheet, List<Path> folders, List<String> names) {
        return new Problem(
                FileMistake.LP688.name(),
                sheet.name(),
                sheet.place("$.procedure"),
                "its procedure is not found: there is neither " + String.join(" nor ", names) + " in "
                        + folders.stream().map(ProceduresOfSheets::words).collect(Collectors.joining(" or in ")),
                "name the folder that it lies in with --procedures");
    }

    private static String words(Path folder) {
        return folder.toString().isEmpty() ? "this folder" : folder.toString();
    }

    private Optional<Procedure> read(Path file) {
        Compiled compiled = root.read(file);
        console.complain(compiled.diagnostics());
        boolean overwrites = target != null
                && Stream.concat(Stream.of(file), root.partsOf(file, compiled))
                        .anyMatch(part -> target.overwrites(part, console));
        return overwrites ? Optional.empty() : compiled.procedure();
    }
}
