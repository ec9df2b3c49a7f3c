package io.github.leafproof.examples.speed;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a command costs from the start of Java to its end, beside a program that prints one line. All are run in turn, so that
 * whatever else the machine does disturbs all alike, and the median of the runs counts.
 */
final class ColdStart {

    private static final int RUNS = 21;

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

    String table() throws IOException, InterruptedException {
        Map<String, List<Double>> seconds = new LinkedHashMap<>();
        for (int run = 0; run < RUNS; run++) {
            for (Map.Entry<String, List<String>> command : commands().entrySet()) {
                double taken = run(command.getValue());
                seconds.computeIfAbsent(command.getKey(), name -> new ArrayList<>())
                        .add(taken);
            }
        }
        Table table = new Table("command", "ms, median of " + RUNS, "times one line");
        double first = median(seconds.values().iterator().next());
        seconds.forEach((name, taken) ->
                table.row(name, Measure.number(1000 * median(taken)), Measure.number(median(taken) / first)));
        return table.text();
    }

    private Map<String, List<String>> commands() {
        Path bench = project.resolve("examples/bench");
        String procedure = bench.resolve("first_look.inspection").toString();
        String sheet = bench.resolve("sheets/0412-trap.json").toString();
        String path = System.getProperty("java.class.path");
        String main = "io.github.leafproof.dsl.cli.Main";
        Map<String, List<String>> commands = new LinkedHashMap<>();
        commands.put("a main that prints one line", java(path, OneLine.class.getName()));
        commands.put("`vet` of the first look", java(path, main, "vet", procedure));
        commands.put("`inspect` of the trap", java(path, main, "inspect", procedure, "--sheet", sheet));
        return commands;
    }

    private static List<String> java(String path, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
        command.add("-cp");
        command.add(path);
        command.addAll(List.of(arguments));
        return List.copyOf(command);
    }

    private static double run(List<String> command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("start", ".txt");
        try {
            long from = System.nanoTime();
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(out.toFile())
                    .start()
                    .waitFor();
            return (System.nanoTime() - from) / 1e9;
        } finally {
            Files.delete(out);
        }
    }

    private static double median(List<Double> numbers) {
        return numbers.stream().sorted().toList().get(numbers.size() / 2);
    }
}
