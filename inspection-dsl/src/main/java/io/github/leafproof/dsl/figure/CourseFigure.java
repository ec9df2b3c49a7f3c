package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.figure.Course.Along;
import io.github.leafproof.dsl.figure.Course.Moment;
import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Lettering;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** How a value went, from reading to reading or over time, with the limits of each of its parts where they have any. */
public final class CourseFigure {

    private static final double TOP = 30;
    private static final double FOOT = 132;
    private static final double APART = 6;

    private final Course course;
    private final Map<String, LimitsHeld.Window> limits;
    private final UnitSystem units;
    private final Scale up;
    private final Scale along;
    private final double left;

    private CourseFigure(Course course, Map<String, LimitsHeld.Window> limits, UnitSystem units) {
        this.course = course;
        this.limits = limits;
        this.units = units;
        List<Double> amounts = Stream.concat(
                        course.moments().stream().flatMap(moment -> Stream.of(moment.lowest(), moment.highest())),
                        course.parts().stream()
                                .flatMap(part -> Stream.ofNullable(limits.get(part.observation())))
                                .flatMap(Band::amounts))
                .toList();
        this.up = Scale.over(amounts, floor(), course.dimension(), units, FOOT, TOP);
        this.left = up.ticks().stream()
                        .mapToDouble(tick -> Lettering.width(tick.label(), Pen.LETTERS))
                        .max()
                        .orElse(0)
                + 2 * APART;
        this.along = along();
    }

    /**
     * The figure.
     *
     * @param limits by an observation's name, what its values are held to; those of other observations count for nothing
     * @param title what it shows
     * @param id its name on the page
     */
    public static Element of(
            Course course, Map<String, LimitsHeld.Window> limits, UnitSystem units, String title, String id) {
        return new CourseFigure(course, limits, units).draw(title, id);
    }

    private double floor() {
        boolean neverBelow = course.moments().stream().allMatch(moment -> moment.lowest() >= 0);
        return neverBelow ? 0 : Double.NEGATIVE_INFINITY;
    }

    private Scale along() {
        double right = Pen.RIGHT - APART;
        List<Double> whens = course.moments().stream().map(Moment::when).toList();
        if (course.along() == Along.READINGS) {
            int last = whens.size();
            return new Scale(units.unitFor(Dimension.RATIO, last), 0.5, last + 0.5, left, right);
        }
        return Scale.over(whens, Double.NEGATIVE_INFINITY, Dimension.TIME, units, left, right);
    }

    private Element draw(String title, String id) {
        Sketch sketch = new Sketch();
        course.parts().forEach(part -> sketch.draw(band(part)));
        for (Scale.Tick tick : up.ticks()) {
            sketch.draw("grid", Pen.line(left, tick.place(), Pen.RIGHT, tick.place()));
            sketch.draw("note", Pen.wordsUpTo(left - APART, tick.place() + 4, tick.label()));
        }
        sketch.draw("note", Pen.text(1, 11, up.unit().symbol()));
        course.parts().forEach(part -> sketch.draw(part(part)));
        boolean counted = course.along() == Along.READINGS;
        sketch.draw(Axis.below(along, counted ? along.ticks(1) : along.ticks(), FOOT));
        double foot = FOOT + Axis.HEIGHT + 14;
        sketch.draw("note", Pen.wordsUpTo(Pen.RIGHT, foot - 3, alongWords()));
        return sketch.finish(id, foot, title, description());
    }

    private String alongWords() {
        return switch (course.along()) {
            case READINGS -> "readings in their order";
            case RUNNING -> "running in all";
            case CLOCK -> "after the first";
        };
    }

    /** The limits of one part, as far along as it goes. */
    private List<Element> band(Course.Part part) {
        LimitsHeld.Window held = limits.get(part.observation());
        if (held == null) {
            return List.of();
        }
        boolean alone = course.parts().size() == 1;
        double from = alone ? left : along.at(part.moments().get(0).when() - 0.4);
        double to = alone
                ? Pen.RIGHT
                : along.at(part.moments().get(part.moments().size() - 1).when() + 0.4);
        double upper = held.upper() == null ? TOP : up.at(held.upper().value());
        double lower = held.lower() == null ? FOOT : up.at(held.lower().value());
        List<Element> strokes = new ArrayList<>();
        strokes.add(Pen.box(from, upper, to, lower).style("band"));
        Stream.of(held.lower(), held.upper()).flatMap(Stream::ofNullable).forEach(limit -> {
            double y = up.at(limit.value());
            strokes.add(Pen.line(from, y, to, y).style("edge"));
        });
        return strokes;
    }

    private List<Element> part(Course.Part part) {
        List<Element> strokes = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (Moment moment : part.moments()) {
            line.append(line.isEmpty() || moment.adjusted() ? "M" : "L");
            line.append(Pen.at(along.at(moment.when()))).append(' ').append(Pen.at(up.at(moment.middle())));
        }
        strokes.add(Pen.path(line.toString()).style("course"));
        part.moments().forEach(moment -> moment(strokes, moment));
        if (!part.label().isEmpty()) {
            double middle = (along.at(part.moments().get(0).when())
                            + along.at(part.moments()
                                    .get(part.moments().size() - 1)
                                    .when()))
                    / 2;
            strokes.add(Pen.wordsAbout(middle, 24, part.label()).style("words"));
        }
        return strokes;
    }

    private void moment(List<Element> strokes, Moment moment) {
        double x = along.at(moment.when());
        if (moment.adjusted()) {
            strokes.add(Pen.line(x - 8, TOP, x - 8, FOOT).style("value"));
            strokes.add(Pen.wordsAbout(x - 8, 24, "adjusted").style("words"));
        }
        if (moment.highest() > moment.lowest()) {
            strokes.add(Pen.line(x, up.at(moment.lowest()), x, up.at(moment.highest()))
                    .style("spread"));
        }
        strokes.add(Pen.dot(x, up.at(moment.middle())).style("dot"));
    }

    private String description() {
        List<String> words = new ArrayList<>();
        for (Course.Part part : course.parts()) {
            List<String> values =
                    part.moments().stream().map(CourseFigure::words).toList();
            words.add((part.label().isEmpty() ? "" : part.label() + ": ") + String.join(", ", values));
        }
        return String.join("; ", words) + ".";
    }

    private static String words(Moment moment) {
        return (moment.adjusted() ? "adjusted, then " : "") + moment.words();
    }
}
