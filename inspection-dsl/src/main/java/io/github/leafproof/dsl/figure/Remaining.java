package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.clearance.GapEvidence;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;

/** What all trials together leave possible: filled where it is inside the limits, hatched where it is not. */
final class Remaining {

    private static final double THICK = 10;

    private Remaining() {}

    static List<Element> draw(GapEvidence evidence, Band band, Scale scale, double y) {
        double from = scale.at(evidence.atLeast().map(Estimate::value).orElse(Double.NEGATIVE_INFINITY));
        double to = scale.at(evidence.lessThan().map(Estimate::value).orElse(Double.POSITIVE_INFINITY));
        double left = Math.min(from, to);
        double right = Math.max(from, to);
        List<Element> strokes = new ArrayList<>();
        if (from > to) {
            hatched(strokes, left, right, y);
        } else {
            hatched(strokes, left, Math.min(right, band.lower()), y);
            hatched(strokes, Math.max(left, band.upper()), right, y);
            double inLeft = Math.max(left, band.lower());
            double inRight = Math.min(right, band.upper());
            if (inRight > inLeft) {
                strokes.add(Pen.box(inLeft, y, inRight, y + THICK).style("inside"));
            }
        }
        strokes.add(Pen.box(left, y, right, y + THICK).style("outline"));
        return strokes;
    }

    private static void hatched(List<Element> strokes, double from, double to, double y) {
        if (to > from) {
            strokes.add(Hatching.of(from, y, to, y + THICK).style("outside"));
        }
    }
}
