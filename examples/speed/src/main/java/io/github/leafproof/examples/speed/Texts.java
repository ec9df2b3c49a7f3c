package io.github.leafproof.examples.speed;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The rules of the common work in the languages of the comparison. */
final class Texts {
    private Texts() {}

    static String ofCommonWork(String language) {
        try (InputStream in = Texts.class.getResourceAsStream("common_work." + language)) {
            return new String(Objects.requireNonNull(in, language).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
