package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.diagnostic.Code;
import io.github.leafproof.dsl.diagnostic.DiagnosticJson;
import io.github.leafproof.dsl.source.SourceText;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page about formats names every schema, and shows of each what it looks like. */
class FormatsTest {

    private static final String ENDING = ".schema.json";
    private static final String PAGE = Project.text(Project.ROOT.resolve("docs/formats.md"));
    private static final Set<String> IN_LINES = Set.of("journal", "replay");

    static List<String> schemas() {
        return Project.files(Project.ROOT.resolve("docs/schemas")).stream()
                .map(file -> file.getFileName().toString())
                .map(name -> name.substring(0, name.length() - ENDING.length()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void a_schema_is_of_2020_12_and_is_called_as_its_file_is(String name) {
        JsonNode schema = JsonMapper.shared()
                .readTree(Project.text(Project.ROOT.resolve(
                        Path.of("docs/schemas", name + ENDING).toString())));

        assertThat(BenchSheetsTest.complaintsAboutSchema(name)).isEmpty();
        assertThat(schema.get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
        assertThat(schema.get("$id").asString()).isEqualTo("urn:leafproof:schema:" + name + ":1");
        assertThat(schema.get("title").asString()).isNotBlank();
        assertThat(schema.get("description").asString()).endsWith(".");
        // What the program writes says so in its first line, unless it is an array.
        Stream.of(schema.at("/properties/format/const"), schema.at("/$defs/heading/properties/format/const"))
                .filter(format -> !format.isMissingNode())
                .forEach(format -> assertThat(format.asString()).isEqualTo("leafproof-" + name + "/1"));
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void the_page_links_to_the_schema_and_shows_an_example_that_keeps_to_it(String name) {
        List<String> examples = Project.fences(PAGE, "json " + name);

        assertThat(PAGE).contains("| [" + name + "](schemas/" + name + ENDING + ") |");
        assertThat(examples).hasSize(1);
        List<String> texts = IN_LINES.contains(name) ? examples.get(0).lines().toList() : examples;
        assertThat(BenchSheetsTest.complaints(name, texts)).isEmpty();
    }

    @Test
    void no_example_on_the_page_is_of_a_format_that_has_no_schema() {
        Set<String> shown = PAGE.lines()
                .filter(line -> line.startsWith("```json"))
                .map(line -> line.substring("```json".length()).strip())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(shown).isEqualTo(new TreeSet<>(schemas()));
    }

    @Test
    void what_is_written_about_the_mistakes_of_procedures_keeps_to_its_schema() {
        List<String> texts = Stream.of(
                        "procedure mine \"Mine\" revision 1\n",
                        "procedure mine \"Mine\" revision 1\nobserve head : temperatur ask \"Head\"\nobserve head : yes/no ask \"Head\"\n",
                        "check",
                        "")
                .map(text -> DiagnosticJson.write(Procedure.compile(SourceText.of("mine.inspection", text))
                        .diagnostics()))
                .toList();

        assertThat(BenchSheetsTest.complaints("diagnostics", texts)).isEmpty();
        assertThat(texts).anyMatch(text -> text.contains("\"labels\" : [\n"));
        assertThat(Arrays.stream(Code.values()).map(Code::name)).allMatch(code -> code.matches("LP[0-9]{3}"));
    }
}
