package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.formula.LimitsHeld;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Lettering;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The limits of a figure: where to be, how far beyond is tolerated, and the numbers at the edges. */
final class Band {

    /** How much room the numbers take above it. */
    static final double HEAD = 17;

    private static final double APART = 5;

    private final LimitsHeld.Window limits;
    private final Scale scale;
    private final UnitSystem units;

    Band(LimitsHeld.Window limits, Scale scale, UnitSystem units) {
        this.limits = limits;
        this.scale = scale;
        this.units = units;
    }

    /** All that has to have room on the scale; the edges of a limit that is itself uncertain among it. */
    static Stream<Double> amounts(LimitsHeld.Window limits) {
        return Stream.of(limits.lower(), limits.upper(), limits.toleratedLower(), limits.toleratedUpper())
                .flatMap(Stream::ofNullable)
                .flatMap(limit -> Stream.of(
                        limit.value() - 2 * limit.standardUncertainty(),
                        limit.value() + 2 * limit.standardUncertainty()));
    }

    /** The band from the figure's head down to its axis. */
    List<Element> draw(double bottom) {
        List<Element> strokes = new ArrayList<>();
        double from = lower();
        double to = upper();
        double widerFrom = limits.toleratedLower() == null
                ? from
                : scale.at(limits.toleratedLower().value());
        double widerTo = limits.toleratedUpper() == null
                ? to
                : scale.at(limits.toleratedUpper().value());
        if (widerFrom < from || widerTo > to) {
            strokes.add(Pen.box(widerFrom, HEAD, widerTo, bottom).style("tolerated"));
        }
        strokes.add(Pen.box(from, HEAD, to, bottom).style("band"));
        edge(strokes, limits.lower(), bottom);
        edge(strokes, limits.upper(), bottom);
        numbers(strokes, from, to);
        return strokes;
    }

    double lower() {
        return limits.lower() == null ? scale.first() : scale.at(limits.lower().value());
    }

    double upper() {
        return limits.upper() == null ? scale.last() : scale.at(limits.upper().value());
    }

    private void edge(List<Element> strokes, @Nullable Estimate limit, double bottom) {
        if (limit == null) {
            return;
        }
        double x = scale.at(limit.value());
        strokes.add(Pen.line(x, HEAD, x, bottom).style("edge"));
        if (!limit.isExact()) {
            double u = 2 * limit.standardUncertainty();
            strokes.add(Pen.line(scale.at(limit.value() - u), HEAD + 3, scale.at(limit.value() + u), HEAD + 3)
                    .style("edge"));
        }
    }

    /** Inside the band where both numbers have room there, else each on its own side of it. */
    private void numbers(List<Element> strokes, double from, double to) {
        String lower = limits.lower() == null ? "" : words(limits.lower());
        String upper = limits.upper() == null ? "" : words(limits.upper());
        double wide = Lettering.width(lower, Pen.LETTERS) + Lettering.width(upper, Pen.LETTERS) + APART;
        boolean inside = to - from > wide;
        if (!lower.isEmpty()) {
            strokes.add(number(from, lower, inside));
        }
        if (!upper.isEmpty()) {
            strokes.add(number(to, upper, !inside));
        }
    }

    private static Element number(double edge, String words, boolean rightOfIt) {
        double width = Lettering.width(words, Pen.LETTERS);
        double start = rightOfIt ? edge : edge - width;
        double within = Math.max(1, Math.min(Pen.WIDTH - width - 1, start));
        return (rightOfIt ? Pen.text(within, 12, words) : Pen.wordsUpTo(within + width, 12, words)).style("limit");
    }

    private String words(Estimate limit) {
        return limit.isExact() ? Shown.measured(Value.Amount.of(limit), units) : Display.of(limit, units);
    }
}
