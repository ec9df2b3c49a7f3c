package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.bytecode.Figures;
import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.verdict.Release;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Sheets of the common work one after the other, from one to a million, shared out among threads: counts the engines that may go
 * on the stand. All sheets are in memory and read, so that nothing but judging, and fetching them from memory, is timed.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx4g")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SheetsBenchmark {

    private static final int KINDS = 2_000;

    @Param({"1", "10", "100", "1000", "10000", "100000", "1000000"})
    public int sheets;

    @Param({"1", "2"})
    public int threads;

    private final List<Callable<Integer>> shares = new ArrayList<>();
    private ExecutorService workers = Executors.newCachedThreadPool();

    @Setup
    public void read() {
        CommonSheets work = new CommonSheets(0.10);
        QuickJudge judge = QuickJudge.compiled(work.graph());
        List<Evidence> kinds =
                Look.random(KINDS, 7).stream().map(work::evidence).toList();
        List<Figures> all = new ArrayList<>();
        for (int sheet = 0; sheet < sheets; sheet++) {
            all.add(judge.figures(kinds.get(sheet % KINDS)));
        }
        for (int thread = 0; thread < threads; thread++) {
            int from = (int) ((long) sheets * thread / threads);
            int to = (int) ((long) sheets * (thread + 1) / threads);
            Outcomes outcomes = judge.blank();
            List<Figures> share = List.copyOf(all.subList(from, to));
            shares.add(() -> ready(judge, share, outcomes));
        }
        workers = Executors.newFixedThreadPool(threads);
    }

    private static int ready(QuickJudge judge, List<Figures> sheets, Outcomes outcomes) {
        int ready = 0;
        for (Figures sheet : sheets) {
            judge.judge(sheet, outcomes);
            ready += outcomes.release() == Release.READY ? 1 : 0;
        }
        return ready;
    }

    @Benchmark
    public int all() throws Exception {
        return threads == 1 ? shares.get(0).call() : together();
    }

    private int together() throws InterruptedException, ExecutionException {
        int ready = 0;
        for (Future<Integer> share : workers.invokeAll(shares)) {
            ready += share.get();
        }
        return ready;
    }

    @TearDown
    public void dismiss() {
        workers.shutdown();
    }
}
