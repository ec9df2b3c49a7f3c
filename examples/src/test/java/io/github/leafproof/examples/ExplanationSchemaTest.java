package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.dsl.graph.Node;
import io.github.leafproof.dsl.report.Explaining;
import io.github.leafproof.dsl.report.ExplanationJson;
import io.github.leafproof.dsl.source.SourceText;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema of explanations, and all that the bench's procedures and sheets have to explain. */
class ExplanationSchemaTest {

    private static final JsonNode SCHEMA =
            JsonMapper.shared().readTree(Project.text(Project.ROOT.resolve("docs/schemas/explanation.schema.json")));

    private static final List<String> EXPLANATIONS = explanations();

    /** Every check of every procedure, without an engine and by every sheet; and one that belongs to no stage. */
    private static List<String> explanations() {
        List<String> all = new ArrayList<>();
        CheckGraph plain =
                Procedure.compile(SourceText.of("plain", """
                        procedure plain "Plain" revision 1
                        observe free : yes/no ask "Free?"
                        check turns "It turns" { require free }
                        """)).orElseThrow().graph();
        all.add(ExplanationJson.write(Explaining.of(plain, plain.checks().get(0))));
        for (String procedure : Bench.procedures()) {
            CheckGraph graph = Bench.procedure(procedure).graph();
            graph.checks().forEach(check -> all.add(ExplanationJson.write(Explaining.of(graph, check))));
        }
        BenchSheetsTest.sheets().forEach(sheet -> {
            Judgement judgement = Bench.judgement(sheet);
            for (Node.Check check : judgement.graph().checks()) {
                all.add(ExplanationJson.write(Explaining.of(judgement, check)));
            }
        });
        return all;
    }

    @Test
    void every_explanation_keeps_to_the_schema() {
        assertThat(EXPLANATIONS).hasSizeGreaterThan(100);
        assertThat(BenchSheetsTest.complaints("explanation", EXPLANATIONS)).isEmpty();
    }

    @Test
    void the_schema_allows_nothing_that_never_comes_and_asks_for_every_key() {
        Set<String> optional = new TreeSet<>();
        Set<String> nulls = new TreeSet<>();
        Set<String> given = new TreeSet<>();
        for (String explanation : EXPLANATIONS) {
            walk(JsonMapper.shared().readTree(explanation), SCHEMA, "$", optional, nulls, given);
        }

        assertThat(optional).isEqualTo(nulls);
        assertThat(given).containsAll(optional);
    }

    /** Goes through a text and its schema side by side, and notes what may be null, what is, and what is there. */
    private static void walk(
            JsonNode node, JsonNode schema, String path, Set<String> optional, Set<String> nulls, Set<String> given) {
        JsonNode meant = schema;
        if (schema.has("anyOf")) {
            optional.add(path);
            meant = schema.get("anyOf").get(0);
        }
        if (node.isNull()) {
            nulls.add(path);
            return;
        }
        given.add(path);
        if (meant.has("$ref")) {
            meant = SCHEMA.at(meant.get("$ref").asString().substring(1));
        }
        if (meant.has("items")) {
            for (JsonNode item : node) {
                walk(item, meant.get("items"), path + "[]", optional, nulls, given);
            }
        }
        if (meant.has("properties")) {
            JsonNode properties = meant.get("properties");
            assertThat(Stream.of(node.propertyNames().toArray(String[]::new)))
                    .containsExactlyElementsOf(properties.propertyNames());
            assertThat(words(meant.get("required"))).containsExactlyElementsOf(properties.propertyNames());
            for (String key : properties.propertyNames()) {
                walk(node.get(key), properties.get(key), path + "." + key, optional, nulls, given);
            }
        }
    }

    @Test
    void its_words_are_the_programs() {
        assertThat(words(SCHEMA.at("/$defs/outcome/enum")))
                .isEqualTo(Stream.of(Outcome.values()).map(Outcome::word).toList());
        assertThat(words(SCHEMA.at("/properties/severity/enum")))
                .isEqualTo(Stream.of(Severity.values()).map(Severity::word).toList());
    }

    @Test
    void it_is_a_schema_and_accepts_the_example_on_the_page() {
        Matcher example = Pattern.compile("```json explanation\n(.*?)```", Pattern.DOTALL)
                .matcher(Project.text(Project.ROOT.resolve("docs/formats.md")));

        assertThat(example.find()).isTrue();
        assertThat(BenchSheetsTest.complaints("explanation", List.of(example.group(1))))
                .isEmpty();
        assertThat(BenchSheetsTest.complaintsAboutSchema("explanation")).isEmpty();
        assertThat(SCHEMA.get("$id").asString()).isEqualTo("urn:leafproof:schema:explanation:1");
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asString()));
        return words;
    }
}
