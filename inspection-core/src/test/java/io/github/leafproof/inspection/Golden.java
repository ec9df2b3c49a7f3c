package io.github.leafproof.inspection;

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
    private static final Path FOLDER = Path.of("src", "test", "resources");

    private Golden() {}

    /** Holds a text against the one kept in this file of the test resources. */
    public static void hold(String file, String text) {
        hold(FOLDER.resolve(file), text);
    }

    /** Holds a text against the one kept in this file. */
    public static void hold(Path file, String text) {
        try {
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
