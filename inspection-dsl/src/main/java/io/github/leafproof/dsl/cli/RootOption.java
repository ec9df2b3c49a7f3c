package io.github.leafproof.dsl.cli;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The folder that the files which a procedure uses are named from: every command that takes a procedure takes it. */
final class RootOption {

    @Option(
            names = "--root",
            paramLabel = "DIR",
            description = "The folder that used files are named from, and that none may lie outside of; the"
                    + " procedure's own folder if not given.")
    private @Nullable Path root;

    Compiled read(Path procedure) {
        return Procedure.read(procedure, of(procedure));
    }

    /** The folder for this procedure. */
    Path of(Path procedure) {
        return Optional.ofNullable(root).orElseGet(() -> folderOf(procedure));
    }

    /** The files that a procedure was put together from, beside its own. */
    Stream<Path> partsOf(Path procedure, Compiled compiled) {
        Path folder = of(procedure);
        return compiled.procedure().stream()
                .flatMap(read -> read.parts().stream())
                .map(part -> folder.resolve(part.name()));
    }

    /** The folder that a file lies in. */
    static Path folderOf(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    }
}
