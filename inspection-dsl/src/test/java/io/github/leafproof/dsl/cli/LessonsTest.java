package io.github.leafproof.dsl.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.Workshop;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.diagnostic.Lesson;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every mistake has a lesson, its example shows just that mistake, and its remedy mends it. The words of the program and
 * the page docs/diagnostics.md are written anew with {@code -Dgolden.write=true}; read the differences.
 */
class LessonsTest {

    private static final Path LESSONS =
            Path.of("src", "main", "resources", "io", "github", "leafproof", "dsl", "diagnostic", "lessons");
    private static final Path PAGE = Path.of("..", "docs", "diagnostics.md");
    private static final boolean WRITE = Boolean.getBoolean("golden.write");

    /** What the examples may use: the files of the bench, under the names that a procedure there uses them by. */
    private static final Shelf BENCH = Terminal.benchShelf();

    @TempDir
    private Path here = Path.of("");

    private static Lesson lesson(String code) {
        return Lesson.of(code).orElseThrow();
    }

    @Test
    void every_mistake_has_a_lesson_and_every_lesson_a_mistake() throws IOException {
        try (Stream<Path> files = Files.list(LESSONS)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".txt", "")))
                    .as("a new code needs its lesson: see 'a diagnostic' in DEVELOPERS.md")
                    .containsExactlyInAnyOrderElementsOf(Lesson.codes());
        }
    }

    @TestFactory
    Stream<DynamicTest> each_example_shows_the_mistake_and_what_is_said_of_it() {
        return Lesson.codes().stream()
                .map(code -> dynamicTest(code, () -> {
                    String said = said(lesson(code));
                    if (WRITE) {
                        write(code, said);
                    } else {
                        assertThat(lesson(code).said()).isEqualTo(said);
                    }
                    assertThat(said.lines().filter(line -> line.contains(" " + code + ": ")))
                            .isNotEmpty();
                }));
    }

    /** What the program says of the example, and of nothing else than this mistake. */
    private String said(Lesson lesson) throws IOException {
        if (lesson.setting().kind() == Lesson.Kind.PROCEDURE) {
            List<Diagnostic> found = diagnostics(lesson.code(), BrokenExamples.inFull(lesson.example()));
            Code code = Code.valueOf(lesson.code());
            if (code != Code.LP704) {
                assertThat(found).extracting(Diagnostic::code).containsOnly(code);
            }
            return DiagnosticPrinter.print(
                    found.stream().filter(each -> each.code() == code).toList(), false);
        }
        Path bench = Files.createTempDirectory(here, "bench");
        Terminal.copyBench(bench);
        BrokenExamples broken = new BrokenExamples(bench);
        return lesson.setting().kind() == Lesson.Kind.CHANGE ? broken.change(lesson) : broken.situation(lesson);
    }

    /** Some mistakes show only when a procedure is vetted with a card and a tray. */
    private static List<Diagnostic> diagnostics(String code, String text) {
        SourceText source = SourceText.of("example.inspection", text);
        return code.startsWith("LP46")
                ? Workshop.vetted(source)
                : Procedure.compile(source, BENCH).diagnostics();
    }

    private static void write(String code, String said) throws IOException {
        Path file = LESSONS.resolve(code + ".txt");
        String text = Files.readString(file);
        int from = text.indexOf("\n--- says\n") + "\n--- says\n".length();
        Files.writeString(file, text.substring(0, from) + said + text.substring(text.indexOf("--- fix\n", from)));
    }

    @TestFactory
    Stream<DynamicTest> each_remedy_mends_its_example() {
        return Lesson.codes().stream()
                .map(LessonsTest::lesson)
                .filter(lesson -> lesson.setting().kind() == Lesson.Kind.PROCEDURE)
                .map(lesson -> dynamicTest(lesson.code(), () -> {
                    assertThat(lesson.mended()).isNotEmpty();
                    String mended = BrokenExamples.changed(lesson.example(), lesson.mended());
                    assertThat(DiagnosticPrinter.print(diagnostics(lesson.code(), mended), false))
                            .isEmpty();
                }));
    }

    @Test
    void the_page_of_all_mistakes_says_what_the_lessons_say() throws IOException {
        StringBuilder page = new StringBuilder(LessonsPage.BEGINNING);
        List<Lesson> lessons = Lesson.codes().stream().map(LessonsTest::lesson).toList();
        page.append(LessonsPage.contents(lessons));
        for (Lesson lesson : lessons) {
            page.append(LessonsPage.section(lesson, WRITE ? said(lesson) : lesson.said()));
        }
        if (WRITE) {
            Files.writeString(PAGE, page);
        }
        assertThat(PAGE).hasContent(page.toString());
    }
}
