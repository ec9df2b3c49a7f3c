package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.archive.Archive;
import io.github.leafproof.dsl.archive.Cabinet;
import io.github.leafproof.dsl.archive.Comparison;
import io.github.leafproof.dsl.archive.Replay;
import io.github.leafproof.dsl.archive.ReplayJson;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.stream.Stream;

/**
 * What it takes to judge an archive under two revisions of a procedure, from the lines of the sheets to those of the comparisons,
 * and how busy the processors are in the meantime: by the processor time of the whole process, in Java that begins cold.
 */
final class ReplayWork {

    private static final int SHEETS = 20_000;

    private static final String AS_IT_WAS = "between engine.lash_min and engine.lash_max";
    private static final String NARROWER = "between engine.lash_min and 0.08 mm";

    private final Path bench;

    ReplayWork(Path project) {
        this.bench = project.resolve("examples/bench");
    }

    String table() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("replay");
        Path archive = archive(folder);
        Path old = bench.resolve("first_look.inspection");
        Path narrower = narrower(folder);
        int processors = Runtime.getRuntime().availableProcessors();
        Table table = new Table("sheets", "of these differ", "seconds", "sheets a second", "processors busy");
        for (Path now : List.of(old, narrower)) {
            Took took = inJava(List.of(old, now, bench.resolve("sheets"), archive, folder));
            table.row(
                    String.valueOf(SHEETS),
                    String.valueOf(took.differing()),
                    Measure.number(took.seconds()),
                    Measure.number(SHEETS / took.seconds()),
                    Measure.number(100 * took.processorSeconds() / (processors * took.seconds())) + " %");
        }
        return table.text();
    }

    private record Took(long differing, double seconds, double processorSeconds) {}

    /** The sheets of the first look, again and again, each of an engine of its own. */
    private Path archive(Path folder) throws IOException {
        List<String> sheets = new ArrayList<>();
        try (Stream<Path> files = Files.list(bench.resolve("sheets")).sorted()) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".json")).toList()) {
                String sheet = Files.readString(file);
                if (sheet.contains("\"procedure\": \"first_look\"")) {
                    sheets.add(sheet.replaceAll("\\s*\\n\\s*", " ").strip());
                }
            }
        }
        Path archive = folder.resolve("kept.jsonl");
        try (Writer out = Files.newBufferedWriter(archive)) {
            for (int i = 0; i < SHEETS; i++) {
                String serial = "\"serial\": \"Q15-" + (100_000 + i) + '"';
                String sheet = sheets.get(i % sheets.size());
                out.write(sheet.replaceFirst("\"serial\": \"[^\"]*\"", serial) + "\n");
            }
        }
        return archive;
    }

    /** The first look with another limit of the lash, in a folder of its own. */
    private Path narrower(Path folder) throws IOException {
        Path parts = Files.createDirectories(folder.resolve("parts"));
        try (Stream<Path> files = Files.list(bench.resolve("parts"))) {
            for (Path part : files.toList()) {
                Files.writeString(
                        parts.resolve(String.valueOf(part.getFileName())),
                        Files.readString(part).replace(AS_IT_WAS, NARROWER));
            }
        }
        return Files.copy(bench.resolve("first_look.inspection"), folder.resolve("first_look.inspection"));
    }

    private static Took inJava(List<Path> paths) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseParallelGC",
                "-cp",
                System.getProperty("java.class.path"),
                OneArchive.class.getName()));
        paths.forEach(path -> command.add(path.toString()));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (Scanner said = new Scanner(process.getInputStream(), StandardCharsets.UTF_8).useLocale(Locale.ROOT)) {
            Took took = new Took(said.nextLong(), said.nextDouble(), said.nextDouble());
            process.waitFor();
            return took;
        }
    }

    /** The work itself, in a Java machine of its own. */
    static final class OneArchive {
        private OneArchive() {}

        /** Takes the two procedures, the folder that the sheets name their files from, the archive, and a folder to write to. */
        public static void main(String[] arguments) throws IOException {
            List<Path> paths = Stream.of(arguments).map(Path::of).toList();
            Replay replay = Replay.of(
                    Procedure.read(paths.get(0)).orElseThrow(),
                    Procedure.read(paths.get(1)).orElseThrow(),
                    Cabinet.ofFiles(),
                    UnitSystem.METRIC);
            Duration before = processorTime();
            long from = System.nanoTime();
            long differing = 0;
            try (InputStream lines = Files.newInputStream(paths.get(3));
                    Stream<Comparison> comparisons = replay.compare(
                            Archive.of(List.of(new Archive.Source.Lines("kept.jsonl", lines, paths.get(2))))
                                    .sheets());
                    Writer out = Files.newBufferedWriter(paths.get(4).resolve("replayed.jsonl"))) {
                for (Iterator<Comparison> each = comparisons.iterator(); each.hasNext(); ) {
                    Comparison comparison = each.next();
                    differing += comparison instanceof Comparison.Differs ? 1 : 0;
                    out.write(ReplayJson.of(comparison));
                }
            }
            double seconds = (System.nanoTime() - from) / 1e9;
            double processor = processorTime().minus(before).toNanos() / 1e9;
            new PrintStream(System.out, true, StandardCharsets.UTF_8)
                    .println(differing + " " + seconds + " " + processor);
        }

        private static Duration processorTime() {
            return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
        }
    }
}
