package io.github.leafproof.dsl.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {

    private static Iterator<Integer> upTo(int end, AtomicInteger taken) {
        return IntStream.range(0, end).peek(i -> taken.incrementAndGet()).iterator();
    }

    @Test
    void results_come_in_the_order_of_the_things_and_not_of_the_work() {
        InOrder<Integer, Integer> inOrder = new InOrder<>(
                upTo(5_000, new AtomicInteger()),
                i -> {
                    // The first of some chunks has far more to do than the others.
                    int turns = i % 640 == 0 ? 100_000 : 1;
                    return IntStream.range(0, turns).map(turn -> -i).min().orElseThrow();
                },
                i -> 1,
                4);

        for (int i = 0; i < 5_000; i++) {
            assertThat(inOrder.next()).isEqualTo(-i);
        }
        assertThatThrownBy(inOrder::next).isInstanceOf(NoSuchElementException.class);
    }

    @Test
    void no_more_is_taken_than_is_worked_on_however_much_there_is() {
        AtomicInteger taken = new AtomicInteger();
        InOrder<Integer, Integer> inOrder = new InOrder<>(upTo(1_000_000, taken), i -> i, i -> 1, 2);

        inOrder.next();

        assertThat(taken.get()).isLessThan(2 * 4 * 64 + 65);
        inOrder.close();
    }

    @Test
    void of_heavy_things_fewer_are_taken() {
        AtomicInteger taken = new AtomicInteger();
        InOrder<Integer, Integer> inOrder = new InOrder<>(upTo(1_000, taken), i -> i, i -> 1 << 24, 2);

        inOrder.next();

        assertThat(taken.get()).isLessThan(5);
        inOrder.close();
    }

    @Test
    void what_goes_wrong_in_a_worker_goes_wrong_for_whoever_asks() {
        Iterator<Integer> bug = new InOrder<>(
                List.of(1).iterator(),
                i -> {
                    throw new IllegalStateException("a bug");
                },
                i -> 1,
                1);
        Iterator<Integer> worse = new InOrder<>(
                List.of(1).iterator(),
                i -> {
                    throw new AssertionError("worse");
                },
                i -> 1,
                1);

        assertThatThrownBy(bug::next).isInstanceOf(IllegalStateException.class).hasMessage("a bug");
        assertThatThrownBy(worse::next).isInstanceOf(AssertionError.class).hasMessage("worse");
    }
}
