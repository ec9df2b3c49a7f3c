package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A sound file with one thing in it changed, at every place and in every way that a hand slips: the schema and the reader say
 * the same of it. What only the reader can see is listed with the reason.
 */
class SchemaAndReaderTest {

    /** What a schema cannot see, by the reader's code for it. */
    private static final Map<String, String> BEYOND_A_SCHEMA = Map.of(
            "LP621", "a schema's pattern does not know all units and ways to write a number",
            "LP622", "a schema does not know what dimension a unit is of",
            "LP626", "a schema cannot compare two values",
            "LP631", "a schema cannot compare two values",
            "LP632", "a schema cannot compare two values",
            "LP618", "a schema does not know that two spellings are one marking",
            "LP643", "a schema cannot compare two values",
            "LP644", "a schema cannot compare two values",
            "LP653", "a schema does not see one entry from another");

    /** What stands where something else was meant. */
    private static final List<String> INSTEAD = List.of(
            "null",
            "true",
            "false",
            "0",
            "1",
            "-1",
            "2.5",
            "12345678901",
            "\"\"",
            "\" \"",
            "\"a word\"",
            "\"bell \\u0007\"",
            "\"0.05 mm\"",
            "\"0 mm\"",
            "\"-0.05 mm\"",
            "\"0.05\"",
            "\"2 h\"",
            "\"2026-03-04\"",
            "\"2026-02-30\"",
            "\"2026-03-04T10:12:00Z\"",
            "\"2026-03-04T10:12:00\"",
            "[]",
            "[\"a word\"]",
            "[\"a word\", \"a word\"]",
            "[1]",
            "[null]",
            "{}",
            "{\"zzzz\": 1}");

    private final List<String> schemaIsStricter = new ArrayList<>();
    private final List<String> readerIsStricter = new ArrayList<>();
    private int files;

    @ParameterizedTest
    @EnumSource(Format.class)
    void a_slip_of_the_hand_is_refused_by_both_or_by_neither(Format format) throws IOException {
        JsonNode sound = JsonMapper.shared().readTree(Files.readString(Good.file(format)));

        slips(sound, "$", () -> judge(format, sound));

        assertThat(files).isGreaterThan(100);
        assertThat(schemaIsStricter).as("refused by the schema alone").isEmpty();
        assertThat(readerIsStricter).as("refused by the reader alone").isEmpty();
    }

    private final StringBuilder place = new StringBuilder();

    private void judge(Format format, JsonNode changed) {
        files++;
        String json = changed.toString();
        Set<String> told = format.parse("file.json", json.getBytes(UTF_8)).problems().stream()
                .filter(Problem::isError)
                .map(Problem::code)
                .collect(Collectors.toCollection(TreeSet::new));
        boolean schemaRefuses = !Schemas.complaints(format, json).isEmpty();
        if (schemaRefuses && told.isEmpty()) {
            schemaIsStricter.add(place.toString());
        }
        if (!schemaRefuses && !BEYOND_A_SCHEMA.keySet().containsAll(told)) {
            readerIsStricter.add(place + " " + told);
        }
    }

    /** Changes one thing after the other, and puts each right again. */
    private void slips(JsonNode node, String path, Runnable judge) {
        if (node instanceof ObjectNode object) {
            at(path + " with a key too many", () -> {
                object.put("zzzz", 1);
                judge.run();
                object.remove("zzzz");
            });
            for (String key : List.copyOf(object.propertyNames())) {
                JsonNode was = object.get(key);
                slipsOf(path + "." + key, value -> object.set(key, value), was, judge);
                at(path + " without " + key, () -> {
                    List<String> keys = List.copyOf(object.propertyNames());
                    List<JsonNode> values = keys.stream().map(object::get).toList();
                    object.remove(key);
                    judge.run();
                    object.removeAll();
                    for (int i = 0; i < keys.size(); i++) {
                        object.set(keys.get(i), values.get(i));
                    }
                });
            }
        } else if (node instanceof ArrayNode items) {
            for (int i = 0; i < items.size(); i++) {
                int at = i;
                slipsOf(path + "[" + i + "]", value -> items.set(at, value), items.get(i), judge);
            }
            if (!items.isEmpty()) {
                at(path + " with its first twice", () -> {
                    items.add(items.get(0));
                    judge.run();
                    items.remove(items.size() - 1);
                });
            }
        }
    }

    private void slipsOf(String path, Consumer<JsonNode> put, JsonNode was, Runnable judge) {
        for (String instead : INSTEAD) {
            at(path + " = " + instead, () -> {
                put.accept(JsonMapper.shared().readTree(instead));
                judge.run();
            });
        }
        put.accept(was);
        slips(was, path, judge);
    }

    private void at(String where, Runnable what) {
        place.setLength(0);
        place.append(where);
        what.run();
    }
}
