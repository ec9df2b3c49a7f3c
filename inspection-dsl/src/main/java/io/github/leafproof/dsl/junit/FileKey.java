package io.github.leafproof.dsl.junit;

import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * What unique ids call a file, so that they are the same on every machine: its name on the class path where it has one, and
 * else its path as seen from the folder that the tests run in.
 */
final class FileKey {

    private static final String ON_CLASS_PATH = "classpath:";

    private FileKey() {}

    static String of(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        for (Path root : resources("")) {
            if (whole.startsWith(root)) {
                String key = ON_CLASS_PATH + slashed(root.relativize(whole));
                // Another file of that name may stand in front of it.
                if (file(key).filter(whole::equals).isPresent()) {
                    return key;
                }
            }
        }
        Path here = Path.of("").toAbsolutePath();
        return slashed(whole.startsWith(here) ? here.relativize(whole) : whole);
    }

    /** The file of a key; empty when there is none. */
    static Optional<Path> file(String key) {
        try {
            return (key.startsWith(ON_CLASS_PATH)
                            ? resources(key.substring(ON_CLASS_PATH.length())).stream()
                                    .findFirst()
                            : Optional.of(Path.of(key)))
                    .filter(Files::isRegularFile);
        } catch (InvalidPathException noFile) {
            return Optional.empty();
        }
    }

    /** The files and folders of this name on the class path; what lies in jars is not among them. */
    static List<Path> resources(String name) {
        ClassLoader loader = Optional.ofNullable(Thread.currentThread().getContextClassLoader())
                .orElseGet(ClassLoader::getSystemClassLoader);
        List<Path> found = new ArrayList<>();
        try {
            for (URL url : Collections.list(loader.getResources(name))) {
                path(URI.create(url.toString())).ifPresent(found::add);
            }
        } catch (IOException | IllegalArgumentException unreadable) {
            return List.of();
        }
        return found;
    }

    /** The file or folder that an address leads to; empty when it leads elsewhere. */
    static Optional<Path> path(URI uri) {
        try {
            return "file".equals(uri.getScheme())
                    ? Optional.of(Path.of(uri).toAbsolutePath().normalize())
                    : Optional.empty();
        } catch (IllegalArgumentException noFile) {
            return Optional.empty();
        }
    }

    private static String slashed(Path path) {
        return path.toString().replace('\\', '/');
    }
}
