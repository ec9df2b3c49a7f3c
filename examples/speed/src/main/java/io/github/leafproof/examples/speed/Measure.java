package io.github.leafproof.examples.speed;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.util.Statistics;

/** Measures, and writes what it found into the page docs/performance.md: each table together with the machine it is of. */
public final class Measure {

    private static final String ALLOCATED = "gc.alloc.rate.norm";

    private final Page page;
    private final Map<String, Making> tables = new LinkedHashMap<>();

    /** How a table is made. */
    private interface Making {
        String table() throws IOException, RunnerException, InterruptedException;
    }

    private Measure(Page page) {
        this.page = page;
        tables.put("judging", () -> judging(run(JudgingBenchmark.class)));
        tables.put("sheets", () -> sheets(run(SheetsBenchmark.class)));
        tables.put("checks", () -> checks(run(ChecksBenchmark.class)));
        tables.put("entry", () -> entry(run(EntryBenchmark.class)));
        tables.put("compiling", () -> compiling(run(CompileBenchmark.class)));
        tables.put("rules", () -> besideOurs("leafproof", run(RulesBenchmark.class), "µs a rule"));
        tables.put("units", () -> besideOurs("", run(UnitsBenchmark.class), "ns"));
        tables.put("start", () -> new ColdStart(page.project()).table());
        tables.put("replay", () -> new ReplayWork(page.project()).table());
    }

    /** Takes the page, and which of its tables to measure. */
    public static void main(String[] arguments) throws IOException, RunnerException, InterruptedException {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        Measure measure = new Measure(new Page(Path.of(arguments[0])));
        List<String> wanted = List.of(arguments).subList(1, arguments.length);
        List<String> unknown = wanted.stream()
                .filter(name -> !measure.tables.containsKey(name))
                .toList();
        // Told before anything is measured, for that takes minutes.
        if (!unknown.isEmpty()) {
            out.println("nothing is measured: the page has no table called " + String.join(", ", unknown)
                    + "\n   help: it has " + String.join(", ", measure.tables.keySet()));
            System.exit(2);
        }
        for (String name : wanted) {
            measure.page.write(
                    name, Objects.requireNonNull(measure.tables.get(name)).table());
            out.println("measured: " + name);
        }
    }

    private static Collection<RunResult> run(Class<?> benchmark) throws RunnerException {
        return new Runner(new OptionsBuilder()
                        .include("\\." + benchmark.getSimpleName() + "\\.")
                        .addProfiler(GCProfiler.class)
                        .shouldFailOnError(true)
                        .build())
                .run();
    }

    private static String judging(Collection<RunResult> results) {
        Table table = new Table("engine", "most lash", "ns a sheet", "times by hand", "bytes allocated");
        Map<String, Double> byHand = new LinkedHashMap<>();
        for (RunResult result : results) {
            Contestants contestant = Contestants.valueOf(result.getParams().getParam("contestant"));
            String lashMax = result.getParams().getParam("lashMax");
            double score = score(result);
            byHand.putIfAbsent(lashMax, score);
            table.row(
                    contestant.title(),
                    lashMax + " mm",
                    number(score) + range(result),
                    number(score / byHand.getOrDefault(lashMax, score)),
                    number(allocated(result)));
        }
        return table.text();
    }

    private static String sheets(Collection<RunResult> results) {
        Map<String, Map<String, Double>> bySheets = new LinkedHashMap<>();
        for (RunResult result : results) {
            String sheets = result.getParams().getParam("sheets");
            bySheets.computeIfAbsent(sheets, each -> new LinkedHashMap<>())
                    .put(result.getParams().getParam("threads"), score(result) / Integer.parseInt(sheets));
        }
        Table table = new Table("sheets", "one thread, ns a sheet", "two threads, ns a sheet", "times as fast");
        bySheets.forEach((sheets, scores) -> {
            double one = scores.getOrDefault("1", Double.NaN);
            double two = scores.getOrDefault("2", Double.NaN);
            table.row(sheets, number(one), number(two), number(one / two));
        });
        return table.text();
    }

    private static String checks(Collection<RunResult> results) {
        Map<String, Map<String, Double>> byChecks = byParameter("checks", results);
        Table table = new Table("checks", "by bytecode, ns a check", "interpreted, ns a check", "times by bytecode");
        byChecks.forEach((checks, scores) -> {
            double quick = scores.getOrDefault("byBytecode", Double.NaN) / Integer.parseInt(checks);
            double interpreted = scores.getOrDefault("interpreted", Double.NaN) / Integer.parseInt(checks);
            table.row(checks, number(quick), number(interpreted), number(interpreted / quick));
        });
        return table.text();
    }

    private static String entry(Collection<RunResult> results) {
        Map<String, Map<String, Double>> byChecks = byParameter("checks", results);
        Table table = new Table(
                "checks",
                "whole sheet, µs",
                "one entry more, µs",
                "that part from its sheet, µs",
                "that part judged, µs",
                "entry / part from its sheet",
                "whole / entry");
        byChecks.forEach((checks, scores) -> {
            double whole = scores.getOrDefault("whole", Double.NaN);
            double one = scores.getOrDefault("oneEntryMore", Double.NaN);
            double part = scores.getOrDefault("thatPartFromItsSheet", Double.NaN);
            double judged = scores.getOrDefault("thatPartAlone", Double.NaN);
            table.row(
                    checks,
                    number(whole),
                    number(one),
                    number(part),
                    number(judged),
                    number(one / part),
                    number(whole / one));
        });
        return table.text();
    }

    private static String compiling(Collection<RunResult> results) {
        Table table = new Table("checks", "bytes of source", "ms", "µs a byte", "µs a check");
        for (RunResult result : results) {
            int checks = Integer.parseInt(result.getParams().getParam("checks"));
            int bytes = new LongWork(checks).text().getBytes(StandardCharsets.UTF_8).length;
            double score = score(result);
            table.row(
                    String.valueOf(checks),
                    String.valueOf(bytes),
                    number(score) + range(result),
                    number(1000 * score / bytes),
                    number(1000 * score / checks));
        }
        return table.text();
    }

    /** Each benchmark's score, and how many times as much it is as ours: its namesake, or else the one named. */
    private static String besideOurs(String ours, Collection<RunResult> results, String unit) {
        Map<String, RunResult> byName = new LinkedHashMap<>();
        results.forEach(result -> byName.put(name(result), result));
        Table table = new Table("what", unit, "times ours", "bytes allocated");
        byName.forEach((name, result) -> {
            RunResult own = byName.getOrDefault(name.replace("ByIndriya", ""), result);
            RunResult first = own.equals(result) ? byName.getOrDefault(ours, result) : own;
            table.row(
                    name,
                    number(score(result)) + range(result),
                    number(score(result) / score(first)),
                    number(allocated(result)));
        });
        return table.text();
    }

    /** The scores of each benchmark, for each value of a parameter. */
    private static Map<String, Map<String, Double>> byParameter(String parameter, Collection<RunResult> results) {
        Map<String, Map<String, Double>> scores = new LinkedHashMap<>();
        for (RunResult result : results) {
            scores.computeIfAbsent(result.getParams().getParam(parameter), value -> new LinkedHashMap<>())
                    .put(name(result), score(result));
        }
        return scores;
    }

    private static String name(RunResult result) {
        return result.getPrimaryResult().getLabel();
    }

    /** The median, which a machine that does something else for a second does not move. */
    private static double score(RunResult result) {
        return result.getPrimaryResult().getStatistics().getPercentile(50);
    }

    private static String range(RunResult result) {
        Statistics all = result.getPrimaryResult().getStatistics();
        return " (" + number(all.getMin()) + " to " + number(all.getMax()) + ")";
    }

    private static double allocated(RunResult result) {
        return result.getSecondaryResults().entrySet().stream()
                .filter(each -> each.getKey().endsWith(ALLOCATED))
                .mapToDouble(each -> each.getValue().getScore())
                .findFirst()
                .orElse(Double.NaN);
    }

    /** To three significant digits, which is more than a run is good for. */
    static String number(double number) {
        if (number < 0.005) {
            return "0";
        }
        int digits = number >= 100 ? 0 : number >= 10 ? 1 : 2;
        return String.format(Locale.ROOT, "%,." + digits + "f", number).replace(',', ' ');
    }
}
