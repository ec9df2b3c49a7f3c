package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Lettering;
import java.util.ArrayList;
import java.util.List;

/** The line at the foot of a figure, with its numbers and their unit. */
final class Axis {

    /** How much room it takes below its line. */
    static final double HEIGHT = 22;

    private static final double TICK = 4;
    private static final double APART = 6;

    private Axis() {}

    static List<Element> below(Scale scale, double y) {
        return below(scale, scale.ticks(), y);
    }

    static List<Element> below(Scale scale, List<Scale.Tick> ticks, double y) {
        String unit = scale.unit().symbol();
        double room = unit.isEmpty() ? Pen.RIGHT : Pen.RIGHT - Lettering.width(unit, Pen.LETTERS) - APART;
        List<Element> strokes = new ArrayList<>();
        strokes.add(Pen.line(scale.first(), y, scale.last(), y).style("axis"));
        double used = 0;
        for (Scale.Tick tick : ticks) {
            strokes.add(Pen.line(tick.place(), y, tick.place(), y + TICK).style("axis"));
            double half = Lettering.width(tick.label(), Pen.LETTERS) / 2;
            // A number that would touch its neighbour or the unit is left out; its mark stays.
            if (tick.place() - half > used && tick.place() + half < room) {
                strokes.add(Pen.text(tick.place(), y + 16, tick.label())
                        .with("text-anchor", "middle")
                        .style("note"));
                used = tick.place() + half + APART;
            }
        }
        if (!unit.isEmpty()) {
            strokes.add(Pen.wordsUpTo(Pen.RIGHT, y + 16, unit).style("note"));
        }
        return strokes;
    }
}
