package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.rehearsal.PlayedFile;
import io.github.leafproof.dsl.rehearsal.RehearsalJson;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.report.Parting;
import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema of rehearsals, and what the bench's own come to, as expected and not. */
class RehearsalSchemaTest {

    private static final JsonNode SCHEMA =
            JsonMapper.shared().readTree(Project.text(Project.ROOT.resolve("docs/schemas/rehearsal.schema.json")));

    private static final String SURPRISING = """
            procedure trial "A trial" revision 1
            gauge leaves : leaf set
            observe flips : count ask "Flips"
            observe lash : gap with leaves ask "Lash"
            let few = flips at most 4
            check free "Free" gate { require few }
            check inside "Lash" { after free   require lash between engine.lash_min and engine.lash_max }
            check said "Said" { when flips at least 2 require if few then flips at least 1 else flips at most 9 }
            rehearse "all otherwise" {
              engine "cards/quillan-15.json" variant "late cam"
              gauges "trays/bench-one.json"
              enter flips 3, lash passes "0.05" refuses "0.10"
              expect free fails, inside passes, said not_applicable
              expect release ready
            }
            rehearse "behind a shut gate" {
              engine "cards/quillan-15.json" variant "late cam"
              gauges "trays/bench-one.json"
              enter flips 12
              expect inside passes, said passes
            }
            rehearse "nothing to be read" {
              engine "cards/nobody.json" gauges "trays/bench-one.json"
              expect free passes
            }
            rehearse "nothing to be entered" {
              engine "cards/quillan-15.json" gauges "trays/bench-one.json"
              enter lash passes "0.99"
              expect inside passes
            }
            """;

    private static PlayedFile played(String name, Compiled compiled) {
        return new PlayedFile(
                name,
                compiled,
                compiled.procedure()
                        .map(procedure ->
                                Rehearsing.of(procedure, Project.BENCH).play())
                        .orElse(List.of()));
    }

    private static String surprising() {
        return RehearsalJson.write(List.of(
                played("trial.inspection", Procedure.compile(SourceText.of("trial.inspection", SURPRISING))),
                played(
                        "broken.inspection",
                        Procedure.compile(SourceText.of("broken.inspection", "procedure broken")))));
    }

    @Test
    void whatever_rehearsals_come_to_keeps_to_the_schema() {
        List<String> all = new ArrayList<>(List.of(surprising()));
        for (String name : Bench.procedures()) {
            all.add(RehearsalJson.write(
                    List.of(played(name, Procedure.read(Project.BENCH.resolve(name + ".inspection"))))));
        }

        assertThat(BenchSheetsTest.complaints("rehearsal", all)).isEmpty();
    }

    @Test
    void it_says_what_came() {
        JsonNode run = JsonMapper.shared().readTree(surprising());

        assertThat(run.get("good").asBoolean()).isFalse();
        assertThat(run.get("totals").toString())
                .isEqualTo("{\"rehearsals\":4,\"as_expected\":0,\"surprises\":2,\"not_played\":2,"
                        + "\"files_with_mistakes\":1}");
        assertThat(run.at("/files/0/rehearsals/0/surprises")).hasSize(4);
        assertThat(run.at("/files/0/rehearsals/2/problems/0/file").asString()).endsWith("nobody.json");
        assertThat(run.at("/files/1/procedure").isNull()).isTrue();
    }

    @Test
    void its_words_are_the_programs_and_it_accepts_the_example_on_the_page() {
        Matcher example = Pattern.compile("```json rehearsal\n(.*?)```", Pattern.DOTALL)
                .matcher(Project.text(Project.ROOT.resolve("docs/formats.md")));
        List<String> kinds = new ArrayList<>();
        SCHEMA.findValue("kind").get("enum").forEach(word -> kinds.add(word.asString()));

        assertThat(kinds)
                .isEqualTo(
                        Stream.of(Parting.Kind.values()).map(Parting.Kind::word).toList());
        assertThat(example.find()).isTrue();
        assertThat(BenchSheetsTest.complaints("rehearsal", example.group(1))).isEmpty();
        assertThat(BenchSheetsTest.complaintsAboutSchema("rehearsal")).isEmpty();
    }
}
