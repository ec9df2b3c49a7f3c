package io.github.leafproof.examples.speed;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What a command costs from the start of Java to its end, beside a program that prints one line: of the program as it is
 * packaged, by its jar alone and by the script examples/leafproof, which has Java keep the classes and compile them once. All
 * are run in turn, so that whatever else the machine does disturbs all alike, and the median of the runs counts.
 */
final class ColdStart {

    private static final int RUNS = 21;

    /** What the script gives Java for a short command; here for the program that prints one line, too. */
    private static final String COMPILED_ONCE = "-XX:TieredStopAtLevel=1";

    private static final Path HOME = Path.of(System.getProperty("java.home"), "bin");
    private static final String JAVA = HOME.resolve("java").toString();

    private final Path project;

    ColdStart(Path project) {
        this.project = project;
    }

    /** The program that the others are measured by. */
    static final class OneLine {
        private OneLine() {}

        public static void main(String[] arguments) {
            System.out.println("ready");
        }
    }

    /** How something is started; what it takes is told in times of the first way that is started alike. */
    private record Way(String name, boolean byScript, List<String> command) {}

    String table() throws IOException, InterruptedException {
        List<Way> ways = ways();
        Map<Way, List<Double>> seconds = new LinkedHashMap<>();
        for (int run = 0; run < RUNS; run++) {
            for (Way way : ways) {
                seconds.computeIfAbsent(way, any -> new ArrayList<>()).add(run(way.command()));
            }
        }
        Table table = new Table("command", "started by", "ms, median of " + RUNS, "times one line");
        for (Way way : ways) {
            double first = ways.stream()
                    .filter(other -> other.byScript() == way.byScript())
                    .findFirst()
                    .map(other -> median(seconds, other))
                    .orElseThrow();
            double taken = median(seconds, way);
            table.row(
                    way.name(),
                    way.byScript() ? "the script" : "the jar",
                    Measure.number(1000 * taken),
                    Measure.number(taken / first));
        }
        return table.text();
    }

    private List<Way> ways() throws IOException {
        Path bench = project.resolve("examples/bench");
        String procedure = bench.resolve("first_look.inspection").toString();
        String sheet = bench.resolve("sheets/0412-trap.json").toString();
        List<String> vet = List.of("vet", procedure);
        List<String> inspect = List.of("inspect", procedure, "--sheet", sheet);
        String path = Path.of(OneLine.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .getPath())
                .toString();
        List<String> oneLine = List.of("-cp", path, OneLine.class.getName());
        List<String> jar = List.of(JAVA, "-jar", jar().toString());
        List<String> script = List.of(project.resolve("examples/leafproof").toString());
        return List.of(
                new Way("a main that prints one line", false, joined(List.of(JAVA), oneLine)),
                new Way("`vet` of the first look", false, joined(jar, vet)),
                new Way("`inspect` of the trap", false, joined(jar, inspect)),
                new Way("a main that prints one line", true, joined(List.of(JAVA, COMPILED_ONCE), oneLine)),
                new Way("`vet` of the first look", true, joined(script, vet)),
                new Way("`inspect` of the trap", true, joined(script, inspect)));
    }

    private Path jar() throws IOException {
        try (Stream<Path> files = Files.list(project.resolve("inspection-dsl/target"))) {
            return files.filter(file -> file.toString().endsWith("-all.jar"))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("package inspection-dsl first"));
        }
    }

    private static List<String> joined(List<String> first, List<String> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private static double run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("start", ".txt");
        try {
            long from = System.nanoTime();
            ProcessBuilder process =
                    new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out.toFile());
            // The script takes the Java that it finds first, and is to find the one that runs this.
            process.environment().merge("PATH", HOME.toString(), (old, own) -> own + File.pathSeparator + old);
            process.start().waitFor();
            return (System.nanoTime() - from) / 1e9;
        } finally {
            Files.delete(out);
        }
    }

    private static double median(Map<Way, List<Double>> seconds, Way way) {
        List<Double> taken = seconds.getOrDefault(way, List.of());
        return taken.stream().sorted().toList().get(taken.size() / 2);
    }
}
