package io.github.leafproof.dsl.parse;

/** A procedure in which every construct of the language occurs. */
final class Example {

    static final String TEXT = read();

    private Example() {}

    private static String read() {
        try (java.io.InputStream file = Example.class.getResourceAsStream("/whole-language.inspection")) {
            return new String(file.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
