package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A schema knows the keys that the reader knows, in every object that a file can hold, and no others. The reader itself is
 * asked: of a key that it does not know it says which it does.
 */
class SchemaKeysTest {

    private static final String NOBODYS_KEY = "zzzzzzzzzzzzzzzz";
    private static final String KNOWN = "known are ";

    @ParameterizedTest
    @EnumSource(Format.class)
    void a_schema_has_the_keys_of_the_reader_and_no_others(Format format) throws IOException {
        Walk walk = Walk.of(format);

        for (Map.Entry<List<String>, Set<String>> object : walk.objects.entrySet()) {
            assertThat(known(format, object.getKey()))
                    .as("%s %s", format, object.getKey())
                    .isEqualTo(object.getValue());
        }

        // Not one object of the schema is without an example, or nobody has asked for its keys.
        assertThat(walk.unseen()).isEmpty();
    }

    /** The keys that the reader names when it is shown one that it does not know. */
    private static Set<String> known(Format format, List<String> path) throws IOException {
        JsonNode whole = JsonMapper.shared().readTree(Files.readString(Good.file(format)));
        JsonNode place = whole;
        for (String step : path) {
            place = place instanceof ArrayNode ? place.get(Integer.parseInt(step)) : place.get(step);
        }
        ((ObjectNode) place).put(NOBODYS_KEY, 1);
        return format.parse("file.json", whole.toString().getBytes(UTF_8)).problems().stream()
                .filter(problem -> problem.code().equals("LP612"))
                .map(problem -> String.valueOf(problem.help()))
                .filter(help -> help.startsWith(KNOWN))
                .map(help -> new TreeSet<>(
                        Arrays.asList(help.substring(KNOWN.length()).split(", "))))
                .findFirst()
                .orElseThrow();
    }

    /** A sound file and its schema, gone through side by side. */
    private static final class Walk {
        private final JsonNode schema;
        private final Map<List<String>, Set<String>> objects = new LinkedHashMap<>();
        private final Set<JsonNode> seen = Collections.newSetFromMap(new IdentityHashMap<>());

        private Walk(JsonNode schema) {
            this.schema = schema;
        }

        static Walk of(Format format) throws IOException {
            Walk walk = new Walk(JsonMapper.shared().readTree(Schemas.text(format)));
            walk.visit(JsonMapper.shared().readTree(Files.readString(Good.file(format))), walk.schema, List.of());
            return walk;
        }

        private void visit(JsonNode node, JsonNode rule, List<String> path) {
            JsonNode meant = meant(node, rule);
            if (node instanceof ObjectNode && meant.has("properties")) {
                JsonNode properties = meant.get("properties");
                seen.add(meant);
                objects.put(path, keys(rule, properties));
                node.propertyNames().forEach(key -> visit(node.get(key), properties.get(key), below(path, key)));
            } else if (node instanceof ObjectNode) {
                JsonNode each = meant.get("additionalProperties");
                node.propertyNames().forEach(key -> visit(node.get(key), each, below(path, key)));
            } else if (node instanceof ArrayNode items && meant.has("items")) {
                for (int i = 0; i < items.size(); i++) {
                    visit(items.get(i), meant.get("items"), below(path, String.valueOf(i)));
                }
            }
        }

        private static List<String> below(List<String> path, String step) {
            List<String> below = new ArrayList<>(path);
            below.add(step);
            return below;
        }

        /** The reader knows one list of keys for both sorts of entries, and says of each key to which it belongs. */
        private Set<String> keys(JsonNode rule, JsonNode properties) {
            Set<String> keys = new TreeSet<>(properties.propertyNames());
            if (rule.has("then") && !rule.has("properties")) {
                keys.addAll(at(rule.get("then")).get("properties").propertyNames());
                keys.addAll(at(rule.get("else")).get("properties").propertyNames());
            }
            return keys;
        }

        private JsonNode at(JsonNode rule) {
            return rule.has("$ref") ? at(schema.at(rule.get("$ref").asString().substring(1))) : rule;
        }

        /** The rule that speaks of this value, where there are several. */
        private JsonNode meant(JsonNode node, JsonNode rule) {
            JsonNode here = at(rule);
            if (here.has("if") && !here.has("properties")) {
                String key = here.at("/if/required/0").asString();
                return meant(node, here.get(node.has(key) ? "then" : "else"));
            }
            for (String several : List.of("anyOf", "oneOf")) {
                if (here.has(several) && !here.has("properties")) {
                    for (JsonNode one : here.get(several)) {
                        JsonNode meant = meant(node, one);
                        if (speaksOf(meant, node)) {
                            return meant;
                        }
                    }
                }
            }
            return here;
        }

        private static boolean speaksOf(JsonNode rule, JsonNode node) {
            JsonNode kind = rule.at("/properties/kind/const");
            return node instanceof ObjectNode
                    ? rule.has("properties") && (kind.isMissingNode() || kind.equals(node.get("kind")))
                    : node instanceof ArrayNode ? rule.has("items") : !rule.has("properties") && !rule.has("items");
        }

        /** Objects that the schema closes to other keys, and that the sound file has no example of. */
        List<String> unseen() {
            List<String> unseen = new ArrayList<>();
            look(schema, "#", unseen);
            return unseen;
        }

        private void look(JsonNode rule, String place, List<String> unseen) {
            if (rule.has("properties") && rule.path("additionalProperties").isBoolean() && !seen.contains(rule)) {
                unseen.add(place);
            }
            if (rule instanceof ObjectNode) {
                rule.propertyNames().forEach(key -> look(rule.get(key), place + "/" + key, unseen));
            }
            if (rule instanceof ArrayNode) {
                rule.forEach(each -> look(each, place + "/…", unseen));
            }
        }
    }
}
