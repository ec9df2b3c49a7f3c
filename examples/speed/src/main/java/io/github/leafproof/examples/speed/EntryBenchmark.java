package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.quantity.UnitSystem;
import io.github.leafproof.inspection.record.Document;
import io.github.leafproof.inspection.record.JobSheet;
import io.github.leafproof.inspection.record.OpenSheet;
import io.github.leafproof.inspection.verdict.Release;
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
import org.openjdk.jmh.annotations.Warmup;

/**
 * A sheet of a long procedure, its verdicts and its release: judged as a whole; judged on after one more entry, which takes
 * reading the entry for the procedure and judging what hangs on it; and both of a procedure that is nothing but this part, and
 * the judging of it alone.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class EntryBenchmark {

    @Param({"10", "100", "1000", "10000", "100000"})
    public int checks;

    private final LongWork part = new LongWork(2);
    private final Evidence partAlone = part.evidence(part.compiled(), part.sheet());
    private final Document<JobSheet> partSheet = part.sheet();
    private Evidence whole = partAlone;
    private Judgement before = Judge.judge(partAlone, UnitSystem.METRIC);
    private OpenSheet grown = OpenSheet.of(part.sheet());

    @Setup
    public void judgeButForOneEntry() {
        LongWork work = new LongWork(checks);
        Procedure procedure = work.compiled();
        whole = work.evidence(procedure, work.sheet());
        before = Judge.judge(work.evidence(procedure, work.sheetButForOneEntry()), UnitSystem.METRIC);
        grown = before.evidence().sheet().with(work.lastEntry()).orElseThrow();
    }

    @Benchmark
    public Release whole() {
        return Judge.judge(whole, UnitSystem.METRIC).released();
    }

    @Benchmark
    public Release oneEntryMore() {
        return before.continuedWith(grown).orElseThrow().released();
    }

    @Benchmark
    public Release thatPartFromItsSheet() {
        return Judge.judge(
                        Evidence.of(partAlone.graph(), partAlone.card(), partAlone.tray(), partSheet)
                                .orElseThrow(),
                        UnitSystem.METRIC)
                .released();
    }

    @Benchmark
    public Release thatPartAlone() {
        return Judge.judge(partAlone, UnitSystem.METRIC).released();
    }
}
