package io.github.leafproof.dsl.meaning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
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
 * What reads well and yet makes no sense, and what is said about it, word for word: a folder each, with
 * {@code input.inspection} and {@code expected.txt}. After a change of words run with {@code -Dgolden.write=true} and
 * read the differences.
 */
class MeaningMistakesTest {

    private static final Path CASES = Path.of("src", "test", "resources", "meaning");

    /** Too large to be kept as files; {@link LargeProceduresTest} makes them. */
    private static final Set<Code> MADE_ELSEWHERE =
            EnumSet.of(Code.LP467, Code.LP704, Code.LP711, Code.LP712, Code.LP713, Code.LP714, Code.LP715);

    @TestFactory
    Stream<DynamicTest> each_mistake_is_said_in_words_of_the_bench() throws IOException {
        return cases().stream().map(folder -> dynamicTest(folder.getFileName().toString(), () -> check(folder)));
    }

    private static void check(Path folder) throws IOException {
        List<Diagnostic> said = diagnostics(folder);
        String printed = DiagnosticPrinter.print(said, false);
        Path expected = folder.resolve("expected.txt");
        if (Boolean.getBoolean("golden.write")) {
            Files.writeString(expected, printed);
        }
        assertThat(printed).isEqualTo(Files.readString(expected));
        assertThat(said).isSortedAccordingTo(Diagnostic.BY_PLACE);
        String name = folder.getFileName().toString();
        if (name.startsWith("LP")) {
            assertThat(said)
                    .as("the case shows the code it is named for")
                    .anyMatch(each -> name.startsWith(each.code().name()));
        }
        assertThat(said)
                .as("every message says what to do")
                .noneMatch(each -> each.help().isEmpty());
    }

    @Test
    void each_code_of_types_names_structure_and_rehearsals_has_a_case() throws IOException {
        Set<Code> shown = EnumSet.copyOf(MADE_ELSEWHERE);
        for (Path folder : cases()) {
            diagnostics(folder).forEach(diagnostic -> shown.add(diagnostic.code()));
        }
        Set<Code> all = EnumSet.range(Code.LP201, Code.LP507);
        all.addAll(EnumSet.range(Code.LP711, Code.LP715));
        assertThat(shown).containsAll(all);
    }

    private static List<Diagnostic> diagnostics(Path folder) throws IOException {
        String text = Files.readString(folder.resolve("input.inspection"));
        SourceText source = SourceText.of("input.inspection", text);
        return folder.getFileName().toString().startsWith("LP46")
                ? Workshop.vetted(source)
                : Procedure.compile(source).diagnostics();
    }

    private static List<Path> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.sorted().toList();
        }
    }
}
