package io.github.leafproof.inspection.mechanism;

/** The parabola through three points of needle and speed, in order; a = curvature, b = its slope at the first point. */
record Parabola(double from, double to, double middle, double start, double end, double bend, double slope) {

    /** Through the points that stand in a row of inputs, needle and speed in turn, from this place on. */
    static Parabola through(double[] x, int at) {
        double first = (x[at + 3] - x[at + 1]) / (x[at + 2] - x[at]);
        double second = (x[at + 5] - x[at + 3]) / (x[at + 4] - x[at + 2]);
        double bend = (second - first) / (x[at + 4] - x[at]);
        return new Parabola(
                x[at], x[at + 4], x[at + 2], x[at + 1], x[at + 5], bend, first - bend * (x[at + 2] - x[at]));
    }

    double vertex() {
        return from - slope / (2 * bend);
    }

    double peak() {
        return start - slope * slope / (4 * bend);
    }

    double richSide(double drop) {
        return vertex() + Math.sqrt(drop / -bend);
    }

    /** What the straight line from the first point to the last says of the middle. */
    double chord() {
        return start + (end - start) * (middle - from) / (to - from);
    }
}
