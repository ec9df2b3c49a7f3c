package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.bytecode.Figures;
import io.github.leafproof.dsl.bytecode.Outcomes;
import io.github.leafproof.dsl.bytecode.QuickJudge;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.dsl.graph.Judge;
import io.github.leafproof.dsl.graph.Judgement;
import io.github.leafproof.inspection.quantity.UnitSystem;
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

/** One sheet of a procedure of more and more checks: judged by bytecode, and by the judge who can say why. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx4g")
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class ChecksBenchmark {

    @Param({"10", "100", "1000", "10000", "100000"})
    public int checks;

    private final LongWork least = new LongWork(2);
    private Evidence evidence = least.evidence(least.compiled(), least.sheet());
    private QuickJudge judge = QuickJudge.of(evidence.graph());
    private Figures figures = judge.figures(evidence);
    private Outcomes outcomes = judge.blank();

    @Setup
    public void read() {
        LongWork work = new LongWork(checks);
        Procedure procedure = work.compiled();
        evidence = work.evidence(procedure, work.sheet());
        judge = QuickJudge.compiled(procedure.graph());
        figures = judge.figures(evidence);
        outcomes = judge.blank();
    }

    @Benchmark
    public Outcomes byBytecode() {
        judge.judge(figures, outcomes);
        return outcomes;
    }

    @Benchmark
    public Judgement interpreted() {
        return Judge.judge(evidence, UnitSystem.METRIC);
    }
}
