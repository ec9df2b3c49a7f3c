package io.github.leafproof.dsl.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schema is the one that OASIS publishes with SARIF 2.1.0; the clauses are those of that standard. */
class SarifTest {

    private static final Path BEGINNERS = Path.of("src", "test", "resources", "beginners");

    /** Where a reference to a file begins that is named from the root (RFC 8089). */
    private static final String ROOT = "file:" + "///";

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(published(), InputFormat.JSON);

    private static String published() {
        try (InputStream schema = SarifTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            return new String(Objects.requireNonNull(schema).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        }
    }

    private static List<String> complaints(String log) {
        return SCHEMA
                .validate(
                        log,
                        InputFormat.JSON,
                        context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)))
                .stream()
                .map(Object::toString)
                .toList();
    }

    private static JsonNode run(String log) {
        return JsonMapper.shared().readTree(log).get("runs").get(0);
    }

    private static Diagnostic in(String file, String message) {
        return Diagnostic.error(Code.LP121, SourceText.of(file, "let x = 3\n").span(4, 5), message);
    }

    private static String uri(String file) {
        JsonNode place = run(Sarif.write(List.of(in(file, "x")), "1"))
                .at("/results/0/locations/0/physicalLocation/artifactLocation/uri");
        return place.asString();
    }

    @Test
    void the_schema_tells_a_log_from_something_else() {
        assertThat(complaints("{\"version\": \"2.1.0\", \"runs\": [{}]}")).isNotEmpty();
        assertThat(complaints(Sarif.write(List.of(), "1").replace("results", "result")))
                .isNotEmpty();
    }

    @Test
    void a_sound_procedure_is_a_run_without_results() {
        String log = Sarif.write(List.of(), "0.1.0");

        assertThat(complaints(log)).isEmpty();
        assertThat(run(log).get("results")).isEmpty();
    }

    @Test
    void all_that_is_said_to_beginners_is_a_log_by_the_standard() throws IOException {
        List<Diagnostic> said = new ArrayList<>();
        try (Stream<Path> folders = Files.list(BEGINNERS)) {
            for (Path folder : folders.sorted().toList()) {
                Path file = folder.resolve("input.inspection");
                said.addAll(Procedure.compile(SourceText.of(file.toString(), Files.readString(file)))
                        .diagnostics());
            }
        }

        String log = Sarif.write(said, "0.1.0");

        assertThat(complaints(log)).isEmpty();
        assertThat(run(log).get("results")).hasSameSizeAs(said);
        for (JsonNode result : run(log).get("results")) {
            String rule = run(log).at("/tool/driver/rules/" + result.get("ruleIndex") + "/id")
                    .asString();
            assertThat(result.get("ruleId").asString()).isEqualTo(rule);
        }
    }

    @Test
    void braces_stand_twice_in_a_message() {
        // Clause 3.11.5: one brace alone would hold the place of an argument.
        String log = Sarif.write(List.of(in("a", "{x} is no value").help("write {lash in mm}")), "1");

        assertThat(run(log).at("/results/0/message/text").asString())
                .isEqualTo("{{x}} is no value\nhelp: write {{lash in mm}}");
    }

    @Test
    void a_file_is_named_by_a_reference() {
        // RFC 3986, clause 4.2: a colon in the first step of a relative reference would read as a scheme.
        assertThat(uri("first look/ventil\u00F6ffnung.inspection"))
                .isEqualTo("first%20look/ventil%C3%B6ffnung.inspection");
        assertThat(uri("parts\\bench.inspection")).isEqualTo("parts/bench.inspection");
        assertThat(uri("a:b.inspection")).isEqualTo("./a:b.inspection");
        assertThat(uri("/shop/a b.inspection")).isEqualTo(ROOT + "shop/a%20b.inspection");
        assertThat(uri("C:\\shop\\a.inspection")).isEqualTo(ROOT + "C:/shop/a.inspection");
    }
}
