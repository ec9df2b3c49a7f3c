package io.github.leafproof.examples.speed;

import java.util.List;
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

/** One sheet of the common work, judged: another one of 2 000 each time, so that no branch is learned by heart. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class JudgingBenchmark {

    private static final int LOOKS = 2_000;

    @Param
    public Contestants contestant = Contestants.BY_HAND;

    @Param({"0.10", "0.12"})
    public double lashMax;

    private final Verdicts verdicts = new Verdicts();
    private Runnable next = () -> {};

    /** Nobody is timed who does not come to the verdicts of the work done by hand. */
    @Setup
    public void bind() {
        next = bound(contestant.under(lashMax));
    }

    private <I> Runnable bound(Contestant<I> each) {
        ByHand byHand = new ByHand(lashMax);
        List<Look> looks = Look.random(LOOKS, 7);
        for (Look look : looks) {
            if (!each.judged(look).equals(byHand.judged(look))) {
                throw new IllegalStateException(contestant + " judges otherwise: " + look);
            }
        }
        List<I> all = looks.stream().map(each::bound).toList();
        return new Runnable() {
            private int number;

            @Override
            public void run() {
                each.judge(all.get(number), verdicts);
                number = number == LOOKS - 1 ? 0 : number + 1;
            }
        };
    }

    @Benchmark
    public Verdicts sheet() {
        next.run();
        return verdicts;
    }
}
