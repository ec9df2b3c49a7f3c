package io.github.leafproof.dsl.figure;

import io.github.leafproof.dsl.formula.Account;
import io.github.leafproof.dsl.formula.Shown;
import io.github.leafproof.dsl.formula.Value;
import io.github.leafproof.dsl.html.Element;
import io.github.leafproof.inspection.quantity.Estimate;
import io.github.leafproof.inspection.quantity.UnitSystem;
import java.util.List;
import java.util.stream.Stream;

/** A reading on the axis of its limits, with the curve of what is known of it. */
public final class ReadingFigure {

    private static final double VALUE_HEAD = 31;
    private static final double CURVE_TOP = 37;
    /** Where its axis is. */
    static final double FOOT = 92;

    private ReadingFigure() {}

    /** Whether there is a curve to draw: a number that is known exactly has none, and its words say it all. */
    public static boolean shows(Account.Held held) {
        return held.value() instanceof Value.Amount amount && !amount.estimate().isExact();
    }

    /**
     * The figure.
     *
     * @param held what {@link #shows} a curve
     * @param title what it shows
     * @param id its name on the page
     */
    public static Element of(Account.Held held, UnitSystem units, String title, String id) {
        Value.Amount amount = (Value.Amount) held.value();
        Estimate reading = amount.estimate();
        double reach = Curve.reach(reading) * reading.standardUncertainty();
        List<Double> amounts = Stream.concat(
                        Band.amounts(held.limits()), Stream.of(reading.value() - reach, reading.value() + reach))
                .toList();
        Scale scale = Scale.over(amounts, Double.NEGATIVE_INFINITY, reading.dimension(), units, Pen.LEFT, Pen.RIGHT);
        Band band = new Band(held.limits(), scale, units);
        String value = Shown.measured(amount, units);
        return new Sketch()
                .draw(band.draw(FOOT))
                .draw(new Curve(reading, scale, CURVE_TOP, FOOT).draw(band.lower(), band.upper()))
                .draw("words", Pen.wordsAbout(scale.at(reading.value()), VALUE_HEAD, value))
                .draw(Axis.below(scale, FOOT))
                .finish(
                        id,
                        FOOT + Axis.HEIGHT,
                        title,
                        LimitWords.of(held.limits(), units) + " " + held.words() + " is " + value + ".");
    }
}
