package io.github.leafproof.dsl;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that a person sees, kept word for word. After a change of words run with {@code -Dgolden.write=true} and read the
 * differences.
 */
public final class Golden {

    private static final Path FOLDER = Path.of("src", "test", "resources", "golden");

    private Golden() {}

    /** Holds a text against the one that is kept under this name. */
    public static void hold(String name, String text) {
        try {
            Path file = FOLDER.resolve(name + ".txt");
            if (Boolean.getBoolean("golden.write")) {
                Files.createDirectories(file.resolveSibling(""));
                Files.writeString(file, text);
            }
            assertThat(text).isEqualTo(Files.readString(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
