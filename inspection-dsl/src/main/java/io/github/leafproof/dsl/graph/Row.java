package io.github.leafproof.dsl.graph;

import org.jspecify.annotations.Nullable;

/**
 * Things under numbers, from 0. A row never changes; another one made from it shares with it all that stays the same, so that
 * a change costs the same in a long row as in a short one.
 *
 * <p>It is a tree whose every branch has 32 places: a thing is found by the digits of its number, five bits each.
 */
final class Row<T> {

    private static final int BITS = 5;
    private static final int WIDTH = 1 << BITS;

    private final Object[] root;
    /** By how many bits the number is shifted for the place in the root. */
    private final int shift;

    private Row(Object[] root, int shift) {
        this.root = root;
        this.shift = shift;
    }

    /** A row to be written, with nothing in it yet. */
    static <T> Draft<T> blank(int size) {
        int shift = 0;
        while (size > WIDTH << shift) {
            shift += BITS;
        }
        return new Draft<>(branch(size, shift), shift, true);
    }

    private static Object[] branch(int size, int shift) {
        Object[] branch = new Object[(size + (1 << shift) - 1) >> shift];
        for (int place = 0; shift > 0 && place < branch.length; place++) {
            branch[place] = branch(Math.min(size - (place << shift), 1 << shift), shift - BITS);
        }
        return branch;
    }

    /** What stands under a number; null where nothing does. */
    @Nullable
    T get(int number) {
        return at(root, shift, number);
    }

    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"}) // Only what is a T is ever put in.
    private static <T> @Nullable T at(Object[] root, int shift, int number) {
        Object[] branch = root;
        for (int bits = shift; bits > 0; bits -= BITS) {
            branch = (Object[]) branch[(number >> bits) % WIDTH];
        }
        return (T) branch[number % WIDTH];
    }

    /** The row as it is changed. */
    Draft<T> draft() {
        return new Draft<>(root, shift, false);
    }

    /** A row that is being written, once. */
    static final class Draft<T> {

        private Object[] root;
        private final int shift;
        /** Whether no row shares anything of it, so that it can be written in place. */
        private final boolean isOwn;

        private Draft(Object[] root, int shift, boolean isOwn) {
            this.root = root;
            this.shift = shift;
            this.isOwn = isOwn;
        }

        @Nullable
        T get(int number) {
            return at(root, shift, number);
        }

        void set(int number, T thing) {
            root = with(root, shift, number, thing);
        }

        private Object[] with(Object[] branch, int bits, int number, T thing) {
            Object[] next = isOwn ? branch : branch.clone();
            int place = (number >> bits) % WIDTH;
            next[place] = bits == 0 ? thing : with((Object[]) next[place], bits - BITS, number, thing);
            return next;
        }

        /** The row as it was written; the draft is no longer of use. */
        Row<T> row() {
            return new Row<>(root, shift);
        }
    }
}
