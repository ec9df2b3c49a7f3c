package io.github.leafproof.dsl.formula;

import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;

/**
 * A day so many days after or before another: {@code made + 365 d}. Times may be added and taken in a row.
 *
 * @param times what is added or taken, in the order of writing
 * @param added for each of them, whether it is added
 */
public record DaysFrom(Formula start, List<Formula> times, List<Boolean> added) implements Formula {

    private static final double SECONDS = 86_400;

    /** Further than the calendar of any engine reaches. */
    private static final double MOST_DAYS = 1_000_000;

    public DaysFrom {
        times = List.copyOf(times);
        added = List.copyOf(added);
    }

    /** The day that a further time leads to. */
    public static DaysFrom of(Formula day, boolean isAdded, Formula time) {
        List<Formula> times = new ArrayList<>();
        List<Boolean> added = new ArrayList<>();
        if (day instanceof DaysFrom before) {
            times.addAll(before.times);
            added.addAll(before.added);
        }
        times.add(time);
        added.add(isAdded);
        return new DaysFrom(day instanceof DaysFrom before ? before.start : day, times, added);
    }

    @Override
    public Value value(Frame frame) {
        List<Value> values = new ArrayList<>(List.of(start.value(frame)));
        double days = 0;
        for (int i = 0; i < times.size(); i++) {
            Value value = Computed.number(times.get(i), frame);
            values.add(value);
            if (value instanceof Value.Amount time) {
                Estimate estimate = time.estimate();
                if (!estimate.isExact()) {
                    return refused("an uncertain time leads to no certain day");
                }
                days += (added.get(i) ? 1 : -1) * estimate.value() / SECONDS;
            }
        }
        if (!(values.get(0) instanceof Value.Day from) || values.stream().anyMatch(Value.Missing.class::isInstance)) {
            return Value.Missing.of(values);
        }
        if (Math.abs(days - Math.rint(days)) > 1e-9) {
            return refused("a time that is no whole number of days leads to no day");
        }
        return Math.abs(days) > MOST_DAYS
                ? refused("that is too far away")
                : new Value.Day(from.day().plusDays(Math.round(days)));
    }

    private Value refused(String why) {
        return Value.Missing.of(Value.Lack.Kind.NOT_COMPUTABLE, words(), "cannot be computed: " + why);
    }

    @Override
    public String words() {
        StringBuilder words = new StringBuilder(start.words());
        for (int i = 0; i < times.size(); i++) {
            words.append(added.get(i) ? " + " : " - ").append(times.get(i).words());
        }
        return words.toString();
    }

    @Override
    public List<Formula> parts() {
        List<Formula> parts = new ArrayList<>(List.of(start));
        parts.addAll(times);
        return parts;
    }
}
