package io.github.leafproof.dsl.graph;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Things under numbers, from 0. A row never changes; another one made from it shares with it all that stays the same, so that
 * a change costs about the same in a long row as in a short one.
 */
final class Row<T> {

    /** Near the root of the length of the longest rows, where the parts that are copied are smallest together. */
    private static final int PART = 256;

    private final @Nullable T[][] parts;

    private Row(@Nullable T[][] parts) {
        this.parts = parts;
    }

    /** A row to be written, with nothing in it yet. */
    @SuppressWarnings("unchecked") // The arrays never leave this class.
    static <T> Draft<T> blank(int size) {
        @Nullable T[][] parts = (T[][]) new Object[(size + PART - 1) / PART][];
        for (int part = 0; part < parts.length; part++) {
            parts[part] = (T[]) new Object[Math.min(PART, size - part * PART)];
        }
        boolean[] own = new boolean[parts.length];
        Arrays.fill(own, true);
        return new Draft<>(parts, own);
    }

    /** What stands under a number; null where nothing does. */
    @Nullable
    T get(int number) {
        return parts[number / PART][number % PART];
    }

    /** The row as it is changed. */
    Draft<T> draft() {
        return new Draft<>(parts.clone(), new boolean[parts.length]);
    }

    /** A row that is being written, once. What is not written to is shared with the row it was made from. */
    static final class Draft<T> {

        private final @Nullable T[][] parts;
        private final boolean[] own;

        private Draft(@Nullable T[][] parts, boolean[] own) {
            this.parts = parts;
            this.own = own;
        }

        @Nullable
        T get(int number) {
            return parts[number / PART][number % PART];
        }

        void set(int number, @Nullable T thing) {
            int part = number / PART;
            if (!own[part]) {
                parts[part] = parts[part].clone();
                own[part] = true;
            }
            parts[part][number % PART] = thing;
        }

        /** The row as it was written; the draft is no longer of use. */
        Row<T> row() {
            return new Row<>(parts);
        }
    }
}
