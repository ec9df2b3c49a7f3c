package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.coverage.Coverage;
import io.github.leafproof.dsl.coverage.CoverageJson;
import io.github.leafproof.dsl.coverage.CoverageText;
import io.github.leafproof.dsl.meaning.Saying;
import io.github.leafproof.dsl.meaning.Way;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the rehearsals of the bench's procedures show, and the published schema for it. */
class CoverageTest {

    private static final JsonNode SCHEMA =
            JsonMapper.shared().readTree(Project.text(Project.ROOT.resolve("docs/schemas/coverage.schema.json")));

    private static final List<Coverage> COVERAGE =
            Bench.allProcedures().stream().map(CoverageTest::coverage).toList();

    private static Coverage coverage(String name) {
        Procedure procedure = Bench.procedure(name);
        return Coverage.of(procedure, Bench.rehearsing(name, procedure).play());
    }

    @TestFactory
    Stream<DynamicTest> a_procedure_shows_in_its_rehearsals_all_that_it_can_say() {
        return COVERAGE.stream().map(coverage -> {
            String name = coverage.procedure().graph().identity().name();
            return DynamicTest.dynamicTest(
                    name,
                    () -> assertThat(coverage.share().isAtLeast(BigDecimal.valueOf(100)))
                            .as(() -> CoverageText.of(coverage))
                            .isTrue());
        });
    }

    @Test
    void every_coverage_keeps_to_the_schema() {
        assertThat(BenchSheetsTest.complaints("coverage", CoverageJson.write(COVERAGE)))
                .isEmpty();
        assertThat(BenchSheetsTest.complaintsAboutSchema("coverage")).isEmpty();
        assertThat(SCHEMA.get("$id").asString()).isEqualTo("urn:leafproof:schema:coverage:1");
    }

    @Test
    void its_words_are_the_programs() {
        assertThat(words(SCHEMA.at("/$defs/kind/enum")))
                .isEqualTo(Arrays.stream(Saying.Kind.values())
                        .map(Saying.Kind::word)
                        .toList());
        assertThat(words(SCHEMA.at("/$defs/way/enum")))
                .isEqualTo(List.copyOf(Arrays.stream(Way.values())
                        .map(Way::word)
                        .collect(Collectors.toCollection(LinkedHashSet::new))));
    }

    @Test
    void it_accepts_the_example_on_the_page() {
        Matcher example = Pattern.compile("```json coverage\n(.*?)```", Pattern.DOTALL)
                .matcher(Project.text(Project.ROOT.resolve("docs/formats.md")));

        assertThat(example.find()).isTrue();
        assertThat(BenchSheetsTest.complaints("coverage", example.group(1))).isEmpty();
    }

    /** Every key is there every time, and no schema lets one be left out. */
    @Test
    void every_object_of_the_schema_asks_for_all_its_keys() {
        List<JsonNode> objects = new ArrayList<>();
        collect(SCHEMA, objects);

        assertThat(objects)
                .hasSizeGreaterThan(6)
                .allSatisfy(object -> assertThat(words(object.get("required")))
                        .isEqualTo(Stream.of(
                                        object.get("properties").propertyNames().toArray(String[]::new))
                                .toList()));
    }

    private static void collect(JsonNode node, List<JsonNode> objects) {
        if (node.has("properties") && node.get("properties").isObject()) {
            objects.add(node);
        }
        node.forEach(child -> collect(child, objects));
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asString()));
        return words;
    }
}
