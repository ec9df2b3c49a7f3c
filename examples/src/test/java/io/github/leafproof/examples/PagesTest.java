package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Diagnostic;
import io.github.leafproof.dsl.diagnostic.DiagnosticPrinter;
import io.github.leafproof.dsl.parts.Shelf;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.engine.EngineCard;
import io.github.leafproof.inspection.record.CardFile;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.Read;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the pages show is what the program does. */
class PagesTest {
    /** The kinds of blocks that are compiled, or tried, as procedures. */
    private static final List<String> PROCEDURES =
            List.of("inspection", "inspection-fragment", "inspection-used", "inspection-part", "inspection-slip");

    private static final Pattern LOOKS_LIKE_A_PROCEDURE = Pattern.compile(
            "^\\s*(procedure \\w+ \"|(gauge|observe|card) [\\w\\[\\]]+ *:|check [\\w\\[\\]]+ .*\\{|let [\\w\\[\\]]+ *="
                    + "|define \\w+\\(|(rehearse|stage) \"|setup \\w+ starts )",
            Pattern.MULTILINE);

    /** Made from the lessons of the mistakes, whose examples LessonsTest of inspection-dsl compiles. */
    private static final Path MISTAKES = Project.ROOT.resolve("docs/diagnostics.md");

    static Stream<Path> pagesByHand() {
        return pages().filter(page -> !page.equals(MISTAKES));
    }

    static Stream<Path> pages() {
        return Project.pages().stream();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_procedure_on_a_page_compiles_without_a_word(Path page) {
        Shelf used = Shelf.of(used(page));
        for (String procedure : Project.fences(Project.text(page), "inspection")) {
            assertCompiles(page, procedure, used);
        }
        for (String fragment : Project.fences(Project.text(page), "inspection-fragment")) {
            assertCompiles(page, "procedure fragment \"A fragment\" revision 1\n" + fragment, used);
        }
    }

    /** The files that a page shows for its procedures to use, by their names. */
    private static Map<String, String> used(Path page) {
        return Project.fences(Project.text(page)).stream()
                .filter(fence -> fence.is("inspection-used"))
                .collect(Collectors.toMap(
                        fence -> fence.info().substring("inspection-used ".length()), Project.Fence::content));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_file_shown_to_be_used_is_used_on_its_page(Path page) {
        for (String name : used(page).keySet()) {
            assertThat(Project.text(page)).contains("\nuse \"" + name + "\"\n");
        }
    }

    private static void assertCompiles(Path page, String text, Shelf used) {
        List<Diagnostic> diagnostics =
                Procedure.compile(SourceText.of(page.toString(), text), used).diagnostics();
        assertThat(DiagnosticPrinter.print(diagnostics, false)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pagesByHand")
    void nothing_that_looks_like_a_procedure_stands_on_a_page_unmarked(Path page) {
        String text = Project.text(page);
        Stream<String> unmarked = Project.fences(text).stream()
                .filter(fence -> PROCEDURES.stream().noneMatch(fence::is))
                .map(Project.Fence::content);
        Stream<String> indented = Project.outsideFences(text).lines().filter(line -> line.startsWith("    "));

        assertThat(Stream.concat(unmarked, indented)
                        .filter(block -> LOOKS_LIKE_A_PROCEDURE.matcher(block).find()))
                .as("mark it as one of " + PROCEDURES)
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "procedure lash \"Lash\" revision 1",
                "gauge leaves : leaf set",
                "  observe lash[valve] : gap with leaves",
                "check cold \"Cold\" {",
                "rehearse \"a case\" {"
            })
    void a_line_of_a_procedure_looks_like_one(String line) {
        assertThat(LOOKS_LIKE_A_PROCEDURE.matcher("And so:\n" + line).find()).isTrue();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void parts_and_slips_of_procedures_stand_where_they_are_tried(Path page) {
        boolean isTutorial = page.endsWith("tutorial.md");
        for (Project.Fence fence : Project.fences(Project.text(page))) {
            if (fence.is("inspection-part") || fence.is("inspection-slip")) {
                assertThat(isTutorial).as(fence.content()).isTrue();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("pagesByHand")
    void what_the_program_prints_is_shown_where_a_test_runs_it(Path page) {
        // The README's by ReadmeTest; the tutorial's and those of the calculator and of the guide by TutorialTest of
        // inspection-dsl; the formats' below.
        Set<String> run = Set.of("README.md", "tutorial.md", "reckon.md", "guide.md", "formats.md");
        if (!run.contains(page.getFileName().toString())) {
            assertThat(Project.fences(Project.text(page), "text"))
                    .noneMatch(block -> block.contains("error LP") || block.contains("Release: "));
        }
    }

    @Test
    void the_reference_of_the_language_has_a_procedure_or_a_fragment_for_each_of_its_parts() {
        String page = Project.text(Project.ROOT.resolve("docs/language.md"));

        assertThat(Project.fences(page, "inspection")).hasSizeGreaterThanOrEqualTo(2);
        assertThat(Project.fences(page, "inspection-fragment")).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void the_mistake_that_the_reference_shows_is_told_in_the_compilers_own_words() {
        Map<String, String> parts = new TreeMap<>();
        for (Path part : Project.files(Project.BENCH.resolve("parts"))) {
            parts.put("parts/" + part.getFileName(), Project.text(part));
        }
        parts.computeIfPresent(
                "parts/lash.inspection",
                (name, text) -> text.replace(
                        "require lash[valve] between engine.lash_min and engine.lash_max",
                        "require lash[valve] at most 100 kPa"));

        String told = DiagnosticPrinter.print(
                Procedure.compile(
                                SourceText.of(
                                        "first_look.inspection",
                                        Project.text(Project.BENCH.resolve("first_look.inspection"))),
                                Shelf.of(parts))
                        .diagnostics(),
                false);

        assertThat(Project.text(Project.ROOT.resolve("docs/language.md")))
                .contains(told.lines().map(line -> "    " + line + "\n").collect(Collectors.joining()));
    }

    @Test
    void the_mistake_in_a_file_that_the_page_on_formats_shows_is_told_so() {
        String card = "{\n  \"model\": \"Quillan Q15-4\",\n  \"maker\": \"Quillan\",\n  \"lash_min\": \"thin\"\n}\n";

        Read<Document<EngineCard>> read = CardFile.parse("cards/mine.json", card.getBytes(StandardCharsets.UTF_8));

        assertThat(Project.fences(Project.text(Project.ROOT.resolve("docs/formats.md")), "text"))
                .containsExactly(read.problems().get(0) + "\n");
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_link_to_another_file_finds_it(Path page) {
        List<String> targets = Pattern.compile("\\]\\(([^)#\\s]+)(#[^)]*)?\\)")
                .matcher(Project.text(page))
                .results()
                .map(link -> link.group(1))
                .filter(target -> !target.contains("://"))
                .toList();
        for (String target : targets) {
            assertThat(page.resolveSibling(target)).exists();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_link_to_a_heading_finds_it(Path page) {
        List<MatchResult> links = Pattern.compile("\\]\\(([^)#\\s]*)#([^)]+)\\)")
                .matcher(Project.text(page))
                .results()
                .filter(link -> !link.group(1).contains("://"))
                .toList();
        for (MatchResult link : links) {
            Path target = link.group(1).isEmpty() ? page : page.resolveSibling(link.group(1));
            assertThat(anchors(target)).contains(link.group(2));
        }
    }

    private static List<String> anchors(Path page) {
        return Pattern.compile("^#+ (.*)$", Pattern.MULTILINE)
                .matcher(Project.text(page))
                .results()
                .map(heading -> heading.group(1)
                        .toLowerCase(java.util.Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} _-]", "")
                        .replace(' ', '-'))
                .toList();
    }

    @Test
    void no_text_of_the_project_names_a_place_on_somebodys_machine() {
        Set<String> binary = Set.of("jar", "png", "class");
        // In pieces, or this file would be found as well.
        Pattern place = Pattern.compile("(?<![\\w.])/(?:home|root|work|tmp|Users)"
                + "/|[A-Za-z]:\\\\\\\\?(?:Users|Windows)|file:" + "//(?!HERE|/shop/|/C:/shop/)");
        List<String> found = new ArrayList<>();
        for (Path file : Project.files(Project.ROOT)) {
            String name = file.getFileName().toString();
            if (!binary.contains(name.substring(name.lastIndexOf('.') + 1)) && Files.isRegularFile(file)) {
                place.matcher(Project.text(file)).results().forEach(match -> found.add(file + ": " + match.group()));
            }
        }
        assertThat(found).isEmpty();
    }
}
