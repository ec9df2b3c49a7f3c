package io.github.leafproof.dsl.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A row holds what an array would, and the rows that it was made from keep what they held. */
class RowTest {

    @Property(tries = 60, seed = "1")
    void it_holds_what_was_put_in_last_and_every_row_before_what_it_held(
            @ForAll @IntRange(min = 1, max = 70_000) int size, @ForAll long seed) {
        Random random = new Random(seed);
        @Nullable Integer[] array = new Integer[size];
        Row.Draft<Integer> first = Row.blank(size);
        write(first, array, random, 200);
        List<Row<Integer>> rows = new ArrayList<>(List.of(first.row()));
        List<@Nullable Integer[]> held = new ArrayList<>();
        held.add(array.clone());
        for (int change = 0; change < 5; change++) {
            Row.Draft<Integer> draft = rows.get(random.nextInt(rows.size())).draft();
            array = all(draft, size);
            write(draft, array, random, 1 + change * change);
            assertThat(all(draft, size)).isEqualTo(array);
            rows.add(draft.row());
            held.add(array.clone());
        }
        for (int at = 0; at < rows.size(); at++) {
            assertThat(all(rows.get(at).draft(), size)).isEqualTo(held.get(at));
        }
    }

    private static void write(Row.Draft<Integer> draft, @Nullable Integer[] array, Random random, int times) {
        for (int time = 0; time < times; time++) {
            int number = random.nextInt(array.length);
            array[number] = random.nextInt();
            draft.set(number, array[number]);
        }
    }

    private static @Nullable Integer[] all(Row.Draft<Integer> draft, int size) {
        @Nullable Integer[] all = new Integer[size];
        Arrays.setAll(all, draft::get);
        return all;
    }

    @Test
    void it_may_be_empty_and_its_last_place_can_be_written_whatever_its_length() {
        assertThat(Row.<Integer>blank(0).row()).isNotNull();
        for (int size : new int[] {1, 31, 32, 33, 1023, 1024, 1025, 32_768, 32_769, 100_000}) {
            Row.Draft<Integer> draft = Row.blank(size);
            draft.set(size - 1, size);
            assertThat(draft.row().get(size - 1)).isEqualTo(size);
        }
    }
}
