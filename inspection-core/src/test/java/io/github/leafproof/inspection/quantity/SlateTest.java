package io.github.leafproof.inspection.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What is calculated on a slate is what estimates come to, to the last bit. */
class SlateTest {

    private static final int LINES = 12;
    private static final List<Source> SOURCES = List.of(
            Source.stated("a gauge"),
            Source.stated("another gauge"),
            Source.withinLimits("a gauge, last digit"),
            new Source("scatter", 3),
            new Source("scatter of others", 7));

    private interface OnLines {
        boolean at(Slate slate, int into, int a, int b);
    }

    private record Operation(BinaryOperator<Estimate> estimates, OnLines lines) {
        static Operation one(UnaryOperator<Estimate> estimates, OnLines lines) {
            return new Operation((a, b) -> estimates.apply(a), lines);
        }
    }

    private static final List<Operation> OPERATIONS = List.of(
            new Operation(Estimate::plus, Slate::plus),
            new Operation(Estimate::minus, Slate::minus),
            new Operation(Estimate::times, Slate::times),
            new Operation(Estimate::dividedBy, Slate::dividedBy),
            new Operation(Estimate::min, Slate::min),
            new Operation(Estimate::max, Slate::max),
            Operation.one(Estimate::negated, (slate, into, a, b) -> slate.negated(into, a)),
            Operation.one(Estimate::absolute, (slate, into, a, b) -> slate.absolute(into, a)),
            Operation.one(Estimate::sqrt, (slate, into, a, b) -> slate.sqrt(into, a)),
            Operation.one(x -> x.power(3), (slate, into, a, b) -> slate.power(into, a, 3)),
            Operation.one(x -> x.power(0), (slate, into, a, b) -> slate.power(into, a, 0)),
            Operation.one(x -> x.power(-2), (slate, into, a, b) -> slate.power(into, a, -2)),
            Operation.one(
                    x -> x.map(Math::sin, Math.cos(x.value()), Dimension.RATIO),
                    (slate, into, a, b) -> slate.sin(into, a)),
            Operation.one(
                    x -> x.map(Math::cos, -Math.sin(x.value()), Dimension.RATIO),
                    (slate, into, a, b) -> slate.cos(into, a)));

    /** Plain numbers, some exact, some equal, some zero, most of them with sources in common. */
    private static Estimate number(Random random) {
        double value = random.nextInt(4) == 0 ? random.nextInt(3) - 1 : 4 * random.nextGaussian();
        Estimate number = Estimate.exact(value, Dimension.RATIO);
        for (Source source : SOURCES) {
            if (random.nextInt(3) == 0) {
                number = number.withIndependent(random.nextInt(3) == 0 ? 0.5 : random.nextDouble(), source);
            }
        }
        return number;
    }

    @Property
    void whatever_is_calculated_in_a_row_comes_out_to_the_last_bit(@ForAll long seed) {
        Random random = new Random(seed);
        Slate slate = new Slate(LINES);
        List<Estimate> estimates = new ArrayList<>();
        for (int line = 0; line < 4; line++) {
            estimates.add(number(random));
            slate.write(line, estimates.get(line));
        }
        while (estimates.size() < LINES) {
            int a = random.nextInt(estimates.size());
            int b = random.nextInt(estimates.size());
            int into = estimates.size();
            Operation operation = OPERATIONS.get(random.nextInt(OPERATIONS.size()));
            boolean done = operation.lines().at(slate, into, a, b);
            try {
                estimates.add(operation.estimates().apply(estimates.get(a), estimates.get(b)));
                assertThat(done).isTrue();
            } catch (IllegalArgumentException refused) {
                assertThat(done).isFalse();
                return;
            }
            assertAlike(slate, into, estimates.get(into));
        }
    }

    private static void assertAlike(Slate slate, int line, Estimate estimate) {
        assertThat(slate.value(line)).isEqualTo(estimate.value());
        assertThat(slate.isExact(line)).isEqualTo(estimate.isExact());
        assertThat(slate.standardUncertainty(line)).isEqualTo(estimate.standardUncertainty());
        assertThat(slate.degreesOfFreedom(line)).isEqualTo(estimate.degreesOfFreedom());
    }

    @Test
    void two_readings_by_one_gauge_differ_by_less_than_each_is_uncertain() {
        Source gauge = Source.stated("a gauge");
        Slate slate = new Slate(3);
        slate.write(0, Estimate.of(294, Dimension.TEMPERATURE, 0.5, gauge));
        slate.write(1, Estimate.of(293, Dimension.TEMPERATURE, 0.5, gauge));
        assertThat(slate.minus(2, 0, 1)).isTrue();
        assertThat(slate.value(2)).isEqualTo(1);
        assertThat(slate.isExact(2)).isTrue();
    }

    @Test
    void a_line_is_wiped_before_it_is_written_again() {
        Slate slate = new Slate(2);
        slate.write(0, Estimate.of(1, Dimension.RATIO, 0.5, Source.stated("a gauge")));
        slate.write(0, 3);
        assertThat(slate.isExact(0)).isTrue();
        slate.write(0, 3, Estimate.of(1, Dimension.RATIO, 0.5, Source.stated("a gauge")));
        slate.copy(1, 0);
        slate.write(0, 4);
        assertAlike(slate, 1, Estimate.of(3, Dimension.RATIO, 0.5, Source.stated("a gauge")));
        assertThat(slate.lines()).isEqualTo(2);
    }

    @Test
    void an_uncertainty_without_bound_is_no_result() {
        Slate slate = new Slate(3);
        slate.write(0, Estimate.of(1, Dimension.RATIO, 1e200, Source.stated("a gauge")));
        slate.write(1, 1e200);
        assertThat(slate.times(2, 0, 1)).isFalse();
    }
}
