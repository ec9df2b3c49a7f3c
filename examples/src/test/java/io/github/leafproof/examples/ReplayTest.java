package io.github.leafproof.examples;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.CheckMoved;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.dsl.archive.Tally;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The bench's own sheets, and very many like them, under a first look with one limit changed. */
class ReplayTest {
    private static final Path SHEETS = Project.BENCH.resolve("sheets");

    private static Procedure withNarrowerLash() {
        return Bench.changed(
                "first_look",
                "parts/lash.inspection",
                "require lash[valve] between engine.lash_min and engine.lash_max",
                "require lash[valve] between engine.lash_min and 0.08 mm");
    }

    private static Replay replay(Procedure now) {
        return Replay.of(Bench.FIRST_LOOK, now, Cabinet.ofFiles(), UnitSystem.METRIC);
    }

    private static List<Comparison> compare(Replay replay, Path archive) {
        try (Stream<Comparison> compared =
                replay.compare(Archive.at(List.of(archive)).sheets())) {
            return compared.toList();
        }
    }

    @Test
    void a_limit_narrowed_by_two_hundredths_would_have_held_engines_that_went_to_the_stand() {
        List<Comparison> compared = compare(replay(withNarrowerLash()), SHEETS);

        Map<String, String> releases = new TreeMap<>();
        for (Comparison each : compared) {
            if (each instanceof Comparison.Differs differs) {
                releases.put(
                        differs.job().sheet(),
                        differs.before().word() + " → " + differs.after().word());
                assertThat(differs.checks().get(0).name()).startsWith("lash_within");
                assertThat(differs.checks().get(0).changes().get(0))
                        .extracting(CheckMoved.Change::what)
                        .isEqualTo("requires");
            }
        }
        assertThat(releases).containsEntry("0411", "ready → hold").containsEntry("0417", "ready → hold");
        assertThat(releases).doesNotContainKey("0413");
    }

    @Test
    void the_first_look_differs_nowhere_from_itself() {
        assertThat(compare(replay(Bench.FIRST_LOOK), Project.BENCH))
                .noneMatch(Comparison.Differs.class::isInstance)
                .noneMatch(Comparison.Damaged.class::isInstance)
                .anyMatch(Comparison.Same.class::isInstance);
    }

    @Test
    void a_thousand_sheets_are_replayed_alike_each_time_and_every_line_keeps_to_the_schema(@TempDir Path here)
            throws IOException {
        Path archive = GeneratedArchive.of(Project.BENCH).write(Project.BENCH, here, 1_000);
        Replay replay = replay(withNarrowerLash());

        List<String> lines = lines(replay, compare(replay, archive));

        assertThat(lines).isEqualTo(lines(replay, compare(replay(withNarrowerLash()), archive)));
        assertThat(BenchSheetsTest.complaints("replay", lines)).isEmpty();
        assertThat(BenchSheetsTest.complaintsAboutSchema("replay")).isEmpty();
        JsonNode summary =
                JsonMapper.shared().readTree(lines.get(lines.size() - 1)).get("summary");
        assertThat(summary.get("sheets").asInt()).isEqualTo(1_000);
        assertThat(summary.get("differing").asInt()).isGreaterThan(200);
        assertThat(summary.get("same").asInt()).isGreaterThan(200);
        assertThat(summary.get("damaged").asInt()).isGreaterThan(0);
        assertThat(summary.get("of_other_procedures").asInt()).isBetween(50, 200);
    }

    @Test
    void every_kind_of_line_keeps_to_the_schema() {
        List<Procedure> revisions = List.of(
                Bench.changed(
                        "first_look",
                        "first_look.inspection",
                        "displacement between 5 cm3",
                        "displacement between 12 cm3"),
                Bench.changed("first_look", "first_look.inspection", "decide at 95 %", "decide at 99.9 %"),
                // An observation and a check that are called otherwise; the rehearsals still call them as before.
                Bench.edited(
                        "first_look",
                        (file, text) -> file.equals("first_look.inspection")
                                ? text.substring(0, text.indexOf("\nrehearse "))
                                : text.replaceAll("\\bseals\\b(?=[ :])(?!,)", "sealings")
                                        .replace("seals_supple", "sealed")));
        for (Procedure now : revisions) {
            Replay replay = replay(now);
            List<String> lines = lines(replay, compare(replay, Project.BENCH));

            assertThat(lines).anyMatch(line -> line.contains("\"differs\""));
            assertThat(BenchSheetsTest.complaints("replay", lines)).isEmpty();
        }
    }

    private static List<String> lines(Replay replay, List<Comparison> compared) {
        Tally tally = Tally.of(replay);
        List<String> lines = new ArrayList<>(List.of(ReplayJson.of(replay)));
        for (Comparison comparison : compared) {
            tally.add(comparison);
            lines.add(ReplayJson.of(comparison));
        }
        lines.add(ReplayJson.of(tally));
        return lines;
    }
}
