package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Compiled;
import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
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

/** From the text of a long procedure to its graph, in Java that is warm. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgs = {"-Xmx6g", "-XX:+UseParallelGC"})
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class CompileBenchmark {

    @Param({"1000", "10000", "100000"})
    public int checks;

    private String text = "";

    @Setup
    public void write() {
        text = new LongWork(checks).text();
    }

    @Benchmark
    public Compiled compiled() {
        return Procedure.compile(SourceText.of("long.inspection", text));
    }
}
