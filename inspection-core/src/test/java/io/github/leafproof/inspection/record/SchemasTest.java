package io.github.leafproof.inspection.record;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.engine.FactKind;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
import io.github.leafproof.inspection.verdict.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SchemasTest {

    @ParameterizedTest
    @EnumSource(Format.class)
    void each_published_schema_is_a_schema_of_draft_2020_12(Format format) {
        assertThat(Schemas.complaintsAboutSchema(format)).isEmpty();
        assertThat(tree(format).get("$schema").asString()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }

    @ParameterizedTest
    @EnumSource(Format.class)
    void each_published_schema_accepts_a_sound_file(Format format) throws IOException {
        assertThat(Schemas.complaints(format, Files.readString(Good.file(format))))
                .isEmpty();
    }

    @Test
    void a_card_can_state_by_its_schema_what_it_can_state_by_the_table_of_facts() {
        JsonNode schema = tree(Format.ENGINE_CARD);
        List<String> stated = new ArrayList<>();
        for (String key : schema.get("properties").propertyNames()) {
            JsonNode group = schema.get("$defs").get(key);
            if (group == null) {
                stated.add(key);
            } else {
                group.get("properties").propertyNames().forEach(inner -> stated.add(key + "." + inner));
            }
        }

        assertThat(stated)
                .containsExactlyInAnyOrderElementsOf(Stream.concat(
                                CardFact.all().stream()
                                        .filter(fact -> fact.keeper() == Keeper.CARD)
                                        .map(CardFact::name),
                                Stream.of("variants", "shop"))
                        .toList());
    }

    @Test
    void the_words_a_schema_allows_are_the_words_the_program_understands() {
        JsonNode card = tree(Format.ENGINE_CARD);
        for (CardFact fact : CardFact.all()) {
            if (fact.kind() instanceof FactKind.OneOf oneOf) {
                String[] name = fact.name().split("\\.", 2);
                JsonNode holder = name.length == 1 ? card : card.get("$defs").get(name[0]);
                assertThat(words(holder.get("properties").get(name[name.length - 1])))
                        .isEqualTo(oneOf.choices());
            }
        }
        assertThat(words(tree(Format.GAUGE_TRAY).at("/$defs/reading/properties/of")))
                .isEqualTo(Dimension.names());
        assertThat(words(tree(Format.JOB_SHEET).at("/$defs/trial/properties/result")))
                .isEqualTo(
                        Stream.of(TrialResult.values()).map(TrialResult::word).toList());
        assertThat(words(tree(Format.REPORT).at("/$defs/outcome")))
                .isEqualTo(Stream.of(Outcome.values()).map(Outcome::word).toList());
        assertThat(words(tree(Format.REPORT).at("/$defs/check/properties/severity")))
                .isEqualTo(Stream.of(Severity.values()).map(Severity::word).toList());
        assertThat(words(tree(Format.REPORT).at("/properties/release")))
                .isEqualTo(Stream.of(Release.values()).map(Release::word).toList());
    }

    @Test
    void the_kinds_of_gauges_are_those_that_the_reader_understands() {
        List<String> kinds = new ArrayList<>();
        tree(Format.GAUGE_TRAY)
                .at("/properties/gauges/items/oneOf")
                .forEach(kind -> kinds.add(tree(Format.GAUGE_TRAY)
                        .at(kind.get("$ref").asString().substring(1) + "/properties/kind/const")
                        .asString()));

        String told = TrayFile.parse(
                        "t.json",
                        "{\"tray\": \"t\", \"gauges\": [{\"name\": \"g\", \"kind\": \"zzzzzzzz\"}]}".getBytes(UTF_8))
                .problems()
                .toString();

        assertThat(told).contains("understood are " + String.join(", ", kinds));
    }

    @Test
    void a_shop_can_call_its_own_facts_by_no_name_that_means_something_already() {
        assertThat(words(tree(Format.ENGINE_CARD).at("/$defs/own/propertyNames/not")))
                .isEqualTo(CardFact.all().stream().map(CardFact::name).toList());
    }

    @Test
    void a_schema_says_of_each_fact_what_the_table_of_facts_says_and_of_a_variant_the_same() {
        JsonNode card = tree(Format.ENGINE_CARD);
        for (CardFact fact : CardFact.all()) {
            if (fact.keeper() == Keeper.CARD) {
                String[] name = fact.name().split("\\.", 2);
                JsonNode holder = name.length == 1 ? card : card.get("$defs").get(name[0]);
                JsonNode rule = holder.get("properties").get(name[name.length - 1]);
                String meaning = fact.meaning();
                assertThat(rule.get("description").asString())
                        .isEqualTo(Character.toUpperCase(meaning.charAt(0)) + meaning.substring(1) + ".");
                JsonNode differs = card.at("/$defs/differences/properties").get(name[0]);
                boolean ofTheModel = List.of("model", "maker", "years").contains(fact.name());
                assertThat(differs)
                        .isEqualTo(ofTheModel ? null : card.get("properties").get(name[0]));
            }
        }
    }

    private static List<String> words(JsonNode schema) {
        List<String> words = new ArrayList<>();
        schema.get("enum").forEach(word -> words.add(word.asString()));
        return words;
    }

    private static JsonNode tree(Format format) {
        return JsonMapper.shared().readTree(Schemas.text(format));
    }
}
