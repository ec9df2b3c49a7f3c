package io.github.leafproof.dsl.archive;

import io.github.leafproof.inspection.record.FileMistake;
import io.github.leafproof.inspection.record.Problem;
import io.github.leafproof.inspection.record.SheetLines;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Goes through an archive, depth first. It holds the names of the folders that it stands in, and one open file: that is all
 * that grows with an archive.
 */
final class Walk implements Iterator<Filed> {

    private static final String LINES = ".jsonl";
    private static final String SHEET = ".json";

    private final Deque<Listing> open = new ArrayDeque<>();
    private @Nullable OpenLines lines;
    private @Nullable Filed next;

    Walk(List<Archive.Source> sources) {
        open.push(new Listing(sources, 0, 1, false));
    }

    /** What is left of a folder, or of the parts of the archive; it is the share of the archive between from and to. */
    private static final class Listing {
        private final List<?> things;
        private final double from;
        private final double to;

        /** Whether its files were found rather than named. */
        private final boolean found;

        private int at;

        Listing(List<?> things, double from, double to, boolean found) {
            this.things = things;
            this.from = from;
            this.to = to;
            this.found = found;
        }

        double reached(int index) {
            return from + (to - from) * index / things.size();
        }
    }

    /** A file that is read line by line. */
    private record OpenLines(SheetLines lines, InputStream bytes, Path folder, double from, double to, long size) {

        double reached() {
            return size == 0 ? Double.NaN : from + (to - from) * Math.min(1, (double) lines.taken() / size);
        }
    }

    @Override
    public boolean hasNext() {
        while (next == null && (lines != null || !open.isEmpty())) {
            if (lines != null) {
                next = nextLine(lines);
            } else {
                next = nextOf(open.element());
            }
        }
        return next != null;
    }

    @Override
    public Filed next() {
        if (!hasNext() || next == null) {
            throw new NoSuchElementException("the archive has no further sheet");
        }
        Filed found = next;
        next = null;
        return found;
    }

    private @Nullable Filed nextLine(OpenLines from) {
        if (from.lines().hasNext()) {
            return Filed.of(from.lines().next(), from.folder(), from.reached());
        }
        close();
        return null;
    }

    private @Nullable Filed nextOf(Listing listing) {
        if (listing.at == listing.things.size()) {
            open.pop();
            return null;
        }
        int index = listing.at++;
        Object thing = listing.things.get(index);
        if (thing instanceof Archive.Source.Lines given) {
            SheetLines read = SheetLines.of(given.name(), given.bytes());
            lines = new OpenLines(read, InputStream.nullInputStream(), given.folder(), 0, 1, 0);
            return null;
        }
        Path path = thing instanceof Archive.Source.At at ? at.path() : (Path) thing;
        return at(path, listing.found, listing.reached(index), listing.reached(index + 1));
    }

    private @Nullable Filed at(Path path, boolean found, double from, double to) {
        boolean folder = found ? Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS) : Files.isDirectory(path);
        if (folder) {
            return enter(path, from, to);
        }
        String name = String.valueOf(path.getFileName());
        if (name.endsWith(LINES)) {
            return begin(path, from, to);
        }
        if (!found) {
            return Filed.of(path, to, new Filed.Content.OfFile(path));
        }
        return name.endsWith(SHEET) && Files.isRegularFile(path)
                ? Filed.of(path, to, new Filed.Content.FoundFile(path))
                : null;
    }

    private @Nullable Filed enter(Path folder, double from, double to) {
        try (Stream<Path> listed = Files.list(folder)) {
            // By name and not by Path's own order, which another system has otherwise.
            String[] names =
                    listed.map(each -> String.valueOf(each.getFileName())).toArray(String[]::new);
            Arrays.sort(names);
            List<Path> paths = Stream.of(names).map(folder::resolve).toList();
            open.push(new Listing(paths, from, to, true));
            return null;
        } catch (IOException unreadable) {
            return lost(folder, to, "the folder cannot be looked into");
        }
    }

    private @Nullable Filed begin(Path file, double from, double to) {
        try {
            InputStream bytes = Files.newInputStream(file);
            Path folder = Filed.of(file).folder();
            lines = new OpenLines(
                    SheetLines.of(Filed.named(file), bytes), bytes, folder, from, to, Math.max(1, Files.size(file)));
            return null;
        } catch (IOException unreadable) {
            return lost(file, to, "the file cannot be read");
        }
    }

    private static Filed lost(Path path, double reached, String message) {
        Problem problem = new Problem(
                FileMistake.LP603.name(),
                Filed.named(path),
                "",
                message,
                "check that it is there, that you may read it, and that its disk is there");
        return Filed.of(path, reached, new Filed.Content.OutOfReach(problem));
    }

    void close() {
        OpenLines closing = lines;
        lines = null;
        if (closing != null) {
            try {
                closing.bytes().close();
            } catch (IOException failed) {
                // It was only read: there is nothing left to lose.
                return;
            }
        }
    }
}
