package io.github.leafproof.dsl.figure;

import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Unit;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * Where amounts stand between two edges of a figure.
 *
 * @param unit the unit that its numbers are in
 * @param from the amount at the first edge, in that unit
 * @param to the amount at the other
 * @param first where the first edge is; for amounts that rise upwards it is the lower one
 * @param last where the other is
 */
record Scale(Unit unit, double from, double to, double first, double last) {

    private static final double PADDING = 0.09;
    private static final int MOST_STEPS = 6;

    /** A mark on the scale. */
    record Tick(double place, String label) {}

    /**
     * A scale on which all these amounts have room, in coherent SI units; what is infinite counts for nothing.
     *
     * @param floor no amount lies below this
     */
    static Scale over(
            List<Double> amounts, double floor, Dimension dimension, UnitSystem units, double first, double last) {
        List<Double> all = amounts.stream().filter(Double::isFinite).toList();
        double lowest = all.stream().mapToDouble(each -> each).min().orElse(0);
        double highest = all.stream().mapToDouble(each -> each).max().orElse(0);
        Unit unit = units.unitFor(dimension, Math.max(Math.abs(lowest), Math.abs(highest)));
        double room = highest > lowest ? (highest - lowest) * PADDING : Math.max(Math.abs(highest) * PADDING, 1e-6);
        double from = unit.fromBase(Math.max(floor, lowest - room));
        return new Scale(unit, from, unit.fromBase(highest + room), first, last);
    }

    /** Where an amount in coherent SI units stands; beyond an edge, at it. */
    double at(double base) {
        if (Double.isInfinite(base)) {
            return base > 0 ? last : first;
        }
        return place(Math.max(from, Math.min(to, unit.fromBase(base))));
    }

    private double place(double number) {
        return first + (number - from) / (to - from) * (last - first);
    }

    /** Round numbers along the scale, some four to six. */
    List<Tick> ticks() {
        return ticks(0);
    }

    /** The same, no nearer to each other than so much. */
    List<Tick> ticks(double leastStep) {
        int exponent = (int) Math.floor(Math.log10((to - from) / MOST_STEPS));
        double step = Math.pow(10, exponent);
        for (int times : new int[] {2, 5, 10}) {
            if ((to - from) / step > MOST_STEPS) {
                step = times * Math.pow(10, exponent);
            }
        }
        step = Math.max(step, leastStep);
        int digits = Math.max(0, -(int) Math.floor(Math.log10(step) + 1e-9));
        List<Tick> ticks = new ArrayList<>();
        for (long number = (long) Math.ceil(from / step - 1e-9); number * step <= to + step * 1e-9; number++) {
            ticks.add(new Tick(place(number * step), Display.number(number * step, digits)));
        }
        return ticks;
    }
}
