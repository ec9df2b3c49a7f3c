package io.github.leafproof.dsl.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every mistake a beginner is likely to make, and what is said about it, word for word: a folder each, with
 * {@code input.inspection} and {@code expected.txt}. After a change of words run with {@code -Dgolden.write=true} and
 * read the differences.
 */
class MistakesTest {

    private static final Path CASES = Path.of("src", "test", "resources", "syntax");

    @TestFactory
    Stream<DynamicTest> each_mistake_is_said_in_the_writers_words() throws IOException {
        return cases().stream().map(folder -> dynamicTest(folder.getFileName().toString(), () -> check(folder)));
    }

    private static void check(Path folder) throws IOException {
        String said = DiagnosticPrinter.print(problems(folder), false);
        Path expected = folder.resolve("expected.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(expected, said);
        }
        assertThat(said).isEqualTo(Files.readString(expected));
        assertThat(said).as("a case shows what is said about a mistake").isNotEmpty();
    }

    @Test
    void each_code_of_reading_and_grammar_has_a_case() throws IOException {
        Set<Code> shown = EnumSet.noneOf(Code.class);
        for (Path folder : cases()) {
            problems(folder).forEach(problem -> shown.add(problem.code()));
        }
        Set<Code> all = EnumSet.allOf(Code.class);
        all.removeIf(code -> !code.name().startsWith("LP1"));
        // What is wrong with a file, not with a text, is in SourceReadingTest.
        all.removeAll(EnumSet.range(Code.LP101, Code.LP105));
        all.remove(Code.LP147);
        // What is wrong between several files is in PartMistakesTest.
        all.removeAll(EnumSet.range(Code.LP160, Code.LP169));
        assertThat(shown).containsAll(all);
    }

    private static List<Diagnostic> problems(Path folder) throws IOException {
        String text = Files.readString(folder.resolve("input.inspection"), StandardCharsets.UTF_8);
        return ProcedureParser.parse(SourceText.of("input.inspection", text)).problems();
    }

    private static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList();
        }
    }
}
