package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.clearance.FeelTrial;
import io.github.leafproof.inspection.clearance.TrialResult;
import io.github.leafproof.inspection.quantity.Display;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** What one leaf, pin or stack showed: its size as measured with twice its uncertainty, and all that it leaves possible. */
final class TrialRow {

    static final double HEIGHT = 29;

    private static final double BAR = 20;

    private TrialRow() {}

    static List<Element> draw(FeelTrial trial, Scale scale, double y, UnitSystem units) {
        Estimate size = trial.feeler().thickness();
        double u = 2 * size.standardUncertainty();
        double x = scale.at(size.value());
        double bar = y + BAR;
        List<Element> strokes = new ArrayList<>();
        strokes.addAll(Pen.words("words", y + 11, words(trial, units)));
        switch (trial.result()) {
            case PASSES -> arrow(strokes, x, scale.last(), bar);
            case REFUSES -> arrow(strokes, x, scale.first(), bar);
            case DRAGS ->
                trial.lessThan()
                        .ifPresentOrElse(
                                upper -> strokes.add(Pen.line(x, bar, scale.at(upper.value()), bar)
                                        .style("shows")),
                                () -> arrow(strokes, x, scale.last(), bar));
        }
        strokes.add(Pen.line(scale.at(size.value() - u), bar, scale.at(size.value() + u), bar)
                .style("spread"));
        strokes.add(diamond(x, bar).style("leaf"));
        return strokes;
    }

    /** As a person says it: {@code 0.05 mm passes: at least 0.0500 mm}. */
    static String words(FeelTrial trial, UnitSystem units) {
        String known = trial.feeler().neverMeasured() ? ", never measured," : "";
        String size = Display.of(trial.feeler().thickness(), units);
        String shows = trial.result() == TrialResult.REFUSES
                ? "less than " + size
                : "at least " + size
                        + trial.lessThan()
                                .map(upper -> ", less than " + Display.of(upper, units))
                                .orElse("");
        String does = switch (trial.result()) {
            case PASSES -> " passes: ";
            case REFUSES -> " refuses: ";
            case DRAGS -> " drags: ";
        };
        return trial.feeler().label() + known + does + shows;
    }

    private static void arrow(List<Element> strokes, double from, double to, double y) {
        double back = to > from ? to - 5 : to + 5;
        strokes.add(Pen.line(from, y, to, y).style("shows"));
        strokes.add(Pen.path("M" + Pen.at(back) + " " + Pen.at(y - 4) + "L" + Pen.at(to) + " " + Pen.at(y) + "L"
                        + Pen.at(back) + " " + Pen.at(y + 4))
                .style("shows"));
    }

    private static Element diamond(double x, double y) {
        return Pen.path("M" + Pen.at(x) + " " + Pen.at(y - 5) + "L" + Pen.at(x + 4.5) + " " + Pen.at(y) + "L"
                + Pen.at(x) + " " + Pen.at(y + 5) + "L" + Pen.at(x - 4.5) + " " + Pen.at(y) + "Z");
    }
}
