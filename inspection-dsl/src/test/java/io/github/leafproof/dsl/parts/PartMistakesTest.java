package io.github.leafproof.dsl.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * What goes wrong between the files of a procedure, and what is said about it, word for word: a folder each, with
 * {@code input.inspection}, the files it uses, and {@code expected.txt}. After a change of words run with
 * {@code -Dgolden.write=true} and read the differences.
 */
class PartMistakesTest {

    private static final Path CASES = Path.of("src", "test", "resources", "parts");

    /** Links, and more files than anybody wants to keep, are made in {@link ProcedureFolderTest} and {@link GatheringTest}. */
    private static final Set<Code> MADE_ELSEWHERE = EnumSet.of(Code.LP162, Code.LP164);

    @TestFactory
    Stream<DynamicTest> each_mistake_between_files_is_said_with_the_place_in_its_file() throws IOException {
        return cases().stream().map(folder -> dynamicTest(folder.getFileName().toString(), () -> check(folder)));
    }

    private static void check(Path folder) throws IOException {
        List<Diagnostic> said = diagnostics(folder);
        String printed = DiagnosticPrinter.print(said, false);
        Path expected = folder.resolve("expected.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(expected, printed);
        }
        assertThat(printed).isEqualTo(Files.readString(expected)).isNotEmpty();
        String name = folder.getFileName().toString();
        if (name.startsWith("LP")) {
            assertThat(said).anyMatch(each -> name.startsWith(each.code().name()));
        }
        assertThat(said).noneMatch(each -> each.help().isEmpty());
    }

    @Test
    void each_code_of_used_files_has_a_case() throws IOException {
        Set<Code> shown = EnumSet.copyOf(MADE_ELSEWHERE);
        for (Path folder : cases()) {
            diagnostics(folder).forEach(diagnostic -> shown.add(diagnostic.code()));
        }
        assertThat(shown).containsAll(EnumSet.range(Code.LP160, Code.LP169));
    }

    private static List<Diagnostic> diagnostics(Path folder) throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".inspection"))
                    .toList()) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        String text = String.valueOf(texts.get("input.inspection"));
        return Procedure.compile(SourceText.of("input.inspection", text), Shelf.of(texts))
                .diagnostics();
    }

    private static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList();
        }
    }
}
