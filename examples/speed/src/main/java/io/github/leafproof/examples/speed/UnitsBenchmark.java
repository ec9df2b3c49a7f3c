package io.github.leafproof.examples.speed;

import io.github.leafproof.inspection.quantity.Quantity;
import io.github.leafproof.inspection.quantity.Unit;
import java.util.concurrent.TimeUnit;
import javax.measure.MetricPrefix;
import javax.measure.UnitConverter;
import javax.measure.quantity.Length;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * Quantities read from text, quantities converted with all their digits, and plain numbers converted, beside the reference
 * implementation of JSR 385.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 10, time = 1)
@Measurement(iterations = 5, time = 1)
public class UnitsBenchmark {

    private String text = "4.52 mm";
    private Unit metre = Unit.parse("m");
    private Quantity read = Quantity.parse(text);
    private javax.measure.Unit<Length> millimetre = MetricPrefix.MILLI(Units.METRE);
    private javax.measure.Quantity<Length> readByIndriya = Quantities.getQuantity(4.52, millimetre);
    private double number = 4.52;
    private Unit millimetreOfOurs = Unit.parse("mm");
    private UnitConverter toMetres = millimetre.getConverterTo(Units.METRE);

    @Benchmark
    public Quantity parse() {
        return Quantity.parse(text);
    }

    @Benchmark
    public Object parseByIndriya() {
        return Quantities.getQuantity(text);
    }

    @Benchmark
    public Quantity convert() {
        return read.in(metre);
    }

    @Benchmark
    public Object convertByIndriya() {
        return readByIndriya.to(Units.METRE);
    }

    @Benchmark
    public double number() {
        return metre.fromBase(millimetreOfOurs.toBase(number));
    }

    @Benchmark
    public double numberByIndriya() {
        return toMetres.convert(number);
    }
}
