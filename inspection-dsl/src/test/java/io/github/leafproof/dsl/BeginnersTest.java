package io.github.leafproof.dsl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole procedures, broken in the ways in which beginners break them, and all that is said about each, word for word: a
 * folder each, with {@code input.inspection} and {@code expected.txt}. After a change of words run with
 * {@code -Dgolden.write=true} and read the differences aloud: each must name the place, the reason and the remedy.
 */
class BeginnersTest {

    private static final Path CASES = Path.of("src", "test", "resources", "beginners");

    @TestFactory
    Stream<DynamicTest> each_beginner_is_told_what_to_mend() throws IOException {
        return cases().stream().map(folder -> dynamicTest(folder.getFileName().toString(), () -> check(folder)));
    }

    private static void check(Path folder) throws IOException {
        SourceText text = SourceText.of("mine.inspection", Files.readString(folder.resolve("input.inspection")));
        List<Diagnostic> said = Procedure.compile(text).diagnostics();
        String printed = DiagnosticPrinter.print(said, false);
        Path expected = folder.resolve("expected.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(expected, printed);
        }
        assertThat(printed).isEqualTo(Files.readString(expected));
        assertThat(said).anyMatch(Diagnostic::isError).isSortedAccordingTo(Diagnostic.BY_PLACE);
        assertThat(said)
                .as("every message says what to do")
                .noneMatch(each -> each.help().isEmpty());
    }

    @Test
    void there_are_thirty_of_them() throws IOException {
        assertThat(cases()).hasSizeGreaterThanOrEqualTo(30);
    }

    private static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList();
        }
    }
}
