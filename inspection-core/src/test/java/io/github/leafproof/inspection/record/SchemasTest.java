package io.github.leafproof.inspection.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.engine.CardFact;
import io.github.leafproof.inspection.engine.CardFact.Keeper;
import io.github.leafproof.inspection.engine.FactKind;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.verdict.Outcome;
import io.github.leafproof.inspection.verdict.Release;
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
        assertThat(words(tree(Format.REPORT).at("/properties/release")))
                .isEqualTo(Stream.of(Release.values()).map(Release::word).toList());
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
