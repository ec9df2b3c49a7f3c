package io.github.leafproof.dsl.archive;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Job sheets that were kept: files, folders of files, and files with a sheet in each line. However many there are, they are
 * looked at one after the other, and none is held.
 */
public final class Archive {

    private final List<Source> sources;

    private Archive(List<Source> sources) {
        this.sources = List.copyOf(sources);
    }

    /** A part of an archive. */
    public sealed interface Source {

        /**
         * A file or a folder. In a folder every file below it counts whose name ends in {@code .json} or {@code .jsonl}, in
         * the order of the names, folders among them; links to folders are not followed. A file whose name ends in
         * {@code .jsonl} holds a sheet in each of its lines, any other is one sheet.
         */
        record At(Path path) implements Source {}

        /**
         * Sheets that come in, one a line.
         *
         * @param name what messages call it
         * @param bytes the lines; whoever opened them closes them
         * @param folder the folder that the sheets name their cards and trays from
         */
        record Lines(String name, InputStream bytes, Path folder) implements Source {}
    }

    /** The archive of these parts, in this order. */
    public static Archive of(List<Source> sources) {
        return new Archive(sources);
    }

    /** The archive of these files and folders, in this order. */
    public static Archive at(List<Path> paths) {
        return of(paths.stream().<Source>map(Source.At::new).toList());
    }

    /**
     * The sheets. What cannot be had of the archive is a sheet that cannot be read. To be closed when it is not read to its
     * end, and safe to close always.
     */
    public Stream<Filed> sheets() {
        Walk walk = new Walk(sources);
        return StreamSupport.stream(
                        Spliterators.spliteratorUnknownSize(walk, Spliterator.ORDERED | Spliterator.NONNULL), false)
                .onClose(walk::close);
    }
}
