package io.github.leafproof.inspection.mechanism;

import io.github.leafproof.inspection.mechanism.Answer.Known;
import io.github.leafproof.inspection.mechanism.Answer.Refusal;
import io.github.leafproof.inspection.quantity.Dimension;
import io.github.leafproof.inspection.quantity.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A sweep of the needle: from three tacho points or more the parabola that fits them best (least squares), its peak, and
 * where the needle belongs for flight. {@link Tuning} has the same for exactly three points, by name.
 */
public final class NeedleSweep {
    private static final int FEWEST = 3;

    private final List<Estimate> inputs;
    private final int points;

    private NeedleSweep(List<Estimate> inputs) {
        this.inputs = inputs;
        this.points = inputs.size() / 2;
    }

    /** One point of a sweep: how far the needle is out, an angle, and the speed that it gave. */
    public record Point(Estimate needle, Estimate speed) {
        public Point {
            if (!needle.dimension().equals(Dimension.ANGLE)
                    || !speed.dimension().equals(Dimension.ROTATIONAL_SPEED)) {
                throw new IllegalArgumentException("a point is an angle and a rotational speed, not "
                        + needle.dimension() + " and " + speed.dimension());
            }
        }
    }

    /** The sweep through these points, in any order. */
    public static NeedleSweep of(List<Point> points) {
        List<Estimate> all = new ArrayList<>();
        points.forEach(point -> all.addAll(List.of(point.needle(), point.speed())));
        return new NeedleSweep(List.copyOf(all));
    }

    /** How far out the needle gives the highest speed. */
    public Answer peakNeedle() {
        return answer("peak_turns", x -> vertex(fit(x), centre(x)), Dimension.ANGLE);
    }

    /** The highest speed. */
    public Answer peakSpeed() {
        return answer("peak_speed", x -> peak(fit(x)), Dimension.ROTATIONAL_SPEED);
    }

    /** How far out the needle gives so much less than the highest speed, on the rich side. */
    public Answer flightNeedle(Estimate drop) {
        if (drop.value() < 0) {
            return new Refusal(
                    "flight_turns", "drop", "the drop is below zero, and no needle gives more than the highest speed");
        }
        List<Estimate> with = new ArrayList<>(inputs);
        with.add(drop);
        return answer(
                "flight_turns",
                x -> {
                    double[] c = fit(x);
                    return vertex(c, centre(x)) + Math.sqrt(x[2 * points] / -c[2]);
                },
                Dimension.ANGLE,
                with);
    }

    private Answer answer(String name, ToDoubleFunction<double[]> model, Dimension result) {
        return answer(name, model, result, inputs);
    }

    private Answer answer(String name, ToDoubleFunction<double[]> model, Dimension result, List<Estimate> given) {
        double[] x = given.stream().mapToDouble(Estimate::value).toArray();
        String why = whyNot(x);
        return why.isEmpty() ? new Known(Estimate.through(model, result, given)) : new Refusal(name, "points", why);
    }

    private String whyNot(double[] x) {
        if (points < FEWEST) {
            return "the points are " + points + " and must be at least " + FEWEST
                    + ", or no parabola is told from another";
        }
        double[] c = fit(x);
        if (!Double.isFinite(c[2])) {
            return "the needle must stand at three different places, or no parabola is told from another";
        }
        if (c[2] >= 0) {
            return "the speed does not fall on both sides: there is no peak";
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < points; i++) {
            low = Math.min(low, x[2 * i]);
            high = Math.max(high, x[2 * i]);
        }
        double vertex = vertex(c, centre(x));
        return vertex < low || vertex > high ? "the peak would lie outside what was measured" : "";
    }

    private double centre(double[] x) {
        double sum = 0;
        for (int i = 0; i < points; i++) {
            sum += x[2 * i];
        }
        return sum / points;
    }

    private static double vertex(double[] c, double centre) {
        return centre - c[1] / (2 * c[2]);
    }

    private static double peak(double[] c) {
        return c[0] - c[1] * c[1] / (4 * c[2]);
    }

    /** The parabola c₀ + c₁·t + c₂·t², t counted from the centre: normal equations, by orthogonal polynomials. */
    private double[] fit(double[] x) {
        double centre = centre(x);
        double n = points;
        double t2 = 0;
        double t3 = 0;
        double y0 = 0;
        double y1 = 0;
        for (int i = 0; i < points; i++) {
            double t = x[2 * i] - centre;
            t2 += t * t;
            t3 += t * t * t;
            y0 += x[2 * i + 1];
            y1 += x[2 * i + 1] * t;
        }
        // Orthogonal to 1 and t: t² − (t3/t2)·t − t2/n.
        double square = 0;
        double along = 0;
        for (int i = 0; i < points; i++) {
            double t = x[2 * i] - centre;
            double q = t * t - t3 / t2 * t - t2 / n;
            square += q * q;
            along += q * x[2 * i + 1];
        }
        // Fewer than three places leave nothing but rounding.
        double bend = square > 1e-18 * t2 * t2 ? along / square : Double.NaN;
        return new double[] {y0 / n - bend * t2 / n, y1 / t2 - bend * t3 / t2, bend};
    }
}
