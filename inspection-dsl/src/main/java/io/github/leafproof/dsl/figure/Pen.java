package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.dsl.html.Html;
import io.github.leafproof.dsl.html.Lettering;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** The few strokes that all figures are made of. Places are in the figure's own units, tenths of which are seen. */
final class Pen {

    /** How wide every figure is: as a phone held upright shows it without making its letters smaller. */
    static final int WIDTH = 340;

    static final double LEFT = 8;
    static final double RIGHT = WIDTH - 8.0;
    static final double LETTERS = 11.5;

    /** Letters are measured by a wide face, and their ground should not reach far beyond them. */
    private static final double NARROWER = 0.93;

    private static final double PADDING = 3;

    private Pen() {}

    static Element line(double x1, double y1, double x2, double y2) {
        return path("M" + at(x1) + " " + at(y1) + "L" + at(x2) + " " + at(y2));
    }

    static Element path(String along) {
        return Html.element("path").with("d", along);
    }

    static Element box(double left, double top, double right, double bottom) {
        return Html.element("rect")
                .with("x", at(left))
                .with("y", at(top))
                .with("width", at(Math.max(0, right - left)))
                .with("height", at(bottom - top));
    }

    static Element dot(double x, double y) {
        return Html.element("circle").with("cx", at(x)).with("cy", at(y)).with("r", 3);
    }

    /** Words that begin at the left of the figure, as many of them as fit, on a ground of their own. */
    static List<Element> words(String style, double y, String words) {
        String fitting = fitting(words);
        double right = Math.min(WIDTH, LEFT + Lettering.width(fitting, LETTERS) * NARROWER + 2 * PADDING);
        return List.of(
                box(LEFT - PADDING, y - 10, right, y + 3.5).style("ground"),
                text(LEFT, y, fitting).style(style));
    }

    /** Words above a place, moved as far as it takes to stay in the figure. */
    static Element wordsAbout(double x, double y, String words) {
        String fitting = fitting(words);
        double half = Lettering.width(fitting, LETTERS) / 2;
        double within = Math.max(half + 1, Math.min(WIDTH - half - 1, x));
        return text(within, y, fitting).with("text-anchor", "middle");
    }

    /** Words that end at a place. */
    static Element wordsUpTo(double x, double y, String words) {
        return text(x, y, words).with("text-anchor", "end");
    }

    static Element text(double x, double y, String words) {
        return Html.element("text", words).with("x", at(x)).with("y", at(y));
    }

    private static String fitting(String words) {
        return Lettering.wrapped(words, LETTERS, WIDTH - 2 * LEFT, 1).get(0);
    }

    /** A place, to a tenth; the same on every machine. */
    static String at(double place) {
        BigDecimal tenths = BigDecimal.valueOf(place).setScale(1, RoundingMode.HALF_EVEN);
        return tenths.signum() == 0 ? "0" : tenths.stripTrailingZeros().toPlainString();
    }
}
