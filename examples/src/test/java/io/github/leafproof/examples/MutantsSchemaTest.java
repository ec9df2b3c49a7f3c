package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.mutants.Accepted;
import io.github.leafproof.dsl.mutants.Mutant;
import io.github.leafproof.dsl.mutants.MutantReport;
import io.github.leafproof.dsl.mutants.MutantsJson;
import io.github.leafproof.dsl.mutants.Watched;
import io.github.leafproof.dsl.rehearsal.Rehearsing;
import io.github.leafproof.dsl.source.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema of what {@code mutants} tells programs. */
class MutantsSchemaTest {

    private static final JsonNode SCHEMA =
            JsonMapper.shared().readTree(Project.text(Project.ROOT.resolve("docs/schemas/mutants.schema.json")));

    /** Survivors of every kind of nearness: none, another outcome, another probability; one of them accepted. */
    private static String written() {
        String text = """
                procedure trial "A trial" revision 1
                gauge rule : reading of length
                observe drop : length with rule ask "How far below?"
                observe cold : yes/no ask "Cold?"
                check level "Level" { require drop at most 10 mm }
                check chilled "Chilled" minor { require cold }
                rehearse "low" {
                  engine "cards/quillan-15.json"
                  gauges "trays/bench-one.json"
                  enter drop 9 mm, cold no
                  expect level passes
                }
                """;
        Procedure procedure =
                Procedure.compile(SourceText.of("trial.inspection", text)).orElseThrow();
        MutantReport report = MutantReport.of(List.of(Watched.of(procedure, Rehearsing.of(procedure, Project.BENCH))));
        Mutant first = report.surviving().get(0).mutant();
        return MutantsJson.write(report, Accepted.of(SourceText.of("accepted", first.name() + " because we say so")));
    }

    @Test
    void what_is_written_keeps_to_it() {
        String written = written();

        assertThat(BenchSheetsTest.complaints("mutants", written)).isEmpty();
        assertThat(written).contains("\"accepted\" : \"we say so\"", "\"nearest\" : null", "\"other_outcome\" : true");
    }

    @Test
    void its_words_are_the_programs() {
        List<String> kinds = new ArrayList<>();
        SCHEMA.at("/properties/surviving/items/properties/kind/enum").forEach(kind -> kinds.add(kind.asString()));
        assertThat(kinds)
                .isEqualTo(Stream.of(Mutant.Kind.values())
                        .map(kind -> kind.name().toLowerCase(Locale.ROOT))
                        .toList());
    }

    @Test
    void it_is_a_schema_and_accepts_the_example_on_the_page() {
        Matcher example = Pattern.compile("```json mutants\n(.*?)```", Pattern.DOTALL)
                .matcher(Project.text(Project.ROOT.resolve("docs/formats.md")));

        assertThat(example.find()).isTrue();
        assertThat(BenchSheetsTest.complaints("mutants", List.of(example.group(1))))
                .isEmpty();
        assertThat(BenchSheetsTest.complaintsAboutSchema("mutants")).isEmpty();
    }
}
