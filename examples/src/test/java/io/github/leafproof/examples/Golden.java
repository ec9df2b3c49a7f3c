package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts that a person has read and found right. {@code -Dgolden.write=true} writes them anew; whoever does so reads
 * what changed before committing it.
 */
final class Golden {
    private static final boolean WRITE = Boolean.getBoolean("golden.write");

    private Golden() {}

    static void holds(Path file, String text) throws IOException {
        if (WRITE) {
            Files.createDirectories(file.getParent());
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        }
        assertThat(file).as("missing; -Dgolden.write=true makes it").exists();
        assertThat(text).isEqualTo(Project.text(file));
    }
}
