package io.github.leafproof.inspection.record;

import java.util.Map;

/**
 * What a file says, and which file it was: a report names every file it rests on, so that a later reader can tell whether
 * it is still the same.
 *
 * @param content what it says
 * @param name the file as it was named by whoever asked for it
 * @param sha256 the SHA-256 digest of the file's bytes, 64 lower-case hexadecimal digits
 * @param places for JSON paths of the file, such as {@code $.engine.variant}, where they stand in it, as {@link
 *     Problem#place()} says it; of values that stand in a list none
 * @param <T> what the file holds
 */
public record Document<T>(T content, String name, String sha256, Map<String, String> places) {
    public Document {
        places = Map.copyOf(places);
    }

    /** What no file holds, or one whose places nobody will ask for. */
    public Document(T content, String name, String sha256) {
        this(content, name, sha256, Map.of());
    }

    /** Where the value of this JSON path stands; the path itself where that is not known. */
    public String place(String path) {
        return places.getOrDefault(path, path);
    }
}
