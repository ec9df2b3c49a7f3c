package io.github.leafproof.dsl.bytecode;

import io.github.leafproof.dsl.formula.Statistic;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.graph.CheckGraph;
import io.github.leafproof.dsl.graph.Evidence;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is known of one engine as it was left, in plain numbers: made once when a sheet was read, and judged as often as
 * anybody likes. Immutable, and safe to share between threads. All of it lies in two rows, one behind the other, since a
 * processor waits longer for memory here and there than it takes to judge.
 */
public final class Figures {

    /** In a row of things found each number holds so many yes or no: a double has as many digits to spare. */
    static final int BITS = 52;

    final CheckGraph graph;
    /** What each slot lacks, or the truth of a condition; see {@link Truth}. */
    final int[] state;
    /** As {@link Layout} says. */
    final double[] number;

    private final Evidence evidence;
    /** As entered; null for what is computed. */
    final Value[] values;

    private Figures(Evidence evidence, int[] state, double[] number, Value[] values) {
        this.evidence = evidence;
        this.graph = evidence.graph();
        this.state = state;
        this.number = number;
        this.values = values;
    }

    static Figures of(Evidence evidence, Layout layout) {
        return new Packing(evidence, layout).figures();
    }

    /** Whose figures they are. */
    public Evidence evidence() {
        return evidence;
    }

    /** Puts a number, how well it is known, and where the whole estimate is found again. */
    static void put(Estimate estimate, int origin, int value, int more, double[] number) {
        number[value] = estimate.value();
        if (more > 0) {
            boolean exact = estimate.isExact();
            number[more] = exact ? 0 : estimate.standardUncertainty();
            number[more + 1] = exact ? Double.POSITIVE_INFINITY : estimate.degreesOfFreedom();
            number[more + 2] = origin;
        }
    }

    /** Whether a number lacks, where an uncertainty below zero says so. */
    static int lacks(double u, int why) {
        return u < 0 ? Truth.LACKS | why : 0;
    }

    /** Whether all things wanted are among those found. */
    int hasAll(int found, int wanted) {
        int length = (int) number[found];
        for (int i = 1; i <= length; i++) {
            if (((long) number[wanted + i] & ~(long) number[found + i]) != 0) {
                return Truth.FAILS;
            }
        }
        return Truth.PASSES;
    }

    /** The rows while they are filled. */
    private static final class Packing {
        private final Evidence evidence;
        private final Layout layout;
        private final Value[] values;
        private final int[] state;
        private final Map<String, Integer> words;
        private double[] number;
        private int length;

        Packing(Evidence evidence, Layout layout) {
            this.evidence = evidence;
            this.layout = layout;
            this.values = evidence.asLeft();
            this.state = new int[values.length];
            this.words = new HashMap<>(layout.words());
            this.length = layout.length();
            this.number = new double[length];
        }

        Figures figures() {
            for (Value value : values) {
                if (value instanceof Value.Things things) {
                    things.items().forEach(this::number);
                } else if (value instanceof Value.Words text) {
                    number(text.text());
                }
            }
            for (int slot = 0; slot < values.length; slot++) {
                Value value = values[slot];
                if (value != null) {
                    state[slot] = Truth.of(value);
                    pack(value, slot);
                }
            }
            return new Figures(evidence, state, number, values);
        }

        private void pack(Value value, int slot) {
            if (value instanceof Value.Amount amount) {
                put(amount.estimate(), Origin.ofValue(slot), slot, layout.more(slot), number);
            } else if (value instanceof Value.Pick pick) {
                number[slot] = pick.option();
            } else if (value instanceof Value.Day day) {
                number[slot] = (double) day.day().toEpochDay();
            } else if (value instanceof Value.Words text) {
                number[slot] = number(text.text());
            } else if (value instanceof Value.Things things) {
                behind(row(things.items()), slot);
            } else if (value instanceof Value.Felt felt) {
                behind(Gap.row(felt, slot), slot);
            } else if (value instanceof Value.Readings readings) {
                statistics(readings, slot, layout.more(slot));
            }
        }

        private int number(String word) {
            return words.computeIfAbsent(word, each -> words.size());
        }

        /** As many numbers as all words of this engine take, and these, with a bit for each that is there. */
        private double[] row(List<String> items) {
            long[] bits = new long[(words.size() + BITS - 1) / BITS];
            for (String item : items) {
                int at = number(item);
                bits[at / BITS] |= 1L << (at % BITS);
            }
            double[] row = new double[1 + bits.length];
            row[0] = bits.length;
            for (int i = 0; i < bits.length; i++) {
                row[1 + i] = (double) bits[i];
            }
            return row;
        }

        private void statistics(Value.Readings readings, int slot, int first) {
            for (Statistic statistic : Statistic.values()) {
                int at = first + Layout.STATISTIC * Truth.number(statistic);
                Estimate estimate = readings.statistics().get(statistic);
                if (estimate == null) {
                    number[at + 1] = -1;
                } else {
                    put(estimate, Origin.ofStatistic(slot, statistic), at, at + 1, number);
                }
            }
        }

        /** Puts a row behind all others, and into the slot where that is. */
        private void behind(double[] row, int slot) {
            number = Arrays.copyOf(number, length + row.length);
            System.arraycopy(row, 0, number, length, row.length);
            number[slot] = length;
            length += row.length;
        }
    }
}
