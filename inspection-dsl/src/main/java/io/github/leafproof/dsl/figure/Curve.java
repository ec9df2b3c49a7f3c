package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.verdict.Coverage;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a reading's true value probably lies: the normal law, or Student's t where its uncertainty was found from few
 * readings (JCGM 100 annex G). What lies inside the limits is filled, what lies beyond is hatched, so that the share of the
 * filled is the probability of conforming (JCGM 106 clause 7).
 */
final class Curve {

    private static final double STEP = 1.5;
    private static final double HATCH = 4;
    private static final double SPIKE = 4;

    private final Estimate reading;
    private final Scale scale;
    private final double top;
    private final double bottom;
    private final double peak;

    Curve(Estimate reading, Scale scale, double top, double bottom) {
        this.reading = reading;
        this.scale = scale;
        this.top = top;
        this.bottom = bottom;
        this.peak = Coverage.density(0, reading.degreesOfFreedom());
    }

    /** How many standard uncertainties to either side are worth showing: all but one in a hundred, and three at least. */
    static double reach(Estimate reading) {
        return Math.min(6, Math.max(3.2, Coverage.coverageFactor(0.99, reading.degreesOfFreedom())));
    }

    /** The curve between these edges of the band. */
    List<Element> draw(double lower, double upper) {
        double u = reading.standardUncertainty();
        double from = scale.at(reading.value() - reach(reading) * u);
        double to = scale.at(reading.value() + reach(reading) * u);
        List<Element> strokes = new ArrayList<>();
        if (to - from > SPIKE) {
            area(strokes, Math.max(from, lower), Math.min(to, upper));
            hatch(strokes, from, Math.min(to, lower));
            hatch(strokes, Math.max(from, upper), to);
            strokes.add(Pen.path(along(from, to, "M")).style("curve"));
        }
        double x = scale.at(reading.value());
        strokes.add(Pen.line(x, top, x, bottom).style("value"));
        return strokes;
    }

    private void area(List<Element> strokes, double from, double to) {
        if (to > from) {
            strokes.add(Pen.path("M" + Pen.at(from) + " " + Pen.at(bottom) + along(from, to, "L") + "L" + Pen.at(to)
                            + " " + Pen.at(bottom) + "Z")
                    .style("inside"));
        }
    }

    private void hatch(List<Element> strokes, double from, double to) {
        StringBuilder lines = new StringBuilder();
        for (double x = from; x < to; x += HATCH) {
            lines.append('M').append(Pen.at(x)).append(' ').append(Pen.at(bottom));
            lines.append('V').append(Pen.at(height(x)));
        }
        if (!lines.isEmpty()) {
            strokes.add(Pen.path(lines.toString()).style("outside"));
        }
    }

    private String along(double from, double to, String begin) {
        StringBuilder along = new StringBuilder();
        int steps = Math.max(1, (int) Math.ceil((to - from) / STEP));
        for (int i = 0; i <= steps; i++) {
            double x = from + (to - from) * i / steps;
            along.append(i == 0 ? begin : "L").append(Pen.at(x)).append(' ').append(Pen.at(height(x)));
        }
        return along.toString();
    }

    private double height(double x) {
        double middle = scale.at(reading.value());
        double one = scale.at(reading.value() + reading.standardUncertainty()) - middle;
        double back = middle - scale.at(reading.value() - reading.standardUncertainty());
        double z = (x - middle) / Math.max(one, back);
        return bottom - (bottom - top) * Coverage.density(z, reading.degreesOfFreedom()) / peak;
    }
}
