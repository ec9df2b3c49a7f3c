package io.github.leafproof.examples.speed;

import io.github.leafproof.dsl.Procedure;
import io.github.leafproof.dsl.source.SourceText;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What it costs to make a rule ready, by engines that know types: 100 rules together, from their text, in warm Java. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 10, time = 3)
@Measurement(iterations = 5, time = 1)
@OperationsPerInvocation(RulesBenchmark.RULES)
public class RulesBenchmark {

    static final int RULES = 100;

    private final RuleTexts texts = new RuleTexts(RULES);

    @Benchmark
    public Object leafproof() {
        return Procedure.compile(SourceText.of("rules.inspection", texts.procedure()))
                .orElseThrow();
    }

    @Benchmark
    public Object cel() {
        return ByCel.compiled(texts.cel());
    }

    @Benchmark
    public Object janino() {
        return ByJanino.compiled(texts.script("look.recess()"));
    }

    @Benchmark
    public Object mvel() {
        return ByMvel.compiled(texts.script("recess"));
    }

    @Benchmark
    public Object drools() {
        return ByDrools.compiled(texts.drl());
    }
}
