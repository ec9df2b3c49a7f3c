package io.github.leafproof.dsl.layout;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What tidying may change of a procedure, and procedures to try it on. */
public final class Tidiness {

    private static final Pattern FENCE =
            Pattern.compile("^```inspection(?:-fragment)?\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    private Tidiness() {}

    /** Every procedure that lies about: those of the examples, of the tests and of the pages. */
    public static Stream<String> procedures() {
        Stream<String> files = Stream.of(Path.of("src", "test", "resources"), Path.of("..", "examples", "bench"))
                .flatMap(Tidiness::files)
                .filter(file -> file.toString().endsWith(".inspection"))
                .map(Tidiness::text);
        Stream<String> fences = files(Path.of("..", "docs"))
                .filter(file -> file.toString().endsWith(".md"))
                .flatMap(page -> FENCE.matcher(text(page)).results().map(fence -> fence.group(1)));
        return Stream.concat(files, fences).filter(Tidiness::reads);
    }

    private static Stream<Path> files(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static boolean reads(String text) {
        return ProcedureParser.parse(SourceText.of("p", text)).problems().stream()
                .noneMatch(Diagnostic::isError);
    }

    static String tidied(String text) {
        return Layout.of(SourceText.of("p", text));
    }

    /** Tidying changes no word, no comment and no meaning, and what is tidy stays as it is. */
    public static void assertSaysTheSame(String text) {
        String tidy = tidied(text);

        assertThat(tidied(tidy)).as("tidied twice").isEqualTo(tidy);
        assertThat(Untidy.comments(tidy)).as("comments").isEqualTo(Untidy.comments(text));
        assertThat(said(tidy)).isEqualTo(said(text));
        assertThat(tidy).endsWith("\n").doesNotEndWith("\n\n").doesNotContain("\r", " \n", "\n\n\n");
    }

    /** What a procedure is understood to say: all of its tree and its graph, or what the compiler finds wrong with it. */
    private static List<String> said(String text) {
        SourceText source = SourceText.of("p", text);
        Compiled compiled = Procedure.compile(source);
        return Stream.of(
                        Stream.of(GraphWords.of(
                                ProcedureParser.parse(source).tree().declarations())),
                        compiled.procedure().map(Procedure::graph).map(GraphWords::of).stream(),
                        compiled.diagnostics().stream().map(each -> each.code() + " " + each.message()))
                .flatMap(each -> each)
                .toList();
    }
}
