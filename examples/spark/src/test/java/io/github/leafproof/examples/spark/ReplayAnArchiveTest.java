package io.github.leafproof.examples.spark;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.dsl.archive.Tally;
import io.github.leafproof.examples.GeneratedArchive;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledForJreRange;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.io.TempDir;

/** What Spark makes of an archive on one machine, its work cut up as it would be for many. */
@EnabledForJreRange(max = JRE.JAVA_21, disabledReason = "this Spark asks for Java 17 or 21")
class ReplayAnArchiveTest {
    private static final Path BENCH = Path.of("..", "bench");

    @TempDir
    private static Path here = Path.of("");

    private static final SparkSession SPARK = SparkSession.builder()
            .master("local[2]")
            .config("spark.ui.enabled", false)
            .config("spark.sql.shuffle.partitions", 2)
            .config("spark.sql.files.maxPartitionBytes", 200_000)
            .getOrCreate();

    private static Path archive = Path.of("");
    private static Procedure old = firstLook(BENCH);
    private static Procedure now = old;

    private static Procedure firstLook(Path folder) {
        return Procedure.read(folder.resolve("first_look.inspection")).orElseThrow();
    }

    @BeforeAll
    static void anArchiveAndANarrowerLimit() throws IOException {
        archive = GeneratedArchive.of(BENCH).write(BENCH, here.resolve("kept"), 200);
        byte[] noText = {'\n', '{', '"', (byte) 0xFF, (byte) 0xFE, '\r', '\n', '\n'};
        Files.write(archive, noText, StandardOpenOption.APPEND);
        Files.writeString(archive, "{\"sheet\": 7}", StandardCharsets.UTF_8, StandardOpenOption.APPEND);

        Path changed = here.resolve("changed");
        Files.createDirectories(changed.resolve("parts"));
        for (Path folder : List.of(Path.of(""), Path.of("parts"))) {
            try (Stream<Path> files = Files.list(BENCH.resolve(folder))) {
                for (Path file :
                        (Iterable<Path>) files.filter(each -> each.toString().endsWith(".inspection"))::iterator) {
                    Files.writeString(
                            changed.resolve(folder.resolve(String.valueOf(file.getFileName()))),
                            Files.readString(file)
                                    .replace(
                                            "require lash[valve] between engine.lash_min and engine.lash_max",
                                            "require lash[valve] between engine.lash_min and 0.08 mm"));
                }
            }
        }
        now = firstLook(changed);
    }

    @AfterAll
    static void done() {
        SPARK.stop();
    }

    @Test
    void spark_says_of_every_sheet_what_replay_says_to_the_last_digit() throws IOException {
        List<String> spark = ReplayAnArchive.results(SPARK, old, now, archive).collectAsList();

        assertThat(spark).hasSize(202).isEqualTo(replayed());
        assertThat(spark).anyMatch(line -> line.contains("\"differs\""));
        assertThat(spark).anyMatch(line -> line.contains("\"LP606\""));
    }

    @Test
    void the_movements_are_those_that_replay_counts() throws IOException {
        Tally tally = Tally.of(replay());
        compared().forEach(tally::add);

        List<String> movements = ReplayAnArchive.movements(SPARK, ReplayAnArchive.results(SPARK, old, now, archive));

        assertThat(movements).contains("same: " + tally.same(), "damaged: " + tally.damaged());
        for (Tally.Moved moved : tally.releases()) {
            assertThat(movements)
                    .contains(
                            moved.movement().before() + " → " + moved.movement().after() + ": " + moved.engines());
        }
    }

    private static Replay replay() {
        return Replay.of(old, now, Cabinet.ofFiles(), UnitSystem.METRIC);
    }

    private static List<Comparison> compared() {
        try (Stream<Comparison> compared =
                replay().compare(Archive.at(List.of(archive)).sheets())) {
            return compared.toList();
        }
    }

    /** Replay names its files as seen from where it stands; Spark as seen from the archive's folder. */
    private static List<String> replayed() {
        String folder = here.resolve("kept").toString().replace('\\', '/') + "/";
        List<String> lines = new ArrayList<>();
        compared()
                .forEach(comparison ->
                        lines.add(ReplayJson.of(comparison).strip().replace(folder, "")));
        return lines;
    }
}
