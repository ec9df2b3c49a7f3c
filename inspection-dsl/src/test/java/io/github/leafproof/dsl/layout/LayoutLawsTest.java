package io.github.leafproof.dsl.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.meaning.AnyProcedureTest;
import io.github.leafproof.dsl.parse.ProcedureParser;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a procedure says, it says the same when it is tidy, and is tidy for good. */
class LayoutLawsTest {

    private static final Pattern FENCE =
            Pattern.compile("^```inspection(?:-fragment)?\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

    /** Every procedure that lies about: those of the examples, of the tests and of the pages. */
    static Stream<String> procedures() {
        Stream<String> files = Stream.of(Path.of("src", "test", "resources"), Path.of("..", "examples", "bench"))
                .flatMap(LayoutLawsTest::files)
                .filter(file -> file.toString().endsWith(".inspection"))
                .map(LayoutLawsTest::text);
        Stream<String> fences = files(Path.of("..", "docs"))
                .filter(file -> file.toString().endsWith(".md"))
                .flatMap(page -> FENCE.matcher(text(page)).results().map(fence -> fence.group(1)));
        return Stream.concat(files, fences).filter(LayoutLawsTest::reads);
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

    private static boolean reads(String text) {
        return ProcedureParser.parse(SourceText.of("p", text)).problems().stream()
                .noneMatch(Diagnostic::isError);
    }

    private static String tidied(String text) {
        return Layout.of(SourceText.of("p", text));
    }

    @Test
    void there_are_procedures_to_hold_the_layout_against() {
        assertThat(procedures()).hasSizeGreaterThan(80);
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void a_tidied_procedure_means_what_it_meant_and_stays_as_it_is(String text) {
        assertSaysTheSame(text);
    }

    @ParameterizedTest
    @MethodSource("procedures")
    void whoever_wrote_it_and_wherever_they_broke_their_lines_the_tidy_text_is_one(String text) {
        for (int seed = 0; seed < 3; seed++) {
            String commented = Untidy.withComments(text, seed);
            assertSaysTheSame(commented);
            assertThat(tidied(Untidy.of(commented, seed))).isEqualTo(tidied(commented));
        }
    }

    @Provide
    Arbitrary<String> anyProcedures() {
        return new AnyProcedureTest().procedures();
    }

    @Property(tries = 500, seed = "1")
    void so_does_any_procedure_whether_it_makes_sense_or_not(@ForAll("anyProcedures") String text, @ForAll long seed) {
        Assume.that(reads(text));

        String commented = Untidy.withComments(text, seed);

        assertSaysTheSame(commented);
        assertThat(tidied(Untidy.of(commented, seed))).isEqualTo(tidied(commented));
    }

    private static void assertSaysTheSame(String text) {
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

    @Test
    void a_text_that_does_not_read_has_no_layout() {
        assertThatThrownBy(() -> tidied("check { ")).isInstanceOf(IllegalArgumentException.class);
    }
}
