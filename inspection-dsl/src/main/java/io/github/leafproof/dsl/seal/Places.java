package io.github.leafproof.dsl.seal;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the files that a report rests on may lie now.
 *
 * @param folders that the report's names are seen from, the likeliest first; what is not there under its name is looked for
 *     below them
 * @param procedure the procedure's file, where somebody says which it is; else null
 * @param root the folder that the procedure's parts are named from; null for the procedure's own
 */
public record Places(
        List<Path> folders,
        @Nullable Path procedure,
        @Nullable Path root) {
    public Places {
        folders = List.copyOf(folders);
    }
}
